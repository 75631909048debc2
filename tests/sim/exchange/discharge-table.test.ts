import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DischargeTable, nominal } from '../../../src/sim/exchange/discharge-table.ts';

const places = { openings: [0, 0.25, 1], pressureRatios: [1, 1.5, 4] };
const filled = (of: (opening: number, ratio: number) => number) => {
  const values = places.openings.flatMap((opening) =>
    places.pressureRatios.map((ratio) => of(opening, ratio)),
  );
  return { table: new DischargeTable({ ...places, forward: values, backward: values }, values), values };
};

describe('DischargeTable', () => {
  it('gives back a bilinear function anywhere within its places, to round-off', () => {
    const of = (opening: number, ratio: number) =>
      0.9 - 0.2 * opening + 0.03 * ratio - 0.01 * opening * ratio;
    const { table } = filled(of);
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 1, max: 4, noNaN: true }),
        (opening, ratio) => {
          expect(table.at(opening, ratio)).toBeCloseTo(of(opening, ratio), 12);
        },
      ),
      { numRuns: 200, seed: 3 },
    );
  });

  it('holds its last column beyond the last pressure ratio', () => {
    const { table } = filled((opening, ratio) => 0.5 + 0.1 * opening + 0.05 * ratio);
    expect(table.at(0.25, 40)).toBe(table.at(0.25, 4));
    expect(table.at(0.25, 4)).toBeCloseTo(0.5 + 0.025 + 0.2, 12);
  });

  it('is the column itself where there is only one pressure ratio', () => {
    const table = new DischargeTable(
      { openings: [0, 1], pressureRatios: [1], forward: [], backward: [] },
      [0.8, 0.6],
    );
    expect(table.at(0.5, 1)).toBeCloseTo(0.7, 12);
    expect(table.at(0.5, 3)).toBeCloseTo(0.7, 12);
  });

  it('is nominal wide open without a pressure difference', () => {
    const { values } = filled((opening, ratio) => opening + ratio);
    expect(nominal({ ...places, forward: values, backward: values.map((x) => 2 * x) })).toEqual({
      forward: 2,
      backward: 4,
    });
  });
});
