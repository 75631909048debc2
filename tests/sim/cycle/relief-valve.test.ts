import { describe, expect, it } from 'vitest';
import { at, changed, modelOf, notFinite, presetEngine, solved } from '../../helpers/engines.ts';
import { solveToEnd } from '../../../src/sim/index.ts';
import type { Engine, SolveOptions } from '../../../src/sim/index.ts';
import { mbar } from '../../../src/sim/units.ts';

const caraway = presetEngine('caraway-1');

/** The plenum of Caraway 1 swings between some 150 and 200 mbar gauge at 6000 rpm without a valve. */
const valve = (opens: number, full: number, shuts: number): Engine =>
  changed(caraway, {
    plenum: {
      relief: {
        crackingPressure: opens * mbar,
        fullOpenPressure: full * mbar,
        reseatingPressure: shuts * mbar,
      },
    },
  });
const run = (engine: Engine, options?: SolveOptions) => {
  const { result, next } = solveToEnd(modelOf(engine), at(6000), options);
  return { point: solved(result), next: next! };
};
/** So periodic that a balance over the period closes to 1e-5: what the plenum stores is large beside a turn's fuel. */
const change = 1e-8;
const free = run(valve(170, 200, 170), { change });
const sticking = run(valve(170, 200, 158), { change });
const text = (notes: readonly { readonly text: string }[]) => notes.map((each) => each.text).join(' ');

describe('ReliefValve', () => {
  it.each([
    ['with a free stem', free],
    ['with a stem that sticks', sticking],
  ])(
    '%s closes mass, species and energy to round-off in a periodic state that opens and shuts',
    (_, { point }) => {
      expect(notFinite(point)).toEqual([]);
      const { mass, energy, species, change } = point.residuals;
      expect(Math.max(mass, energy, species)).toBeLessThan(1e-12);
      expect(change).toBeLessThan(1e-6);
      const { fuel, ...rest } = point.engine.balance;
      expect(Object.values(rest).reduce((sum, each) => sum + each, 0) / fuel).toBeCloseTo(1, 5);
      expect(point.relief!.openings).toBe(1);
      expect(point.relief!.leastLift).toBe(0);
      expect(text(point.notes)).toMatch(/lets out .* % .*opens and shuts once a turn: it chatters/);
    },
  );

  it('lets out more where it shuts later, though it lifts less far', () => {
    expect(sticking.point.relief!.massFlow).toBeGreaterThan(1.05 * free.point.relief!.massFlow);
    expect(sticking.point.relief!.greatestLift).toBeLessThan(free.point.relief!.greatestLift);
  });

  it('held by friction comes to the least lift that its pressure leaves it at, wherever the search began, and says so', () => {
    // So wide that the ripple never leaves the band.
    const wide = valve(150, 2000, 10);
    const risen = run(wide);
    const { relief, plenum } = risen.point;
    expect(relief!.leastLift).toBe(relief!.greatestLift);
    const asked = (plenum.maxPressure - caraway.ambient.pressure - 150 * mbar) / (1850 * mbar);
    // The plenum repeats within 1e-6, 0.1 Pa of the 3.6 kPa above opening.
    expect(relief!.greatestLift / asked).toBeCloseTo(1, 4);
    const { memory } = risen.next;
    const open = memory.map((value, i) => (i === memory.length - 1 ? 0.05 : value));
    const fallen = run(wide, { start: { ...risen.next, memory: open } });
    // Another mesh has its points elsewhere beside the peak: a thousandth.
    expect(Math.abs(fallen.point.relief!.greatestLift / relief!.greatestLift - 1)).toBeLessThan(5e-3);
    expect(text(fallen.point.notes)).toMatch(/Friction holds the relief valve/);
  });
});
