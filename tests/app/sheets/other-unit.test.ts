import { describe, expect, it } from 'vitest';
import { fieldAt } from '../../../src/design/fields.ts';
import type { Field } from '../../../src/design/fields.ts';
import { inOtherUnit as inOther, wearsUnit } from '../../../src/app/sheets/other-unit.ts';
import { UNIT_SETS } from '../../../src/app/units/shown-units.ts';

const [metric, , workshop] = UNIT_SETS;
const inOtherUnit = (field: Field, value: number, typed: string | null, units = metric) =>
  inOther(field, value, typed, units!);

describe('inOtherUnit', () => {
  it('shows 50.8 mm for a bore typed in inches, and 2 in for one typed in millimetres', () => {
    const bore = fieldAt('cylinder.bore_mm')!;
    expect(inOtherUnit(bore, 50.8, '2 in')).toBe('50.8 mm');
    expect(inOtherUnit(bore, 50.8, '50.8')).toBe('2 in');
  });
  it('shows a workshop that reads inches the same, and inches beside what was typed in centimetres', () => {
    const bore = fieldAt('cylinder.bore_mm')!;
    expect(inOtherUnit(bore, 50.8, '2 in', workshop)).toBe('50.8 mm');
    expect(inOtherUnit(bore, 50.8, '50.8', workshop)).toBe('2 in');
    expect(inOtherUnit(bore, 50.8, '5.08 cm', workshop)).toBe('2 in');
    expect(inOtherUnit(bore, 50.8, '5.08 cm')).toBe('50.8 mm');
  });
  it('shows 68 °F for 20 °C', () => {
    expect(inOtherUnit(fieldAt('surroundings.temperature_C')!, 20, '20')).toBe('68 °F');
  });
  it('shows 10.15 psi for 0.7 bar, both above ambient as the field asks', () => {
    expect(inOtherUnit(fieldAt('plenum.relief.cracking_barGauge')!, 0.7, null)).toBe('10.15 psi');
  });
  it('shows 0.02 for a share typed as 2 %, and nothing beside a plain 0.02', () => {
    const oil = fieldAt('fuel.oilShare')!;
    expect(inOtherUnit(oil, 0.02, '2 %')).toBe('0.02');
    expect(inOtherUnit(oil, 0.02, '0.02')).toBe('');
  });
});

describe('wearsUnit', () => {
  it('tells “2 in” and “80 %” from “52” and “0,85”', () => {
    expect(['2 in', '80 %', '45cc', '52', '0,85'].map(wearsUnit)).toEqual([true, true, true, false, false]);
  });
});
