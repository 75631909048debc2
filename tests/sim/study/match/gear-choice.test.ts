import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gearRatio, gearWarnings } from '../../../../src/sim/blower/gear-train.ts';
import { gearChoices } from '../../../../src/sim/study/match/gear-choice.ts';

const stage = (driverTeeth: number, drivenTeeth: number) => ({ driverTeeth, drivenTeeth, efficiency: 0.98 });

describe('gearChoices', () => {
  it('keeps the sum of teeth, and so the centres, where that overshoots by no more than 3 %: 2.55 from 36 : 18 by 39 : 15', () => {
    const [first] = gearChoices([stage(36, 18)], 2.55, true);
    expect(first).toMatchObject({ sameCentres: true, gears: [{ driverTeeth: 39, drivenTeeth: 15 }] });
    expect(first!.ratio).toBeCloseTo(2.6, 12);
  });

  it('takes another driving wheel where the centres would cost too much: 1.98 from 30 : 20 by 40 : 20', () => {
    const [first] = gearChoices([stage(30, 20)], 1.98, true);
    expect(first).toMatchObject({ sameCentres: false, gears: [{ driverTeeth: 40, drivenTeeth: 20 }] });
  });

  it('changes one pair of two, and gives a first pair where there was none', () => {
    const [two] = gearChoices([stage(40, 20), stage(30, 30)], 2.2, true);
    const changed = two!.gears.filter(
      (each, i) => each.driverTeeth !== [40, 30][i] || each.drivenTeeth !== [20, 30][i],
    );
    expect(changed).toHaveLength(1);
    expect(gearChoices([], 1.5, true)[0]!).toMatchObject({ ratio: 1.5, gears: [{ efficiency: 0.985 }] });
  });

  it('never undershoots what is needed, nor overshoots what is allowed, and draws no warning, for any pair', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 80 }),
        fc.integer({ min: 10, max: 80 }),
        fc.double({ min: 0.4, max: 4, noNaN: true }),
        fc.boolean(),
        (driver, driven, needed, up) => {
          for (const { gears, ratio } of gearChoices([stage(driver, driven)], needed, up).slice(0, 5)) {
            const { numerator, denominator } = gearRatio(gears);
            expect(ratio).toBe(numerator / denominator);
            expect(up ? ratio >= needed : ratio <= needed).toBe(true);
            expect(gearWarnings(gears)).toEqual([]);
          }
        },
      ),
      { numRuns: 50 },
    );
  });
});
