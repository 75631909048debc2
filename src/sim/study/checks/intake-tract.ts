import type { Model } from '../../cycle/model.ts';
import type { Engine } from '../../engine.ts';
import { throttleArea } from '../../exchange/throttle-area.ts';
import { AIR_INDEX } from '../../gas/mixture.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { wettedVolume } from '../wetted-volume.ts';
import { throatSpeed } from '../../exchange/jet.ts';

/** What the carburettor sees. */
export interface IntakeTract {
  /** Ambient less the pressure behind the throttle, mean and largest [Pa]. */
  readonly depression: number;
  readonly greatestDepression: number;
  /** Air speed in the narrowest open area, isentropic at the mean depression, and mean over the bore [m/s]. */
  readonly throatSpeed: number;
  readonly boreSpeed: number;
  /** Open area of the throttle, its coefficient not counted [m^2]. */
  readonly openArea: number;
  /** Everything that mixture wets before it reaches the cylinders, see wetted-volume.ts [m^3]. */
  readonly wettedVolume: number;
}

/**
 * Depression and air speed at the carburettor, from a solved point.
 *
 *   throat speed: see `throatSpeed`, at the mean pressure behind the throttle;   bore speed = mdot / (rho_a A_bore)
 *
 * No pressure is recovered behind the throttle in this model, so the pressure there is the throat's.
 *
 * Valid: subsonic; a venturi ahead of the throttle recovers some, and then its own depression is larger than this.
 * Source: isentropic expansion from rest.
 */
export function intakeTract(model: Model, point: SolvedPoint): IntakeTract {
  const { engine, set } = model;
  const { ambient, intake } = engine;
  const density = ambient.pressure / (set.gasConstants[AIR_INDEX]! * ambient.temperature);
  const boreArea = (Math.PI / 4) * intake.throttle.bore ** 2;
  const depression = ambient.pressure - point.inletBox.meanPressure;
  return {
    depression,
    greatestDepression: ambient.pressure - point.inletBox.minPressure,
    throatSpeed: throatSpeed(depression, ambient),
    boreSpeed: point.engine.airFlow / (density * boreArea),
    openArea: throttleArea(intake.throttle, point.throttle),
    wettedVolume: wettedVolume(model),
  };
}

/**
 * Oil that the mixture carries through the engine [m^3/s].
 *
 *   V_oil = share mdot_fuel / rho_fuel
 *
 * Fuel flow counts oil with the fuel [kg/s], its share is by volume [-], density that of fuel with oil [kg/m^3].
 * None of it passes a crankcase that mixture does not pass: its bearings need a supply of their own.
 */
export const oilFlow = ({ engine, mixture }: Model, point: SolvedPoint): number =>
  (engine.charge.oilShare * point.engine.fuelFlow) / mixture.fuel.liquidDensity;

/** Whether mixture, and the oil in it, passes the crankcase: that of a carburettor, where the crankcase is part of the plenum. */
export const mixturePassesCrankcase = ({
  crankcase,
  charge,
}: Pick<Engine, 'crankcase' | 'charge'>): boolean =>
  crankcase?.isPlenum === true && charge.feed === 'carburettor';
