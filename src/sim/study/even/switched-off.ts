import type { Model } from '../../cycle/model.ts';
import type { Engine, RowCylinder } from '../../engine.ts';
import { timeMean } from '../../numerics/time-mean.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { nodesLast } from '../held-nodes.ts';
import type { HeldNode } from '../held-nodes.ts';
import { withHeldPlenum } from '../supply/held-plenum.ts';

const eachCylinder = (engine: Engine, change: (cylinder: RowCylinder) => RowCylinder): Engine => ({
  ...engine,
  train: {
    ...engine.train,
    rows: engine.train.rows.map((row) => ({ ...row, cylinders: row.cylinders.map(change) })),
  },
});

/** Rods switched off: plain rods of the master rod's length, side by side on the crank pin. */
export function withPlainRods(engine: Engine): Engine {
  const plain = eachCylinder(engine, (cylinder) => ({
    ...cylinder,
    knuckleRadius: null,
    rodLength: engine.train.masterRodLength,
  }));
  return { ...plain, train: { ...plain.train, knuckleRadius: 0 } };
}

/** Trims switched off: every barrel at the common height, windows and heads alike, sparks like that of row A's master. */
export function withoutTrims(engine: Engine): Engine {
  const [first] = engine.train.rows;
  const { sparkAdvance } = first!.cylinders[first!.master]!;
  return eachCylinder(engine, (cylinder) => ({
    ...cylinder,
    barrelOffset: 0,
    headVolume: 0,
    exhaustTrim: 0,
    transferTrim: 0,
    sparkAdvance,
  }));
}

/** Whether anything would change with the trims switched off. */
export const isTrimmed = (engine: Engine): boolean =>
  JSON.stringify(withoutTrims(engine).train) !== JSON.stringify(engine.train);

/** Whether some rod hangs on a knuckle pin, or differs from the master rod. */
export const isArticulated = (engine: Engine): boolean =>
  engine.train.rows.some((row) =>
    row.cylinders.some(
      ({ knuckleRadius, rodLength }, j) =>
        j !== row.master &&
        ((knuckleRadius ?? engine.train.knuckleRadius) > 0 || rodLength !== engine.train.masterRodLength),
    ),
  );

/**
 * Pulses switched off: plenum and collectors are reservoirs, so that no cylinder feels another. Passages stay, one for each cylinder;
 * there is no blower, and nothing leaves a collector.
 */
export function withHeldEnds(model: Model): Model {
  const held = withHeldPlenum(model);
  const { collectors } = held.engine;
  return {
    ...held,
    engine: {
      ...held.engine,
      // As with the plenum: a reservoir owns no stretch of the state.
      collectors: collectors.map((each) => ({ ...each, outletArea: 0, wall: { ...each.wall, area: 0 } })),
    },
    network: nodesLast(held.network, held.network.at.collectors),
  };
}

/** The time means of a solved point at which plenum and collectors are held. */
export function meanEnds(
  { network }: Model,
  { plenum, collectors, traces }: SolvedPoint,
): readonly HeldNode[] {
  const purity = (trace: { purity: Float64Array }) => timeMean(traces.angle, trace.purity);
  return [
    {
      node: network.at.plenum,
      pressure: plenum.meanPressure,
      temperature: plenum.meanTemperature,
      purity: purity(traces.plenum),
    },
    ...network.at.collectors.map((node, i) => ({
      node,
      pressure: collectors[i]!.meanPressure,
      temperature: collectors[i]!.meanTemperature,
      purity: purity(traces.collectors[i]!),
    })),
  ];
}
