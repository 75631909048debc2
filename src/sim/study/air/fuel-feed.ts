import { buildModel } from '../../cycle/model.ts';
import type { Model } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import { solve } from '../../cycle/solve.ts';
import type { Charge } from '../../engine.ts';
import { USUAL_DROP } from '../../gas/drop-evaporation.ts';
import type { Outcome } from '../../outcome.ts';
import { failure, success } from '../../outcome.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { doing } from '../study-step.ts';
import type { Study } from '../study-step.ts';

/** What fuel does in an engine, by where it joins the air. */
export interface FeedFigures {
  readonly feed: Charge['feed'];
  /** Fed, and lost with the air before the windows have shut [kg/s]. */
  readonly fuelFlow: number;
  readonly fuelLost: number;
  /** Of the fuel's energy, what leaves unburned, in whatever form [-]. */
  readonly unburnedShare: number;
  readonly brakePower: number;
  readonly deliveryRatio: number;
  readonly chargingEfficiency: number;
  /** Of the plenum, time mean [K]. */
  readonly chargeTemperature: number;
}

/**
 * Fuel figures of a solved point.
 *
 *   fuel lost = (1 - trapping efficiency) fuel fed;   nothing where it is injected after the windows have shut
 *
 * Valid: fuel, vapour or liquid, goes where the air goes, so it is lost as air is; what a cylinder does not burn comes on top.
 */
export function feedFigures({ engine: { charge } }: Model, { engine, plenum }: SolvedPoint): FeedFigures {
  const lost = charge.feed === 'cylinders' ? 0 : 1 - engine.trappingEfficiency;
  const { balance } = engine;
  return {
    feed: charge.feed,
    fuelFlow: engine.fuelFlow,
    fuelLost: lost * engine.fuelFlow,
    unburnedShare: balance.fuel > 0 ? balance.unburned / balance.fuel : 0,
    brakePower: engine.brakePower,
    deliveryRatio: engine.deliveryRatio,
    chargingEfficiency: engine.chargingEfficiency,
    chargeTemperature: plenum.meanTemperature,
  };
}

/** What a design is set beside: injection into its cylinders, or a carburettor where it has that. */
export const otherFeed = (feed: Charge['feed']): Charge['feed'] =>
  feed === 'cylinders' ? 'carburettor' : 'cylinders';

/**
 * The same engine at the same point with fuel that joins the air elsewhere, solved; at the same lambda of what is shut in, since
 * premixed fuel is lost as its air is and lambda stays. Drops are the usual ones of such a feed.
 */
export function* withFeed(
  model: Model,
  point: OperatingPoint,
  feed: Charge['feed'],
): Study<Outcome<FeedFigures>> {
  const { engine } = model;
  let { lambda } = engine.charge;
  if (engine.charge.jet) {
    const { result } = yield* doing('the mixture that its jet gives', solve(model, point));
    if (!result.converged) return failure([{ path: '', message: result.reason }]);
    ({ lambda } = result.engine);
  }
  const charge = { ...engine.charge, lambda, jet: null, feed, dropDiameter: USUAL_DROP[feed] };
  const built = buildModel({ ...engine, charge });
  if (!built.ok) return built;
  const { result } = yield* doing('fuel that joins elsewhere', solve(built.value, point));
  return result.converged
    ? success(feedFigures(built.value, result))
    : failure([{ path: '', message: result.reason }]);
}
