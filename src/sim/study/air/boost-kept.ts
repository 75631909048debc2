import type { Model } from '../../cycle/model.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { feedFigures } from './fuel-feed.ts';

/** Whether boost stays in a cylinder, and what of the mixture does. */
export interface BoostKept {
  readonly cylinders: readonly {
    readonly row: number;
    readonly number: number;
    /** When the last window has shut, and less the mean of plenum and of its own collector [Pa]. */
    readonly pressure: number;
    readonly overPlenum: number;
    readonly overCollector: number;
    /** Of the trapped charge, air over stoichiometric air; null without fuel in it [-]. */
    readonly lambda: number | null;
  }[];
  /** As the design states it, and of all that is shut in [-]; null without fuel in it. Injected into cylinders the two are one. */
  readonly suppliedLambda: number;
  readonly trappedLambda: number | null;
  /** Fuel that leaves unburned through the windows, over fuel supplied [-]; as mass [kg/s] and as liquid [m^3/s]. */
  readonly fuelLostShare: number;
  readonly fuelLost: number;
  readonly fuelLostVolume: number;
}

/**
 * How much of boost and mixture a solved point keeps.
 *
 *   fuel in a trapped charge = purity m - m_air       m, m_air [kg];   fuel lost: see `feedFigures`
 */
export function boostKept(model: Model, point: SolvedPoint): BoostKept {
  const { engine, mixture } = model;
  const { stoichiometricAirFuelRatio: stoichiometric, fuel } = mixture;
  const injected = engine.charge.feed === 'cylinders';
  const lambda = (air: number, fuelIn: number) =>
    injected ? point.engine.lambda : fuelIn > 0 ? air / fuelIn / stoichiometric : null;
  const seats = engine.train.rows.flatMap((row) => row.cylinders);
  const vapours = point.cylinders.map(
    ({ purity, trappedMass, trappedAir }) => purity * trappedMass - trappedAir,
  );
  const cylinders = point.cylinders.map((each, j) => ({
    row: each.row,
    number: each.number,
    pressure: each.pressureAtExhaustClosing,
    overPlenum: each.pressureAtExhaustClosing - point.plenum.meanPressure,
    overCollector: each.pressureAtExhaustClosing - point.collectors[seats[j]!.collector]!.meanPressure,
    lambda: lambda(each.trappedAir, vapours[j]!),
  }));
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const { fuelLost, fuelFlow } = feedFigures(model, point);
  return {
    cylinders,
    suppliedLambda: point.engine.lambda,
    trappedLambda: lambda(sum(point.cylinders.map((each) => each.trappedAir)), sum(vapours)),
    fuelLostShare: fuelFlow > 0 ? fuelLost / fuelFlow : 0,
    fuelLost,
    fuelLostVolume: fuelLost / fuel.liquidDensity,
  };
}
