import { describe, expect, it } from 'vitest';
import type { Engine } from '../../../../src/sim/index.ts';
import { finishStudy, solveToEnd } from '../../../../src/sim/index.ts';
import { USUAL_AIMS } from '../../../../src/sim/study/even/aims.ts';
import type { Aims } from '../../../../src/sim/study/even/aims.ts';
import { evenOut } from '../../../../src/sim/study/even/even-out.ts';
import { usualMeans, withShopItems } from '../../../../src/sim/study/even/means.ts';
import type { AllowedMeans } from '../../../../src/sim/study/even/means.ts';
import { spreadOf } from '../../../../src/sim/study/even/spread.ts';
import { deg, mm } from '../../../../src/sim/units.ts';
import { sound } from '../../../design/designs.ts';
import { at, modelOf, presetEngine, solveAt, solved } from '../../../helpers/engines.ts';
import { referenceFive } from '../../geometry/reference-five.ts';

/** Rods and barrels of tests/reference/articulated-a.csv, edges 24 and 30 mm below each piston's own top dead centre. */
function referenceRow(): Engine {
  const parsley = presetEngine('parsley-5');
  const { train, cylinder } = referenceFive();
  const top = (depth: number) => ({ kind: 'depth' as const, depth });
  const { windows } = parsley;
  return {
    ...parsley,
    train,
    cylinder: { ...cylinder, bore: parsley.cylinder.bore },
    windows: {
      ...windows,
      exhaust: windows.exhaust.map((each) => ({ ...each, top: top(24 * mm) })),
      transfer: windows.transfer.map((each) => ({ ...each, top: top(30 * mm) })),
    },
  };
}
const five = modelOf(referenceRow());
const { next } = solveToEnd(five, at(5000));
const onlyTiming: Aims = {
  timing: { tolerance: 0.2 * deg, weight: 1 },
  compression: { tolerance: 0.02, weight: 0 },
  trappedMass: { tolerance: 0.01, weight: 0 },
};
const openings = (cylinders: readonly { exhaustOpening: number }[]) =>
  spreadOf(cylinders.map((each) => each.exhaustOpening)).range / deg;
const timed = (means: readonly AllowedMeans[]) =>
  sound(finishStudy(evenOut(five, at(5000), onlyTiming, means, next)));

describe('evenOut', () => {
  it('brings the exhaust openings of the tabulated five from 11° apart to below 0.2°, trimming windows in steps of 0.05 mm', () => {
    const evened = timed([
      { name: 'exhaustTrim', step: 0.05 * mm, least: -4 * mm, most: 4 * mm },
      { name: 'transferTrim', step: 0.05 * mm, least: -4 * mm, most: 4 * mm },
    ]);
    expect(openings(evened.before)).toBeGreaterThan(8);
    expect(openings(evened.after)).toBeLessThan(0.2);
    expect(evened.reached).toBe(true);
    expect(evened.atLimit).toEqual([]);
    for (const { from, to } of evened.items) {
      const steps = (to - from) / (0.05 * mm);
      expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-6);
    }
  });

  it('says which bound stops it where windows may move by 0.5 mm only', () => {
    const evened = timed([{ name: 'exhaustTrim', step: 0.05 * mm, least: -0.5 * mm, most: 0.5 * mm }]);
    expect(evened.reached).toBe(false);
    expect(openings(evened.after)).toBeLessThan(openings(evened.before));
    expect(evened.atLimit.length).toBeGreaterThan(0);
    for (const { from, to } of evened.atLimit) expect(Math.abs(to - from)).toBeCloseTo(0.5 * mm, 12);
  });

  it('cuts the spread of Lovage 7’s trapped masses to a third or less, as the engine so altered shows when solved by itself', () => {
    const lovage = presetEngine('lovage-7');
    const means = (['barrel', 'exhaustTrim', 'transferTrim'] as const).map(usualMeans);
    const evened = sound(finishStudy(evenOut(modelOf(lovage), at(6000), USUAL_AIMS, means)));
    const share = (masses: readonly number[]) => spreadOf(masses).range / spreadOf(masses).mean;
    const before = share(evened.before.map((each) => each.trappedMass));
    const after = share(evened.after.map((each) => each.trappedMass));
    expect(before).toBeGreaterThan(0.07);
    expect(after).toBeLessThan(before / 3);
    expect(evened.reached).toBe(true);
    const { cylinders } = solved(solveAt(withShopItems(lovage, evened.items), 6000));
    // From the cold start, so within what two searches leave.
    expect(share(cylinders.map((each) => each.trappedMass))).toBeCloseTo(after, 3);
  });

  it('leaves an engine alone whose cylinders are alike enough', () => {
    const wide: Aims = { ...onlyTiming, timing: { tolerance: 30 * deg, weight: 1 } };
    const evened = sound(finishStudy(evenOut(five, at(5000), wide, [usualMeans('exhaustTrim')], next)));
    expect(evened.items).toEqual([]);
    expect(evened.reached).toBe(true);
  });
});
