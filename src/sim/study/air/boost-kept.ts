import type { Model } from '../../cycle/model.ts';
import type { SolvedPoint } from '../../results/point-result.ts';

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
  /** Supplied by the carburettor, and trapped, all cylinders [-]; null where none is trapped. */
  readonly suppliedLambda: number;
  readonly trappedLambda: number | null;
  /** Fuel that leaves unburned through the windows, over fuel supplied [-]; as mass [kg/s] and as liquid [m^3/s]. */
  readonly fuelLostShare: number;
  readonly fuelLost: number;
  readonly fuelLostVolume: number;
  /** What injection after the exhaust has shut would burn at the same trapped mixture [kg/s]. */
  readonly injectedFuelFlow: number;
}

/**
 * How much of boost and mixture a solved point keeps.
 *
 *   fuel lost = (1 - trapping efficiency) fuel supplied,   vapour in a trapped charge = purity m - m_air       m, m_air [kg]
 *
 * Valid: fuel vapour goes where the air goes, so it is lost as air is; what a cylinder does not burn comes on top.
 */
export function boostKept(model: Model, point: SolvedPoint): BoostKept {
  const { engine, mixture } = model;
  const { stoichiometricAirFuelRatio: stoichiometric, fuel } = mixture;
  const lambda = (air: number, vapour: number) => (vapour > 0 ? air / vapour / stoichiometric : null);
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
  const lost = 1 - point.engine.trappingEfficiency;
  const fuelLost = lost * point.engine.fuelFlow;
  return {
    cylinders,
    suppliedLambda: engine.charge.lambda,
    trappedLambda: lambda(sum(point.cylinders.map((each) => each.trappedAir)), sum(vapours)),
    fuelLostShare: lost,
    fuelLost,
    fuelLostVolume: fuelLost / fuel.liquidDensity,
    injectedFuelFlow: point.engine.fuelFlow - fuelLost,
  };
}
