import { buildModel } from '../../cycle/model.ts';
import type { Model } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import { solve } from '../../cycle/solve.ts';
import type { Engine } from '../../engine.ts';
import { withinTurn } from '../../geometry/angles.ts';
import type { EngineGeometry } from '../../geometry/cylinder-geometry.ts';
import { firingOrder } from '../../geometry/firing-order.ts';
import { timeMean } from '../../numerics/time-mean.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { TURN } from '../../units.ts';
import { doing } from '../study-step.ts';
import type { Study } from '../study-step.ts';
import { withArrangement } from './arrangement.ts';
import { candidates, phaseSilence } from './candidates.ts';
import type { Candidate, PhaseSilence } from './candidates.ts';
import { compareText } from './ranking.ts';
import type { Alternative, Measures } from './ranking.ts';
import { spreadOf } from './spread.ts';

export interface Alternatives {
  readonly speed: number;
  readonly throttle: number;
  /** Even spacing of the firing [rad]. */
  readonly evenGap: number;
  /** In the order of their names, the way as built first. */
  readonly ways: readonly Alternative[];
  readonly phaseSilence: PhaseSilence;
}

/**
 * Ways to put the engine together, each solved by itself from the cold start: neither their order nor what was solved before shows in
 * an answer.
 *
 * @param ways - which; every sensible one unless given
 */
export function* alternatives(
  model: Model,
  point: OperatingPoint,
  ways: readonly Candidate[] = candidates(model),
): Study<Alternatives> {
  const solved: Alternative[] = [];
  for (const way of ways) solved.push(yield* tryWay(model.engine, point, way));
  const isBuilt = ({ altered }: Candidate) => (altered === 'nothing' ? 0 : 1);
  return {
    speed: point.speed,
    throttle: point.throttle,
    evenGap: TURN / model.geometry.cylinders.length,
    ways: solved.sort((a, b) => isBuilt(a) - isBuilt(b) || compareText(a.key, b.key)),
    phaseSilence: phaseSilence(model),
  };
}

function* tryWay(engine: Engine, point: OperatingPoint, way: Candidate): Study<Alternative> {
  const other = withArrangement(engine, way.arrangement);
  const model = buildModel(other);
  if (!model.ok) return { ...way, measures: null, reason: model.faults[0]!.message };
  const { result } = yield* doing(way.key, solve(model.value, point));
  return result.converged
    ? { ...way, measures: measuresOf(other, model.value.geometry, result), reason: null }
    : { ...way, measures: null, reason: result.reason };
}

/**
 * What a way is worth.
 *
 *   largestGap     between true top dead centres that follow each other [rad]
 *   torqueRipple   (highest - lowest) / |mean| of gas less blower torque at the crank [-]; inertia is not in it
 *   chargeSpread   range of the trapped masses over their mean [-]
 *   worstBackflow  largest of all cylinders of what runs back through transfer and exhaust windows [kg per turn]
 *   pinImbalance   |sum over rows of n_r e^(i throw_r)| / sum n_r: 0 where the rows' rotating forces cancel, 1 where they add [-]
 *   hiddenBarrels  1 - least angle between barrels of different rows over that of barrels in each other's gaps: 1 behind each other [-]
 */
export function measuresOf(engine: Engine, geometry: EngineGeometry, point: SolvedPoint): Measures {
  const { angle, gasTorque, blowerTorque } = point.traces;
  const torque = gasTorque.map((gas, i) => gas - blowerTorque[i]!);
  const { range, mean } = spreadOf(point.cylinders.map((each) => each.trappedMass));
  return {
    largestGap: Math.max(
      ...firingOrder(geometry.cylinders.map(({ tdc }) => tdc)).map(({ interval }) => interval),
    ),
    torqueRipple: (Math.max(...torque) - Math.min(...torque)) / Math.abs(timeMean(angle, torque)),
    chargeSpread: range / mean,
    worstBackflow: Math.max(...point.cylinders.map((each) => each.transferBackflow + each.exhaustBackflow)),
    pinImbalance: pinImbalance(engine),
    hiddenBarrels: hiddenBarrels(engine),
    brakePower: point.engine.brakePower,
  };
}

function pinImbalance({ train: { rows } }: Engine): number {
  const sum = (of: (row: (typeof rows)[number]) => number) => rows.reduce((total, row) => total + of(row), 0);
  const along = sum((row) => row.cylinders.length * Math.cos(row.throwAngle));
  const across = sum((row) => row.cylinders.length * Math.sin(row.throwAngle));
  return Math.hypot(along, across) / sum((row) => row.cylinders.length);
}

function hiddenBarrels({ train: { rows } }: Engine): number {
  if (rows.length === 1) return 0;
  const axes = rows.map((row) => row.cylinders.map((each) => each.axisAngle + row.staggerAngle));
  let least = Infinity;
  axes.forEach((own, r) =>
    axes.slice(r + 1).forEach((others) =>
      own.forEach((a) =>
        others.forEach((b) => {
          const apart = withinTurn(a - b);
          least = Math.min(least, apart, TURN - apart);
        }),
      ),
    ),
  );
  const even = TURN / axes.flat().length;
  return Math.max(0, 1 - least / even);
}
