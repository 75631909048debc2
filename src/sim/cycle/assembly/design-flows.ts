import { smoothingPressure } from '../../exchange/smooth-orifice.ts';
import { AIR_INDEX } from '../../gas/mixture.ts';
import { TURN } from '../../units.ts';
import type { Model } from '../model.ts';
import type { OperatingPoint } from '../operating-point.ts';

/** Windows are open for about a third of a turn: while they are, three times the mean flows. */
const WINDOW_PEAK = 3;
/**
 * Pressure difference within which a flow counts as about to turn, in multiples of its smoothing at the point's own speed: a
 * hundredth of the difference that carries the design flow.
 */
const TURNING = 10;

/** Flow through the parts of an engine at the wanted delivery ratio, ambient density [kg/s]: what openings are made for. */
export interface DesignFlows {
  readonly total: number;
  readonly perCylinder: number;
  /** Through one open window. */
  readonly window: number;
  readonly perCollector: number;
  /**
   * Smoothing pressure of an opening, see SmoothOrifice [Pa]. Openings are made for the top of the speed range, so that is where
   * their design flow is taken.
   *
   * @param CdA  - [m^2]; what passes nothing needs no smoothing
   * @param flow - its design flow at the point's speed [kg/s]
   */
  smoothing(CdA: number, flow: number): number;
  /** See EdgeFlows.turning, for an opening of this smoothing [Pa]. */
  turning(smoothing: number): number;
}

export function designFlows({ engine, geometry, set }: Model, { speed }: OperatingPoint): DesignFlows {
  const { ambient, wanted, collectors } = engine;
  const density = ambient.pressure / (set.gasConstants[AIR_INDEX] * ambient.temperature);
  const total = (wanted.deliveryRatio * density * geometry.sweptVolume * speed) / TURN;
  const perCylinder = total / geometry.cylinders.length;
  const top = wanted.maxSpeed / speed;
  return {
    total,
    perCylinder,
    window: WINDOW_PEAK * perCylinder,
    perCollector: total / collectors.length,
    smoothing: (CdA, flow) => (CdA > 0 ? smoothingPressure(top * flow, CdA, density) : 1),
    turning: (smoothing) => (TURNING * smoothing) / (top * top),
  };
}
