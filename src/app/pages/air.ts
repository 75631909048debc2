import { figure, percent } from '../../charts/format.ts';
import type { PointResult, SolvedPoint } from '../../sim/index.ts';
import { bar, celsiusFromKelvin, gram, kW, psi, rpm } from '../../sim/units.ts';
import { overSpeed, speeds_rpm } from './over-speed.ts';

/** What the Air page draws and lists over speed. */
export interface AirColumns {
  readonly speed_rpm: readonly number[];
  /** Swept volumes of ambient air [-]. */
  readonly delivered: readonly number[];
  readonly kept: readonly number[];
  readonly air_gPerS: readonly number[];
  /** Mean plenum pressure above ambient. */
  readonly gauge_bar: readonly number[];
  readonly gauge_psi: readonly number[];
  readonly slip_percent: readonly number[];
  readonly blower_kW: readonly number[];
  readonly rotor_rpm: readonly number[];
  readonly tip_mPerS: readonly number[];
  readonly outlet_C: readonly number[];
}

export function airColumns(points: readonly PointResult[], ambientPressure: number): AirColumns {
  const gauge = (point: SolvedPoint): number => point.plenum.meanPressure - ambientPressure;
  const column = (pick: (point: SolvedPoint) => number): number[] => overSpeed(points, pick);
  return {
    speed_rpm: speeds_rpm(points),
    delivered: column((point) => point.engine.deliveryRatio),
    kept: column((point) => point.engine.chargingEfficiency),
    air_gPerS: column((point) => point.engine.airFlow / gram),
    gauge_bar: column((point) => gauge(point) / bar),
    gauge_psi: column((point) => gauge(point) / psi),
    slip_percent: column((point) => 100 * point.blower.slipFraction),
    blower_kW: column((point) => point.blower.shaftPower / kW),
    rotor_rpm: column((point) => point.blower.rotorSpeed / rpm),
    tip_mPerS: column((point) => point.blower.tipSpeed),
    outlet_C: column((point) => celsiusFromKelvin(point.blower.outletTemperature)),
  };
}

/** What a gauge would read, the flow beside it, and how much of it stays. */
export function airDetail({ plenum, engine }: SolvedPoint, ambientPressure: number): string {
  const gauge = plenum.meanPressure - ambientPressure;
  return (
    `A gauge on the plenum would read ${figure(gauge / bar, 2)} bar (${figure(gauge / psi, 2)} psi), with ${figure(engine.airFlow / gram)} g/s of air going through: ` +
    `${figure(engine.deliveryRatio)} swept volumes, of which ${percent(engine.trappingEfficiency)} stays in the cylinders.`
  );
}
