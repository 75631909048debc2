import type { Model } from '../cycle/model.ts';
import type { Network } from '../cycle/network.ts';
import type { OperatingPoint } from '../cycle/operating-point.ts';
import { PeriodicSearch } from '../cycle/periodic-search.ts';
import type { Solution, SolvedStart } from '../cycle/solve.ts';
import { settle } from '../cycle/solve.ts';
import { drawnFractions } from '../gas/mixture.ts';
import { unsolved } from '../results/summarise.ts';

/** State in which a volume is held: as large and as well stirred as it must be never to change. */
export interface HeldGas {
  /** [Pa] */
  readonly pressure: number;
  /** [K] */
  readonly temperature: number;
  /** Share of air and fuel vapour, the rest is burned gas [-]. */
  readonly purity: number;
}

export interface HeldNode extends HeldGas {
  readonly node: number;
}

/** Periods after which a held point counts as one without an answer. */
const MOST_CYCLES = 60;

/** The same network with some nodes moved behind the volumes that own state, where reservoirs stand. */
export function nodesLast(
  { nodes, edges, dynamicCount, at, through }: Network,
  held: readonly number[],
): Network {
  const order = nodes.map((_, node) => node).filter((node) => !held.includes(node));
  order.push(...held);
  const to = (node: number) => order.indexOf(node);
  return {
    nodes: order.map((node) => nodes[node]!),
    edges: edges.map((edge) => ({ ...edge, from: to(edge.from), to: to(edge.to) })),
    dynamicCount: dynamicCount - held.length,
    at: {
      box: to(at.box),
      plenum: to(at.plenum),
      passages: at.passages.map(to),
      cylinders: at.cylinders.map(to),
      collectors: at.collectors.map(to),
      // -1, for none, is found nowhere.
      crankcase: to(at.crankcase),
      interstage: to(at.interstage),
      beforeSecond: to(at.beforeSecond),
      ambient: to(at.ambient),
    },
    through,
  };
}

/**
 * Periodic state of a model with some of its nodes held.
 *
 * @param model - with these nodes behind its dynamic ones, see `nodesLast`
 * @param what  - is held, for the reason where there is no answer: "the plenum"
 * @param start - solution of the same model with other values held, or null for the cold start
 */
export function* solveHeldNodes(
  model: Model,
  point: OperatingPoint,
  held: readonly HeldNode[],
  what: string,
  start: SolvedStart | null,
): Generator<void, Solution> {
  const search = new PeriodicSearch(model, point, { start });
  for (const { node, pressure, temperature, purity } of held)
    search.system.gas.setReservoir(
      node,
      pressure,
      temperature,
      drawnFractions(search.system.model.mixture, purity),
    );
  const found = yield* quietly(settle(search, MOST_CYCLES));
  if (typeof found !== 'string') return found;
  const reason = `with ${what} held, ${found}`;
  return { result: unsolved(model, point, search.cycle, search.change, reason), next: null };
}

/** The same run without what it tells on the way. */
function* quietly<T>(run: Generator<unknown, T>): Generator<void, T> {
  for (;;) {
    const step = run.next();
    if (step.done) return step.value;
    yield;
  }
}
