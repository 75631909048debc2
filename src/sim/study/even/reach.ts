import { withLambda } from '../../cycle/mixture-at.ts';
import type { Model } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import { solve } from '../../cycle/solve.ts';
import type { SolvedStart } from '../../cycle/solve.ts';
import { timeMean } from '../../numerics/time-mean.ts';
import type { Outcome } from '../../outcome.ts';
import { failure, success } from '../../outcome.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { solveHeldNodes } from '../held-nodes.ts';
import type { HeldNode } from '../held-nodes.ts';
import { doing } from '../study-step.ts';
import type { Study } from '../study-step.ts';

/** What one cylinder's blowdown does to the others, cylinder by cylinder; its own place is 0. */
export interface ReachOfOne {
  /** Of the trapped mass as it is: negative where the blowdown takes charge away [-]. */
  readonly trappedMass: readonly number[];
  /** Difference of purity [-]. */
  readonly purity: readonly number[];
}

export interface Reach {
  readonly speed: number;
  readonly throttle: number;
  /** Row and number of each cylinder from 1. */
  readonly cylinders: readonly {
    readonly row: number;
    readonly number: number;
    readonly collector: number;
  }[];
  /** By whose blowdown; null where the engine without it has no answer. */
  readonly from: readonly (ReachOfOne | null)[];
}

/**
 * Whose exhaust reaches whom: each cylinder's blowdown suppressed in turn, the engine solved again, and the change read in all others.
 *
 *   effect of k on i = (m_i - m_i without k) / m_i,   chi_i - chi_i without k
 *
 * Suppressed: cylinder k breathes as before, but its exhaust windows open into still gas at the time means of its collector, and the
 * collector's outlet is narrowed to the share of those that are left on it, so that the mean pressure there stays about the same; a
 * collector that nobody else is on stays as it is and only stands still.
 * Burning is left on, since switching it off would also change what k asks of the plenum; what is read is the pulse alone.
 *
 * @param start - a stated neighbour's solution, or null
 *
 * Numerics: trapped masses are known to some 1e-4 of themselves; smaller effects mean nothing.
 */
export function* reach(
  model: Model,
  point: OperatingPoint,
  start: SolvedStart | null = null,
): Study<Outcome<Reach>> {
  const base = yield* doing('the point', solve(model, point, { start }));
  if (!base.result.converged) return failure([{ path: '', message: base.result.reason }]);
  const asSolved = withLambda(model, base.result.engine.lambda);
  const { cylinders } = base.result;
  const collectors = collectorsOf(model);
  const from: (ReachOfOne | null)[] = [];
  for (const k of cylinders.keys()) {
    const { model: quiet, held } = withoutBlowdown(asSolved, base.result, k);
    const what = `cylinder ${k + 1} without its blowdown`;
    const run = solveHeldNodes(quiet, point, [held], 'one exhaust', base.next);
    const { result } = yield* doing(what, run);
    from.push(
      result.converged
        ? {
            trappedMass: cylinders.map(({ trappedMass }, i) =>
              i === k ? 0 : (trappedMass - result.cylinders[i]!.trappedMass) / trappedMass,
            ),
            purity: cylinders.map(({ purity }, i) => (i === k ? 0 : purity - result.cylinders[i]!.purity)),
          }
        : null,
    );
  }
  return success({
    speed: point.speed,
    throttle: point.throttle,
    cylinders: cylinders.map(({ row, number }, i) => ({ row, number, collector: collectors[i]! + 1 })),
    from,
  });
}

const collectorsOf = ({ engine }: Model): readonly number[] =>
  engine.train.rows.flatMap((row) => row.cylinders.map((cylinder) => cylinder.collector));

/** The model with one cylinder's exhaust led into a reservoir of its own, and the state in which that is held. */
function withoutBlowdown(
  model: Model,
  { collectors, traces }: SolvedPoint,
  k: number,
): { model: Model; held: HeldNode } {
  const { engine, network } = model;
  const seats = collectorsOf(model);
  const own = seats[k]!;
  const sharing = seats.filter((each) => each === own).length;
  const node = network.nodes.length;
  const exhaust = network.through.exhausts[k]!;
  return {
    model: {
      ...model,
      engine: {
        ...engine,
        collectors: engine.collectors.map((each, i) =>
          i === own && sharing > 1
            ? { ...each, outletArea: (each.outletArea * (sharing - 1)) / sharing }
            : each,
        ),
      },
      network: {
        ...network,
        nodes: [...network.nodes, { label: 'still exhaust', kind: 'collector', volume: 0 }],
        edges: network.edges.map((edge, i) => (i === exhaust ? { ...edge, to: node } : edge)),
      },
    },
    held: {
      node,
      pressure: collectors[own]!.meanPressure,
      temperature: collectors[own]!.meanTemperature,
      purity: timeMean(traces.angle, traces.collectors[own]!.purity),
    },
  };
}
