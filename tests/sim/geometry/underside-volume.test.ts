import { describe, expect, it } from 'vitest';
import { undersideSwing, undersideVolume } from '../../../src/sim/geometry/underside-volume.ts';
import { TURN } from '../../../src/sim/units.ts';
import { changed, modelOf, presetEngine } from '../../helpers/engines.ts';

const caraway = presetEngine('caraway-1');
const { crankRadius: r, masterRodLength: L } = caraway.train;
const lambda = r / L;

/** Caraway 1 with as many cylinders, evenly spaced, all on plain rods on one pin. */
function plainRadial(cylinders: number) {
  const [row] = caraway.train.rows;
  const seats = Array.from({ length: cylinders }, (_, j) => ({
    ...row.cylinders[0],
    axisAngle: (TURN * j) / cylinders,
    knuckleAngle: 0,
    rodLength: L,
  }));
  return modelOf(
    changed(caraway, { train: { knuckleRadius: 0, rows: [{ ...row, master: 0, cylinders: seats }] } }),
  ).geometry;
}

/** Greatest less least volume under all pistons, over bore area and crank radius. */
function swing(cylinders: number): number {
  const geometry = plainRadial(cylinders);
  const { least, greatest } = undersideSwing(geometry);
  return (greatest - least) / (geometry.boreArea * r);
}

describe('undersideVolume', () => {
  it('swings by the whole swept volume under one piston', () => {
    expect(swing(1)).toBeCloseTo(2, 9);
  });

  // What N divides of the harmonics of a plain rod, N times over, twice its amplitude: leading terms in λ.
  it.each([
    [2, 4 * (lambda / 4 + lambda ** 3 / 16)],
    [3, (6 * lambda ** 5) / 512],
    [4, (8 * lambda ** 3) / 64],
  ])('swings under %i even pistons as the harmonic that their number leaves, to 8 %%', (cylinders, left) => {
    expect(Math.abs(swing(cylinders) / left - 1)).toBeLessThan(0.08);
  });

  it('hardly moves under three and more: a thousandth of one piston’s at 4, and 1e-5, 1e-8, 1e-11 at 3, 5 and 7', () => {
    for (const [cylinders, share] of [
      [3, 1e-5],
      [4, 1e-3],
      [5, 1e-8],
      [7, 1e-11],
    ])
      expect(swing(cylinders)).toBeLessThan(2 * share);
  });

  it('is nothing in the middle of the strokes: it rises and falls about the volume that is stated', () => {
    const geometry = plainRadial(1);
    expect(undersideVolume(geometry, geometry.cylinders[0].tdc)).toBeCloseTo(geometry.sweptVolume / 2, 12);
    expect(undersideVolume(geometry, geometry.cylinders[0].bdc)).toBeCloseTo(-geometry.sweptVolume / 2, 12);
  });

  it('is left with 1 to 3 % of the whole swept volume under the seven articulated rods of Lovage 7', () => {
    const { geometry } = modelOf(presetEngine('lovage-7'));
    const { least, greatest } = undersideSwing(geometry);
    const share = (greatest - least) / geometry.sweptVolume;
    expect(share).toBeGreaterThan(0.01);
    expect(share).toBeLessThan(0.03);
  });
});
