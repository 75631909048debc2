import type { GearStage } from '../engine.ts';

/** A ratio of whole numbers in lowest terms. */
export interface Fraction {
  readonly numerator: number;
  readonly denominator: number;
}

const greatestCommonDivisor = (a: number, b: number): number =>
  b === 0 ? a : greatestCommonDivisor(b, a % b);

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
