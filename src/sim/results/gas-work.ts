import { TURN } from '../units.ts';
import type { SolvedPoint } from './point-result.ts';

/** What the work of the gas on the pistons becomes, at one point. */
export interface WorkShare {
  readonly what: GasWorkPart;
  /** [W], as mean effective pressure [Pa], of the work of the gas; null where the gas does none [-]. */
  readonly power: number;
  readonly meanPressure: number;
  readonly share: number | null;
}

export type GasWorkPart =
  | 'rings'
  | 'bearings'
  | 'windage'
  | 'oilPump'
  | 'starter'
  | 'blowerGas'
  | 'blowerDrag'
  | 'crankcase'
  | 'outputGears'
  | 'brake';

/**
 * Where the work of the gas goes, part by part:
 *
 *   imep V_s N = rings + bearings + windage + oil pump + starter + blower's work on its gas + its gears, bearings and drag
 *                + crankcase pumping + output gears + brake
 *
 * Each part from its own figure: friction by frictionParts, the blower's drag as shaft power less work on the gas, the output gears as what the
 * balance's friction holds beyond fmep. The sum is therefore a test of them.
 */
export function gasWork({ engine, blower, crankcase, speed }: SolvedPoint): readonly WorkShare[] {
  const { frictionParts: parts, balance, fmep, imep, sweptVolume } = engine;
  const perPressure = (sweptVolume * speed) / TURN;
  const powers: Record<GasWorkPart, number> = {
    rings: parts.rings * perPressure,
    bearings: parts.bearings * perPressure,
    windage: parts.windage * perPressure,
    oilPump: parts.oilPump * perPressure,
    starter: parts.starter * perPressure,
    blowerGas: blower.fluidPower,
    blowerDrag: blower.shaftPower - blower.fluidPower,
    crankcase: crankcase?.pumpingPower ?? 0,
    outputGears: balance.friction - fmep * perPressure,
    brake: balance.brake,
  };
  return (Object.keys(powers) as GasWorkPart[]).map((what) => ({
    what,
    power: powers[what],
    meanPressure: powers[what] / perPressure,
    share: imep > 0 ? powers[what] / (imep * perPressure) : null,
  }));
}
