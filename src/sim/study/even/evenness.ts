import { buildModel } from '../../cycle/model.ts';
import { withLambda } from '../../cycle/mixture-at.ts';
import type { Model } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import { solve } from '../../cycle/solve.ts';
import type { SolvedStart } from '../../cycle/solve.ts';
import type { Engine } from '../../engine.ts';
import type { Outcome } from '../../outcome.ts';
import { failure, success } from '../../outcome.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { solveHeldNodes } from '../held-nodes.ts';
import { doing } from '../study-step.ts';
import type { Study } from '../study-step.ts';
import { SHARE_FIGURES, shareFigures } from './share-figures.ts';
import type { CylinderShare, ShareFigure } from './share-figures.ts';
import { spreadOf } from './spread.ts';
import type { Spread } from './spread.ts';
import {
  isArticulated,
  isTrimmed,
  meanEnds,
  withHeldEnds,
  withPlainRods,
  withoutTrims,
} from './switched-off.ts';

/** What makes cylinders differ, each of which can be switched off. */
export const CAUSES = ['rods', 'pulses', 'trims'] as const;
export type Cause = (typeof CAUSES)[number];

/** Where the range of a figure comes from, in its own unit. */
export interface Origin {
  /** Range as it is. */
  readonly total: number;
  /** By how much it falls with one cause switched off; negative where that cause evens what others upset. */
  readonly by: Readonly<Record<Cause, number>>;
  /** Range that is left with all three switched off. */
  readonly left: number;
  /** total - left - sum of the three: what they do only together. */
  readonly interplay: number;
}

export interface Evenness {
  readonly speed: number;
  readonly throttle: number;
  readonly cylinders: readonly CylinderShare[];
  readonly spreads: Readonly<Record<ShareFigure, Spread>>;
  readonly without: Readonly<Record<Cause | 'all', Without>>;
  /** Null where a point without one of the causes has no answer: see `without`. */
  readonly origins: Readonly<Record<ShareFigure, Origin>> | null;
}

/** The cylinders with a cause switched off, or why that has no answer. */
export type Without =
  | { readonly cylinders: readonly CylinderShare[]; readonly reason: null }
  | { readonly cylinders: null; readonly reason: string };

/**
 * How unequal the cylinders are at one operating point, and how much of that comes from rods, pulses and trims.
 *
 *   range = left + rods + pulses + trims + interplay,   a cause's part = range - range with it switched off
 *
 * rods: plain rods of the master's length instead (`withPlainRods`); pulses: plenum and collectors held at their time means
 * (`withHeldEnds`); trims: barrels, heads, windows and sparks alike (`withoutTrims`); left: all three at once.
 *
 * @param start - a stated neighbour's solution, or null
 *
 * Valid: ranges do not add, so parts are no shares of a whole; the interplay says by how much they fail to.
 */
export function* evenness(
  model: Model,
  point: OperatingPoint,
  start: SolvedStart | null = null,
): Study<Outcome<Evenness>> {
  const base = yield* doing('the point', solve(model, point, { start }));
  if (!base.result.converged) return failure([{ path: '', message: base.result.reason }]);
  return success(yield* evennessOf(model, point, base.result, base.next));
}

/** The evenness of a point that is solved already. */
export function* evennessOf(
  model: Model,
  point: OperatingPoint,
  solved: SolvedPoint,
  next: SolvedStart | null,
): Study<Evenness> {
  const { engine, geometry } = model;
  const cylinders = shareFigures(engine, geometry, solved);
  const asItIs: Without = { cylinders, reason: null };
  const rods = isArticulated(engine)
    ? yield* withEngine('plain rods', withPlainRods(engine), point, next)
    : asItIs;
  const trims = isTrimmed(engine) ? yield* withEngine('no trims', withoutTrims(engine), point, next) : asItIs;
  const pulses = yield* withoutPulses(model, point, solved);
  const bare = buildModel(withoutTrims(withPlainRods(engine)));
  const all: Without = bare.ok
    ? yield* withoutPulses(bare.value, point, solved)
    : { cylinders: null, reason: bare.faults[0]!.message };
  const without = { rods, pulses, trims, all };
  return {
    speed: point.speed,
    throttle: point.throttle,
    cylinders,
    spreads: byFigure((figure) => spreadOf(cylinders.map((each) => each[figure]))),
    without,
    origins: origins(cylinders, without),
  };
}

function* withEngine(
  what: string,
  engine: Engine,
  point: OperatingPoint,
  start: SolvedStart | null,
): Study<Without> {
  const model = buildModel(engine);
  if (!model.ok) return { cylinders: null, reason: model.faults[0]!.message };
  const { result } = yield* doing(what, solve(model.value, point, { start }));
  return result.converged
    ? { cylinders: shareFigures(engine, model.value.geometry, result), reason: null }
    : { cylinders: null, reason: result.reason };
}

function* withoutPulses(model: Model, point: OperatingPoint, solved: SolvedPoint): Study<Without> {
  const held = withHeldEnds(withLambda(model, solved.engine.lambda));
  const what = 'plenum and collectors';
  const run = solveHeldNodes(held, point, meanEnds(held, solved), what, null);
  const { result } = yield* doing('no pulses', run);
  return result.converged
    ? { cylinders: shareFigures(model.engine, model.geometry, result), reason: null }
    : { cylinders: null, reason: result.reason };
}

function origins(cylinders: readonly CylinderShare[], without: Evenness['without']): Evenness['origins'] {
  const { rods, pulses, trims, all } = without;
  if (!rods.cylinders || !pulses.cylinders || !trims.cylinders || !all.cylinders) return null;
  const [plain, still, untrimmed, bare] = [rods.cylinders, pulses.cylinders, trims.cylinders, all.cylinders];
  return byFigure((figure) => {
    const range = (of: readonly CylinderShare[]) => spreadOf(of.map((each) => each[figure])).range;
    const total = range(cylinders);
    const left = range(bare);
    const by = { rods: total - range(plain), pulses: total - range(still), trims: total - range(untrimmed) };
    return { total, by, left, interplay: total - left - by.rods - by.pulses - by.trims };
  });
}

const byFigure = <T>(of: (figure: ShareFigure) => T): Readonly<Record<ShareFigure, T>> =>
  Object.fromEntries(SHARE_FIGURES.map((figure) => [figure, of(figure)])) as Record<ShareFigure, T>;
