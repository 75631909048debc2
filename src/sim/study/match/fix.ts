import type { Blower, GearStage } from '../../engine.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import type { KnobName } from './knobs.ts';
import { figureOf } from './target.ts';
import type { Target } from './target.ts';

/** What a fix costs: figures of the point it leads to, beside those of the design as it is. */
export interface FixFigures {
  /** Figure that was asked for [unit of the target]. */
  readonly figure: number;
  readonly deliveryRatio: number;
  /** [W] */
  readonly brakePower: number;
  readonly blowerPower: number;
  /** Of the plenum, time mean [K]. */
  readonly chargeTemperature: number;
  readonly rotorSpeed: number;
  readonly tipSpeed: number;
}

/** One way to the target, or how near it comes. */
export interface Fix {
  readonly vary: KnobName;
  readonly reached: boolean;
  /** Value of what is varied as it is, and as it is to be, in base SI; nearest where it is not reached. */
  readonly from: number;
  readonly to: number;
  readonly figures: FixFigures;
  /** Teeth, for the drive ratio alone, and whether the wheels keep their distances. */
  readonly gears: readonly GearStage[] | null;
  readonly sameCentres: boolean;
  /** Why the target is out of reach; null where it is reached. */
  readonly reason: string | null;
  /** Stated limits that the fix passes. */
  readonly beyond: readonly ('rotor speed' | 'tip speed')[];
}

export const fixFigures = (target: Target, point: SolvedPoint): FixFigures => ({
  figure: figureOf(target.figure, point),
  deliveryRatio: point.engine.deliveryRatio,
  brakePower: point.engine.brakePower,
  blowerPower: point.blower.shaftPower,
  chargeTemperature: point.plenum.meanTemperature,
  rotorSpeed: point.blower.rotorSpeed,
  tipSpeed: point.blower.tipSpeed,
});

/** Stated limits of a blower that a point passes. */
export const limitsPassed = (
  { maxSpeed, maxTipSpeed }: Blower,
  { blower: { rotorSpeed, tipSpeed } }: SolvedPoint,
): Fix['beyond'] => [
  ...(rotorSpeed > maxSpeed ? (['rotor speed'] as const) : []),
  ...(tipSpeed > maxTipSpeed ? (['tip speed'] as const) : []),
];
