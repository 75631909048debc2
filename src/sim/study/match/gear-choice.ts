import { gearRatio } from '../../blower/gear-train.ts';
import type { GearStage } from '../../engine.ts';

/** Teeth that are looked at: pairs with fewer or a steeper step draw a warning. */
const FEWEST = 8;
const MOST = 200;
const STEEPEST = 6;
/** How far the ratio may overshoot so that a pair keeps its distance of axes, over the needed ratio [-]. */
const OVERSHOOT = 0.03;
/** A first pair where the crank drove the rotors directly. */
const NEW_STAGE: GearStage = { driverTeeth: 20, drivenTeeth: 20, efficiency: 0.985 };

/** Stages with other teeth, and whether every pair of wheels still stands at its distance. */
export interface GearChoice {
  readonly gears: readonly GearStage[];
  readonly ratio: number;
  readonly sameCentres: boolean;
}

const ratioOf = (gears: readonly GearStage[]): number => {
  const { numerator, denominator } = gearRatio(gears);
  return numerator / denominator;
};

/**
 * Every train that one pair with other teeth makes of the present one, in order of its ratio beyond what is needed.
 * Where a pair that keeps its sum of teeth, and so its distance of axes, overshoots by no more than 3 %, it comes first.
 *
 * @param needed - rotor over crank speed [-]
 * @param up     - whether the ratio must be at least what is needed, or at most
 */
export function gearChoices(
  stages: readonly GearStage[],
  needed: number,
  up: boolean,
): readonly GearChoice[] {
  const present = stages.length > 0 ? stages : [NEW_STAGE];
  const found: GearChoice[] = [];
  present.forEach((stage, i) => {
    const sum = stage.driverTeeth + stage.drivenTeeth;
    const offer = (driverTeeth: number, drivenTeeth: number, sameCentres: boolean) => {
      const steep = Math.max(driverTeeth, drivenTeeth) / Math.min(driverTeeth, drivenTeeth) > STEEPEST;
      if (Math.min(driverTeeth, drivenTeeth) < FEWEST || steep) return;
      const gears = present.map((each, j) => (j === i ? { ...each, driverTeeth, drivenTeeth } : each));
      const ratio = ratioOf(gears);
      if (up ? ratio >= needed : ratio <= needed) found.push({ gears, ratio, sameCentres });
    };
    for (let driver = FEWEST; driver <= sum - FEWEST; driver++) offer(driver, sum - driver, true);
    for (let driver = FEWEST; driver <= MOST; driver++) offer(driver, stage.drivenTeeth, false);
  });
  const overshoot = (choice: GearChoice) => Math.abs(choice.ratio / needed - 1);
  const rank = (choice: GearChoice) =>
    overshoot(choice) + (choice.sameCentres && overshoot(choice) <= OVERSHOOT ? 0 : OVERSHOOT);
  return found.sort((a, b) => rank(a) - rank(b));
}
