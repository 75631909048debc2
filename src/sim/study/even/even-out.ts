import { buildModel } from '../../cycle/model.ts';
import type { Model } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import { solve } from '../../cycle/solve.ts';
import type { SolvedStart } from '../../cycle/solve.ts';
import type { Outcome } from '../../outcome.ts';
import { failure, success } from '../../outcome.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { doing } from '../study-step.ts';
import type { Study } from '../study-step.ts';
import { AIMED_FIGURES, allowedRange, furthestApart } from './aims.ts';
import type { AimedFigure, Aims } from './aims.ts';
import { LeastChange } from './least-change.ts';
import { withShopItems } from './means.ts';
import type { AllowedMeans, MeansName, ShopItem } from './means.ts';
import { massAnswers, shapeAnswers } from './sensitivity.ts';
import type { AimedShape, Answers } from './sensitivity.ts';
import { shareFigures } from './share-figures.ts';
import type { CylinderShare } from './share-figures.ts';
import { spreadOf } from './spread.ts';

/** What to alter, and what comes of it. */
export interface EvenedOut {
  readonly speed: number;
  readonly throttle: number;
  readonly aims: Aims;
  readonly means: readonly AllowedMeans[];
  readonly items: readonly ShopItem[];
  readonly before: readonly CylinderShare[];
  /** By a full cycle of the engine so altered. */
  readonly after: readonly CylinderShare[];
  /** Crown edge below the deck at each cylinder's top dead centre, as altered [m]. */
  readonly deck: readonly number[];
  /** Whether everything that weighs is as alike as asked. */
  readonly reached: boolean;
  /** Changes that stop at the end of the way that their means is allowed. */
  readonly atLimit: readonly ShopItem[];
}

/** Times the change is worked out anew on what a full cycle showed. */
const MOST_ROUNDS = 6;
/** Times a change that cannot be built is halved. */
const MOST_HALVINGS = 4;

/** An engine on the way: its cylinders by a full cycle, or by their shape alone where only that weighs. */
interface Tried {
  readonly items: readonly ShopItem[];
  readonly model: Model;
  readonly point: SolvedPoint | null;
  readonly cylinders: readonly AimedValues[];
  readonly cost: number;
}
type AimedValues = Pick<CylinderShare, AimedFigure['figure']>;

/**
 * The least change that makes the cylinders alike: knuckle pins, rods, barrels, windows and heads, each in steps that can be made.
 *
 *   least of  sum over aims and cylinders (weight (v - mean v) / tolerance)^2 + price sum (change / worth)^2   within the bounds
 *
 * by Gauss-Newton with bounds; the price is the highest that leaves every range within its tolerance. Shapes answer exactly, trapped
 * masses by differences of full cycles (`massAnswers`), which a cycle of the altered engine corrects round by round.
 *
 * @param means - at least one
 * @param start - a stated neighbour's solution, or null
 */
export function* evenOut(
  model: Model,
  point: OperatingPoint,
  aims: Aims,
  means: readonly AllowedMeans[],
  start: SolvedStart | null = null,
): Study<Outcome<EvenedOut>> {
  const base = yield* doing('the engine as it is', solve(model, point, { start }));
  if (!base.result.converged) return failure([{ path: '', message: base.result.reason }]);
  const before = shareFigures(model.engine, model.geometry, base.result);
  const change = new LeastChange(model.engine, aims, means);
  const byCycle = aims.trappedMass.weight > 0;
  const masses: (Answers | null)[] = [];
  for (const { name, cylinder } of byCycle ? change.slots : [])
    masses.push(yield* massAnswers(model, point, base.result, base.next, name, cylinder));

  const asIs: Tried = { items: [], model, point: base.result, cylinders: before, cost: costOf(aims, before) };
  let best = asIs;
  let here = asIs;
  for (let round = 0; round < MOST_ROUNDS && furthestApart(aims, best.cylinders) > 1; round++) {
    const shapes = new Map<MeansName, readonly AimedShape[]>();
    for (const { name } of means) {
      const answers = shapeAnswers(here.model.engine, name);
      if (answers) shapes.set(name, answers);
    }
    const items = change.from(here.cylinders, here.items, shapes, masses);
    if (JSON.stringify(items) === JSON.stringify(here.items)) break;
    const tried = yield* tryOut(model, point, aims, items, base.next, byCycle);
    if (!tried) break;
    here = tried;
    if (here.cost < best.cost) best = here;
  }

  const checked = best.point ?? (yield* cycleOf(best.model, point, base.next));
  if (typeof checked === 'string')
    return failure([{ path: '', message: `the engine as altered has no answer: ${checked}` }]);
  const after = shareFigures(best.model.engine, best.model.geometry, checked);
  return success({
    speed: point.speed,
    throttle: point.throttle,
    aims,
    means,
    items: best.items,
    before,
    after,
    deck: best.model.geometry.cylinders.map((each) => each.depthAtTdc),
    reached: furthestApart(aims, after) <= 1,
    atLimit: change.atLimit(best.items),
  });
}

/** The engine with a change, the change halved until it can be built and has a cycle; null where it never has. */
function* tryOut(
  model: Model,
  point: OperatingPoint,
  aims: Aims,
  wanted: readonly ShopItem[],
  start: SolvedStart | null,
  withCycle: boolean,
): Study<Tried | null> {
  let items = wanted;
  for (let halvings = 0; halvings <= MOST_HALVINGS; halvings++) {
    const altered = buildModel(withShopItems(model.engine, items));
    const solved = altered.ok && withCycle ? yield* cycleOf(altered.value, point, start) : null;
    if (altered.ok && typeof solved !== 'string') {
      const { engine, geometry } = altered.value;
      const cylinders = solved
        ? shareFigures(engine, geometry, solved)
        : geometry.cylinders.map((shape) => ({
            exhaustOpening: shape.exhaust.opensAfterOwnTdc,
            transferOpening: shape.transfer.opensAfterOwnTdc,
            trappedCompression: shape.trappedCompressionRatio,
            trappedMass: 1,
          }));
      return { items, model: altered.value, point: solved, cylinders, cost: costOf(aims, cylinders) };
    }
    items = items.map((item) => ({ ...item, to: item.from + (item.to - item.from) / 2 }));
  }
  return null;
}

function* cycleOf(
  model: Model,
  point: OperatingPoint,
  start: SolvedStart | null,
): Study<SolvedPoint | string> {
  const { result } = yield* doing('the engine as altered', solve(model, point, { start }));
  return result.converged ? result : result.reason;
}

/** Sum of the squares of all that weighs, in tolerances. */
function costOf(aims: Aims, cylinders: readonly AimedValues[]): number {
  return AIMED_FIGURES.reduce((sum, aimed) => {
    const values = cylinders.map((each) => each[aimed.figure]);
    const { mean } = spreadOf(values);
    const scale = aims[aimed.aim].weight / allowedRange(aims, aimed, mean);
    return sum + values.reduce((squares, value) => squares + ((value - mean) * scale) ** 2, 0);
  }, 0);
}
