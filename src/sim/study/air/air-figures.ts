import type { Model } from '../../cycle/model.ts';
import { breathedAir } from '../../gas/moist-air.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { TURN } from '../../units.ts';

/** One line of the table of air over speed; definitions in docs/conventions.md. */
export interface AirFigures {
  readonly speed: number;
  readonly deliveryRatio: number;
  readonly chargingEfficiency: number;
  /** Mean of the cylinders, when trapped [kg]. */
  readonly trappedMass: number;
  /** Through the throttle [kg/s], and what the wanted delivery ratio takes. */
  readonly airFlow: number;
  readonly wantedAirFlow: number;
  /** Time mean [Pa], less ambient, and highest less lowest. */
  readonly plenumPressure: number;
  readonly plenumGauge: number;
  readonly plenumRipple: number;
  readonly slipFraction: number;
  /** At the crank [W], and over brake power; null where there is none. */
  readonly blowerPower: number;
  readonly blowerShare: number | null;
  readonly brakePower: number;
  /** Of the plenum, time mean, and of what leaves the blower [K]. */
  readonly chargeTemperature: number;
  readonly outletTemperature: number;
  /** Ambient less inlet box, time mean [Pa]. */
  readonly inletDepression: number;
  readonly rotorSpeed: number;
  readonly tipSpeed: number;
}

/** Air that a delivery ratio of one takes at a speed [kg/s]: ambient air in all swept volume, every turn. */
export function referenceAirFlow(
  { engine, geometry }: Pick<Model, 'engine' | 'geometry'>,
  speed: number,
): number {
  const { pressure, temperature } = engine.ambient;
  const density = pressure / (breathedAir(engine.ambient).gas.gasConstant * temperature);
  return (density * geometry.sweptVolume * speed) / TURN;
}

/** What the table of air says of a solved point. */
export function airFigures(model: Model, point: SolvedPoint): AirFigures {
  const { ambient, wanted } = model.engine;
  const { engine, blower, plenum, inletBox, cylinders } = point;
  return {
    speed: point.speed,
    deliveryRatio: engine.deliveryRatio,
    chargingEfficiency: engine.chargingEfficiency,
    trappedMass: cylinders.reduce((sum, each) => sum + each.trappedMass, 0) / cylinders.length,
    airFlow: engine.airFlow,
    wantedAirFlow: wanted.deliveryRatio * referenceAirFlow(model, point.speed),
    plenumPressure: plenum.meanPressure,
    plenumGauge: plenum.meanPressure - ambient.pressure,
    plenumRipple: plenum.maxPressure - plenum.minPressure,
    slipFraction: blower.slipFraction,
    blowerPower: blower.shaftPower,
    blowerShare: engine.brakePower > 0 ? blower.shaftPower / engine.brakePower : null,
    brakePower: engine.brakePower,
    chargeTemperature: plenum.meanTemperature,
    outletTemperature: blower.outletTemperature,
    inletDepression: ambient.pressure - inletBox.meanPressure,
    rotorSpeed: blower.rotorSpeed,
    tipSpeed: blower.tipSpeed,
  };
}
