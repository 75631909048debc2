import { figure, percent } from '../../charts/format.ts';
import type { PointResult, SolvedPoint } from '../../sim/index.ts';
import type { CylinderFigures } from '../../sim/results/point-result.ts';
import type { GainLine } from '../../sim/study/air/gains-over-speed.ts';
import { rpm } from '../../sim/units.ts';
import type { ShownUnits } from '../units/shown-units.ts';
import { overSpeed, speeds_rpm } from './over-speed.ts';

/** What the Air page draws and lists over speed. */
export interface AirColumns {
  readonly speed_rpm: readonly number[];
  /** Swept volumes of ambient air [-]. */
  readonly delivered: readonly number[];
  readonly kept: readonly number[];
  /** [kg/s] */
  readonly airFlow: readonly number[];
  /** Mean plenum pressure above ambient [Pa]. */
  readonly gauge: readonly number[];
  readonly slip_percent: readonly number[];
  /** At the crank [W]. */
  readonly blowerPower: readonly number[];
  readonly rotor_rpm: readonly number[];
  /** [m/s] */
  readonly tipSpeed: readonly number[];
  /** Of what leaves the blower, and of the plenum, time mean [K]. */
  readonly outletTemperature: readonly number[];
  readonly chargeTemperature: readonly number[];
  /** Mean of the cylinders [kg]. */
  readonly trappedMass: readonly number[];
  /** Highest less lowest plenum pressure, and ambient less inlet box [Pa]. */
  readonly ripple: readonly number[];
  readonly depression: readonly number[];
  /** Of brake power; a gap where there is none. */
  readonly blowerShare_percent: readonly number[];
}

export function airColumns(points: readonly PointResult[], ambientPressure: number): AirColumns {
  const column = (pick: (point: SolvedPoint) => number): number[] => overSpeed(points, pick);
  return {
    speed_rpm: speeds_rpm(points),
    delivered: column((point) => point.engine.deliveryRatio),
    kept: column((point) => point.engine.chargingEfficiency),
    airFlow: column((point) => point.engine.airFlow),
    gauge: column((point) => point.plenum.meanPressure - ambientPressure),
    slip_percent: column((point) => 100 * point.blower.slipFraction),
    blowerPower: column((point) => point.blower.shaftPower),
    rotor_rpm: column((point) => point.blower.rotorSpeed / rpm),
    tipSpeed: column((point) => point.blower.tipSpeed),
    outletTemperature: column((point) => point.blower.outletTemperature),
    chargeTemperature: column((point) => point.plenum.meanTemperature),
    trappedMass: column(
      ({ cylinders }) => cylinders.reduce((sum, each) => sum + each.trappedMass, 0) / cylinders.length,
    ),
    ripple: column(({ plenum }) => plenum.maxPressure - plenum.minPressure),
    depression: column((point) => ambientPressure - point.inletBox.meanPressure),
    blowerShare_percent: column(({ blower, engine }) =>
      engine.brakePower > 0 ? (100 * blower.shaftPower) / engine.brakePower : NaN,
    ),
  };
}

/** What one more tooth brings over speed; gaps where that has no answer. */
export const gainColumns = (lines: readonly GainLine[]) => ({
  speed_rpm: lines.map(({ speed }) => speed / rpm),
  deliveryRatio: lines.map(({ gain }) => gain?.deliveryRatio ?? NaN),
  /** [W] */
  brakePower: lines.map(({ gain }) => gain?.brakePower ?? NaN),
});

/** Whether a cylinder fires at all: old gas that is fresh itself hides what was kept of the new. */
export const burns = ({ burnedShare }: Pick<CylinderFigures, 'burnedShare'>): boolean => burnedShare > 0;

/** What a gauge would read, the flow beside it, and how much of it stays. */
export function airDetail(
  { plenum, engine, cylinders }: SolvedPoint,
  ambientPressure: number,
  units: ShownUnits,
): string {
  const gauge = units.both('pressure', plenum.meanPressure - ambientPressure, 2);
  const stays = cylinders.some(burns)
    ? `, of which ${percent(engine.trappingEfficiency)} stays in the cylinders.`
    : '. Nothing burns, so what stays of it cannot be told from what was there.';
  return (
    `A gauge on the plenum would read ${gauge}, with ${units.text('mass flow', engine.airFlow)} of air going through: ` +
    `${figure(engine.deliveryRatio)} swept volumes${stays}`
  );
}
