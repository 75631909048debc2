import { describe, expect, it } from 'vitest';
import { inputParts } from '../../../src/app/paper/input-lines.ts';
import { UNIT_SETS } from '../../../src/app/units/shown-units.ts';
import { FIELDS } from '../../../src/design/fields.ts';
import { setValues } from '../../../src/design/set-value.ts';
import { countsElsewhere, isLeftOff, preset, sound } from '../../design/designs.ts';

const [metric, , workshop] = UNIT_SETS as [(typeof UNIT_SETS)[0], unknown, (typeof UNIT_SETS)[0]];
const lines = (...args: Parameters<typeof inputParts>) =>
  inputParts(...args).flatMap(({ groups }) => groups.flatMap((group) => group.lines));
const text = (label: string, ...args: Parameters<typeof inputParts>) =>
  lines(...args).find((line) => line.label === label)?.text;

describe('inputParts', () => {
  it('names every field of Lovage 7 that is in use, and leaves none of them empty', () => {
    const labels = new Set(lines(preset('lovage-7'), metric).map(({ label }) => label));
    const missing = FIELDS.filter(
      ({ path, part, label }) =>
        part !== '' &&
        !/corrections/.test(path) &&
        !isLeftOff(path) &&
        !countsElsewhere(path, preset('lovage-7')) &&
        !labels.has(label),
    ).map(({ path }) => path);
    expect(missing).toEqual([]);
    expect(lines(preset('lovage-7'), metric).filter((line) => line.text.trim() === '')).toEqual([]);
  });

  it('writes a bore of 40 mm in the unit of the reader: 40 mm, or 1.575 in', () => {
    expect(text('Bore', preset('lovage-7'), metric)).toBe('40 mm');
    expect(text('Bore', preset('lovage-7'), workshop)).toBe('1.575 in');
  });

  it('names the row of a value where rows differ, and says it once where they do not', () => {
    expect(text('Stagger', preset('angelica-14'), metric)).toMatch(/^row A: 0°, row B: /);
    expect(text('Cylinders in the row', preset('angelica-14'), metric)).toBe('7, each');
  });

  it('names the cylinder that is corrected', () => {
    const raised = sound(
      setValues(preset('lovage-7'), [{ path: 'crank.corrections[A3].barrel_mm', text: '0.4' }]),
    );
    expect(text('Barrel raised', raised, metric)).toBe('A3: 0.4 mm');
  });
});
