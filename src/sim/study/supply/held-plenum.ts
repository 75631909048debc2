import type { Model } from '../../cycle/model.ts';
import type { Network } from '../../cycle/network.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import { PeriodicSearch } from '../../cycle/periodic-search.ts';
import type { Solution, SolvedStart } from '../../cycle/solve.ts';
import { settle } from '../../cycle/solve.ts';
import { chargeFractions } from '../../gas/mixture.ts';
import { unsolved } from '../../results/summarise.ts';

/** State at which a plenum is held: as large and as well stirred as it must be never to change. */
export interface HeldPlenum {
  /** [Pa] */
  readonly pressure: number;
  /** [K] */
  readonly temperature: number;
  /** Share of air and fuel vapour, the rest is burned gas that was blown back [-]. */
  readonly purity: number;
}

/** Periods after which a held point counts as one without an answer. */
const MOST_CYCLES = 60;

/**
 * The cylinders, passages and collectors of a model with its plenum held: the same network and laws, but the plenum is a
 * reservoir, and there is no blower, slip or relief. What flows through the transfer windows is then what the
 * cylinders swallow at that plenum pressure.
 *
 * Valid: exact within the model. The plenum's ripple, which goes with a real one, is missing on purpose.
 */
export function withHeldPlenum(model: Model): Model {
  const { engine } = model;
  return {
    ...model,
    engine: {
      ...engine,
      // Nothing may reach the plenum but its flows: a reservoir owns no stretch of the state.
      blower: { ...engine.blower, displacement: 0, clearanceArea: 0, rippleDepth: 0, dragTorque: 0 },
      plenum: { ...engine.plenum, relief: null, wall: { ...engine.plenum.wall, area: 0 } },
      intake: { ...engine.intake, boxWall: { ...engine.intake.boxWall, area: 0 } },
    },
    network: plenumLast(model.network),
    drive: { ...model.drive, truePeriod: 1, turns: 1, phaseAveraged: true },
  };
}

/** The same network with the plenum moved behind the volumes that own state, where reservoirs stand. */
function plenumLast({ nodes, edges, dynamicCount, at, through }: Network): Network {
  const order = nodes.map((_, node) => node).filter((node) => node !== at.plenum);
  order.push(at.plenum);
  const to = (node: number) => order.indexOf(node);
  return {
    nodes: order.map((node) => nodes[node]!),
    edges: edges.map((edge) => ({ ...edge, from: to(edge.from), to: to(edge.to) })),
    dynamicCount: dynamicCount - 1,
    at: {
      box: to(at.box),
      plenum: to(at.plenum),
      passages: at.passages.map(to),
      cylinders: at.cylinders.map(to),
      collectors: at.collectors.map(to),
      ambient: to(at.ambient),
    },
    through: { ...through, relief: -1 },
  };
}

/**
 * Periodic state of the cylinders with the plenum held.
 *
 * @param held  - a model made by `withHeldPlenum`
 * @param start - solution of the same held model at another pressure, or null for the cold start
 */
export function* solveHeld(
  held: Model,
  point: OperatingPoint,
  plenum: HeldPlenum,
  start: SolvedStart | null,
): Generator<void, Solution> {
  const search = new PeriodicSearch(held, point, { start });
  search.system.gas.setReservoir(
    held.network.at.plenum,
    plenum.pressure,
    plenum.temperature,
    chargeFractions(held.mixture, plenum.purity),
  );
  const found = yield* quietly(settle(search, MOST_CYCLES));
  if (typeof found !== 'string') return found;
  return {
    result: unsolved(held, point, search.cycle, search.change, `with the plenum held, ${found}`),
    next: null,
  };
}

/** The same run without what it tells on the way. */
function* quietly<T>(run: Generator<unknown, T>): Generator<void, T> {
  for (;;) {
    const step = run.next();
    if (step.done) return step.value;
    yield;
  }
}
