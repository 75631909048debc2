import { criticalPressure, fuelThroughJet, jetFor, venturiDepression } from '../exchange/jet.ts';
import type { Before, Venturi } from '../exchange/jet.ts';
import { ratioBehind } from '../exchange/orifices-in-series.ts';
import { AIR } from '../gas/air.ts';
import { heatRatio } from '../gas/polynomial.ts';
import type { Model } from './model.ts';

/** Mixtures between which λ follows a jet; beyond them it is held, and a note says so [-]. */
export const JET_LAMBDAS = [0.5, 2] as const;

/**
 * λ that the design's jet gives at an air flow [-], unbounded; Infinity where no fuel comes.
 *
 *   lambda = mdot_a / (mdot_f s),   mdot_f(depression): fuelThroughJet,   depression(mdot_a): venturiDepression
 *
 * @param model   - whose design has a jet; its throat is the venturi, or the bore at the throttle where there is none
 * @param airFlow - mean, through the throttle [kg/s]
 *
 * Valid: as these. The bowl is at the pressure before the venturi, behind the restrictor where there is one. The mean flow stands
 * for the pulsating one: behind a blower it pulsates little; where it does, the jet gives less, for it goes nearly with the flow.
 */
export function lambdaOfJet(model: Model, airFlow: number): number {
  const drawn = venturiOf(model);
  const before = airBefore(model, airFlow);
  const depression = venturiDepression(airFlow, drawn, before) ?? before.pressure - criticalPressure(before);
  const fuel = fuelThroughJet(depression, drawn);
  return fuel > 0 ? airFlow / (fuel * model.mixture.stoichiometricAirFuelRatio) : Infinity;
}

/** Bore of the jet that would give a λ at an air flow in the design's carburettor [m]; null where none would. */
export const jetBoreFor = (model: Model, lambda: number, airFlow: number): number | null =>
  jetFor(
    lambda,
    airFlow,
    venturiOf(model),
    airBefore(model, airFlow),
    model.mixture.stoichiometricAirFuelRatio,
  );

function venturiOf({ engine, mixture }: Model): Venturi {
  const { jet } = engine.charge;
  if (!jet) throw new RangeError('the design has no jet');
  const throat = engine.intake.venturi ?? engine.intake.throttle;
  return {
    bore: throat.bore,
    airDischarge: throat.dischargeCoefficient,
    jet: jet.bore,
    jetDischarge: jet.dischargeCoefficient,
    lift: jet.lift,
    fuelDensity: mixture.fuel.liquidDensity,
  };
}

/** Air before the venturi, behind a restrictor where there is one. */
function airBefore({ engine: { ambient, intake } }: Model, airFlow: number): Before {
  const { temperature } = ambient;
  const { restrictor } = intake;
  let { pressure } = ambient;
  if (restrictor) {
    const gamma = heatRatio(AIR, temperature);
    const CdA = 0.25 * Math.PI * restrictor.bore ** 2 * restrictor.dischargeCoefficient;
    const flow = (airFlow * Math.sqrt(AIR.gasConstant * temperature)) / pressure;
    const choked =
      1 - (1 - restrictor.recovered) * (1 - criticalPressure({ pressure, temperature }) / pressure);
    pressure *= ratioBehind([{ CdA, recovered: restrictor.recovered }], Math.max(0, flow), gamma) ?? choked;
  }
  return { pressure, temperature };
}

/** λ held within JET_LAMBDAS [-]. */
export const heldLambda = (lambda: number): number =>
  Math.min(Math.max(lambda, JET_LAMBDAS[0]), JET_LAMBDAS[1]);
