import type { GearStage } from '../engine.ts';

/** A ratio of whole numbers in lowest terms. */
export interface Fraction {
  readonly numerator: number;
  readonly denominator: number;
}

const greatestCommonDivisor = (a: number, b: number): number =>
  b === 0 ? a : greatestCommonDivisor(b, a % b);

export const leastCommonMultiple = (a: number, b: number): number => (a / greatestCommonDivisor(a, b)) * b;

const reduced = (numerator: number, denominator: number): Fraction => {
  const divisor = greatestCommonDivisor(numerator, denominator);
  return { numerator: numerator / divisor, denominator: denominator / divisor };
};

/**
 * Speed of the last shaft over the first's, exact: product of driver teeth / driven teeth, in lowest terms.
 * No stages: 1/1. Teeth are positive whole numbers.
 */
export const gearRatio = (stages: readonly GearStage[]): Fraction =>
  stages.reduce(
    (ratio, { driverTeeth, drivenTeeth }) =>
      reduced(ratio.numerator * driverTeeth, ratio.denominator * drivenTeeth),
    { numerator: 1, denominator: 1 },
  );

/** Power out over power in [-]: the product of the stages' efficiencies. */
export const trainEfficiency = (stages: readonly GearStage[]): number =>
  stages.reduce((efficiency, stage) => efficiency * stage.efficiency, 1);

/**
 * Crank turns after which engine and blower repeat: the smallest whole P that makes the delivery pulses whole.
 *
 *   2 lobes (n/d) P whole   =>   P = d / gcd(2 lobes n, d)
 *
 * @param ratio - rotor turns per crank turn, lowest terms
 * @param lobes - of each rotor
 * @returns [turns]
 */
export const periodTurns = (ratio: Fraction, lobes: number): number =>
  ratio.denominator / greatestCommonDivisor(2 * lobes * ratio.numerator, ratio.denominator);

/** Fewest teeth, and greatest ratio of one pair either way, that gears for such drives are made with. Typical. */
const FEWEST_TEETH = 8;
const GREATEST_RATIO = 6;

/** A gear pair that will be hard to find or to cut: which stage, counted from 0, and why. */
export interface GearWarning {
  readonly stage: number;
  readonly message: string;
}

/** Pairs with fewer than 8 teeth on a wheel, or of a ratio above 6 in one step: allowed, but hardly to be had. */
export const gearWarnings = (stages: readonly GearStage[]): readonly GearWarning[] =>
  stages.flatMap(({ driverTeeth, drivenTeeth }, stage) => {
    const warnings: GearWarning[] = [];
    const fewest = Math.min(driverTeeth, drivenTeeth);
    const ratio = Math.max(driverTeeth, drivenTeeth) / fewest;
    const pair = `the pair ${driverTeeth} : ${drivenTeeth}`;
    if (fewest < FEWEST_TEETH)
      warnings.push({
        stage,
        message: `${pair} has a wheel of ${fewest} teeth; below ${FEWEST_TEETH} the roots are undercut and such gears hardly to be had`,
      });
    if (ratio > GREATEST_RATIO)
      warnings.push({
        stage,
        message: `${pair} steps by ${ratio.toFixed(2)} at once; above ${GREATEST_RATIO} take two steps`,
      });
    return warnings;
  });
