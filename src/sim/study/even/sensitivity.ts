import { buildModel } from '../../cycle/model.ts';
import type { Model } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import { solve } from '../../cycle/solve.ts';
import type { SolvedStart } from '../../cycle/solve.ts';
import type { Engine, RowCylinder } from '../../engine.ts';
import { geometryOf } from '../../geometry/geometry-of.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { doing } from '../study-step.ts';
import type { Study } from '../study-step.ts';
import { MEANS_BY_NAME, withShopItems } from './means.ts';
import type { MeansName } from './means.ts';

/** How a figure of every cylinder answers to one change [unit of the figure over unit of the means]. */
export type Answers = readonly number[];

/** Share of a means' worth by which it is shifted: shapes are exact, trapped masses known to some 1e-4 of themselves. */
const SHAPE_SHIFT = 0.01;
const CYCLE_SHIFT = 0.5;

/** The engine with one means shifted in every cylinder that has it. */
export function shifted(engine: Engine, means: MeansName, by: number): Engine {
  const { ofMaster, now, set } = MEANS_BY_NAME[means];
  const change = (cylinder: RowCylinder): RowCylinder => ({
    ...cylinder,
    ...set(now(engine.train, cylinder) + by),
  });
  const rows = engine.train.rows.map((row) => ({
    ...row,
    cylinders: row.cylinders.map((cylinder, j) =>
      ofMaster || j !== row.master ? change(cylinder) : cylinder,
    ),
  }));
  return { ...engine, train: { ...engine.train, rows } };
}

/** Figures of the shape alone that are aimed at: see `shapeFigures`. */
export interface AimedShape {
  readonly exhaustOpening: number;
  readonly transferOpening: number;
  readonly trappedCompression: number;
}

export function aimedShapes(engine: Engine): readonly AimedShape[] | null {
  const geometry = geometryOf(engine);
  if (!geometry.ok) return null;
  return geometry.value.cylinders.map(({ exhaust, transfer, trappedCompressionRatio }) => ({
    exhaustOpening: exhaust.opensAfterOwnTdc,
    transferOpening: transfer.opensAfterOwnTdc,
    trappedCompression: trappedCompressionRatio,
  }));
}

/**
 * How opening angles and compression answer, by a difference of exact geometry. A cylinder's shape follows from its own parts, so
 * that all may be shifted at once.
 *
 * @returns null where the means cannot be shifted either way
 */
export function shapeAnswers(engine: Engine, means: MeansName): readonly AimedShape[] | null {
  const here = aimedShapes(engine);
  for (const sign of [1, -1]) {
    const by = sign * SHAPE_SHIFT * MEANS_BY_NAME[means].worth;
    const there = aimedShapes(shifted(engine, means, by));
    if (!here || !there) continue;
    return here.map((cylinder, j) => ({
      exhaustOpening: (there[j]!.exhaustOpening - cylinder.exhaustOpening) / by,
      transferOpening: (there[j]!.transferOpening - cylinder.transferOpening) / by,
      trappedCompression: (there[j]!.trappedCompression - cylinder.trappedCompression) / by,
    }));
  }
  return null;
}

/**
 * How every cylinder's trapped mass answers to a means in one of them, by differences of full cycles: a barrel or window alters its
 * own cylinder most, but what it takes from the plenum and sends into the collector alters the others', too.
 *
 * @param next - the solution of the engine as it is, from which every cycle starts
 * @returns of every cylinder [kg over the unit of the means]; null where neither shift has a cycle
 */
export function* massAnswers(
  model: Model,
  point: OperatingPoint,
  solved: SolvedPoint,
  next: SolvedStart | null,
  means: MeansName,
  cylinder: number,
): Study<Answers | null> {
  const seat = seatsOf(model.engine)[cylinder]!;
  const { now, worth } = MEANS_BY_NAME[means];
  const from = now(model.engine.train, seat);
  for (const sign of [1, -1]) {
    const by = sign * CYCLE_SHIFT * worth;
    const altered = buildModel(withShopItems(model.engine, [{ cylinder, means, from, to: from + by }]));
    if (!altered.ok) continue;
    const what = `what ${means} of cylinder ${cylinder + 1} does`;
    const { result } = yield* doing(what, solve(altered.value, point, { start: next }));
    if (!result.converged) continue;
    return result.cylinders.map((each, j) => (each.trappedMass - solved.cylinders[j]!.trappedMass) / by);
  }
  return null;
}

const seatsOf = ({ train }: Engine): readonly RowCylinder[] => train.rows.flatMap((row) => row.cylinders);
