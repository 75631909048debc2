import { describe, expect, it } from 'vitest';
import { airFigures } from '../../../../src/app/pages/air/air-figures.ts';
import { preset, sound } from '../../../design/designs.ts';
import { solveAt, solved } from '../../../helpers/engines.ts';
import { toEngine } from '../../../../src/design/to-engine.ts';
import { validate } from '../../../../src/design/validate.ts';
import { engine, lovage, metric } from '../solved.ts';

const caraway = preset('caraway-1');
const led = toEngine(
  sound(
    validate({
      ...caraway,
      plenum: { ...caraway.plenum, bypass: { control: 'always open', bore_mm: 6 } },
      blower: { ...caraway.blower, secondStage: { displacement_cc: 60, cooler: {} } },
    }),
  ),
);
const point = solved(solveAt(led, 5000));
const figures = airFigures({ bench: { engine: led }, point }, null, metric);
const of = (label: string) => figures.find((each) => each.label === label)!;

describe('airFigures', () => {
  it('tell of stages, intercooler and bypass where a design has them', () => {
    expect(of('second stage takes').text).toBe(metric.text('power', point.stages!.second.shaftPower));
    expect(of('intercooler takes').beside).toMatch(/^of heat, and loses .*bar$/);
    expect(of('heat it carries').beside).toBe('back into the inlet box');
  });

  it('leave them out where it has none, and the relief valve where it stays shut', () => {
    const plain = airFigures({ bench: { engine }, point: lovage() }, null, metric).map(({ label }) => label);
    expect(plain).toEqual(['plenum gauge', 'air flow', 'slip', 'blower takes', 'rotors', 'rotor tips']);
  });

  it('are held against what is pinned, each in the shown unit', () => {
    const held = { bench: { engine }, point: lovage() };
    const same = airFigures(held, held, metric).find(({ label }) => label === 'air flow')!;
    expect(same.against).toBe('the same');
  });
});
