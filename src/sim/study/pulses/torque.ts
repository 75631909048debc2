import { dragTorque } from '../../blower/drag.ts';
import type { Model } from '../../cycle/model.ts';
import type { Blower, Engine } from '../../engine.ts';
import { highestPoint } from '../../numerics/highest-point.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { TURN } from '../../units.ts';
import type { MovingRow } from './moving-row.ts';
import { motionOf, rodsAt } from './moving-row.ts';
import type { WorkCurve } from './work-curve.ts';
import { angleOfPart, meanTorque, onEqualParts, torqueOfParts } from './work-curve.ts';

/** What turns the crank and what it has to turn, over one period [N m]. */
export interface TorqueOverTurn {
  /** At the points of the step mesh [rad]. */
  readonly angle: Float64Array;
  /** Positive where they drive: of the gas, of the masses that go to and fro; and what the blowers ask. */
  readonly gas: Float64Array;
  readonly inertia: Float64Array;
  readonly blower: Float64Array;
  /** Of it, what the first stage asks, and its mean. */
  readonly firstStage: { readonly asked: Float64Array; readonly mean: number };
  /** gas + inertia - blower - friction, friction taken as even over the turn. */
  readonly total: Float64Array;
  /** Means; inertia's is nothing. */
  readonly mean: {
    readonly gas: number;
    readonly blower: number;
    readonly friction: number;
    readonly total: number;
  };
  /** Highest and lowest of the total, and where [rad]. */
  readonly peak: number;
  readonly peakAngle: number;
  readonly least: number;
  /** Over the mean; null where the engine is driven [-]. */
  readonly peakOverMean: number | null;
  /** Changes of sign in a turn, and the share of the turn in which the total is negative [-]. */
  readonly reversals: number;
  readonly negativeShare: number;
  /** Work on equal parts, of which the means above are exact. */
  readonly work: {
    readonly gas: WorkCurve;
    readonly inertia: WorkCurve;
    readonly blower: WorkCurve;
    readonly total: WorkCurve;
  };
}

/**
 * Torque at the crank over one period of a solved point.
 *
 *   inertia = -omega^2 sum m q'.q'',   blower = (fluid torque / eta_m + count drag ratio) / eta_g,   friction = fmep V_s / 2 pi
 *   mean gas = imep V_s / 2 pi = brake power / (omega eta_out) + friction + blower shaft power / omega
 *
 * eta_m of the blower's bearings, left out where the gas drives the rotors on the mean, as in the blower's shaft power.
 *
 * Valid: constant speed, rigid shafts. Numerics: means by the work that the step itself added up, so they agree with the figures of the
 * point to round-off; the curves between the points of the mesh do not enter.
 * Source: virtual work; docs/conventions.md.
 */
export function torqueOverTurn(
  { engine, drive }: Pick<Model, 'engine' | 'drive'>,
  point: SolvedPoint,
  rows: readonly MovingRow[],
): TorqueOverTurn {
  const { traces, speed, turnsPerPeriod: turns } = point;
  const { angle } = traces;
  const square = speed * speed;
  const friction = (point.engine.fmep * point.engine.sweptVolume) / TURN;

  const stages = drivenStages(engine, drive, point);
  const asked = stages
    .map(({ asked: each }) => each)
    .reduce((sum, each) => sum.map((torque, i) => torque + each[i]!));
  const motion = Array.from(angle, (theta) => rows.map((row) => motionOf(row, rodsAt(row, theta))));
  const summed = (of: 'inertia' | 'slope') =>
    Float64Array.from(motion, (all) => -square * all.reduce((sum, each) => sum + each[of], 0));
  const inertia = summed('slope');
  const total = traces.gasTorque.map((gas, i) => gas + inertia[i]! - asked[i]! - friction);

  const gasWork = onEqualParts(angle, traces.gasWork, traces.gasTorque, turns);
  const stageWork = stages.map((each) =>
    onEqualParts(angle, each.work, each.fluid, turns).map((work, part) => each.of(work, angleOfPart(part))),
  );
  const blowerWork = stageWork.reduce((sum, each) => sum.map((work, part) => work + each[part]!));
  const inertiaWork = onEqualParts(angle, summed('inertia'), inertia, turns);
  const work = gasWork.map(
    (gas, part) =>
      gas + inertiaWork[part]! - inertiaWork[0]! - blowerWork[part]! - friction * angleOfPart(part),
  );
  const mean = {
    gas: meanTorque(gasWork),
    blower: meanTorque(blowerWork),
    friction,
    total: meanTorque(work),
  };
  const peak = highestPoint(angle, total);
  return {
    angle,
    gas: traces.gasTorque,
    inertia,
    blower: asked,
    firstStage: { asked: stages[0]!.asked, mean: meanTorque(stageWork[0]!) },
    total,
    mean,
    peak: peak.y,
    peakAngle: peak.x % TURN,
    least: -highestPoint(
      angle,
      total.map((each) => -each),
    ).y,
    peakOverMean: mean.total > 0 ? peak.y / mean.total : null,
    ...reversing(torqueOfParts(work), turns),
    work: { gas: gasWork, inertia: inertiaWork, blower: blowerWork, total: work },
  };
}

/** What the rotors of one stage take: torque and work of the gas alone, and torque asked of the crank for them. */
interface DrivenStage {
  readonly fluid: Float64Array;
  readonly work: Float64Array;
  readonly asked: Float64Array;
  /** Work at the crank, of that on the gas over an angle. */
  readonly of: (fluid: number, angle: number) => number;
}

/** The stages' torque, bearings' losses by the sign of the mean instead of that of every instant. */
function drivenStages(
  { blower, secondStage }: Pick<Engine, 'blower' | 'secondStage'>,
  drive: Model['drive'],
  { traces, speed, blower: all, stages }: SolvedPoint,
): readonly DrivenStage[] {
  const driven = (
    rotors: Blower,
    { ratio, efficiency }: { readonly ratio: number; readonly efficiency: number },
    fluidPower: number,
    torque: Float64Array,
    work: Float64Array,
  ): DrivenStage => {
    const drag = dragTorque(rotors, speed * ratio) * ratio;
    const loss = fluidPower < 0 ? 1 : 1 / rotors.mechanicalEfficiency;
    const fluid = torque.map((each) => (each * efficiency - drag) * rotors.mechanicalEfficiency);
    const of = (each: number, angle: number) => (each * loss + drag * angle) / efficiency;
    return { fluid, work, asked: fluid.map((each) => of(each, 1)), of };
  };
  const { second } = traces;
  if (!second || !secondStage || !drive.second || !stages)
    return [driven(blower, drive, all.fluidPower, traces.blowerTorque, traces.blowerWork)];
  const first = {
    torque: traces.blowerTorque.map((each, i) => each - second.torque[i]!),
    work: traces.blowerWork.map((each, i) => each - second.work[i]!),
  };
  return [
    driven(blower, drive, stages.first.fluidPower, first.torque, first.work),
    driven(secondStage.blower, drive.second, stages.second.fluidPower, second.torque, second.work),
  ];
}

function reversing(torque: Float64Array, turns: number): { reversals: number; negativeShare: number } {
  const negative = torque.filter((each) => each < 0).length;
  const changes = torque.filter((each, i) => each < 0 !== torque.at(i - 1)! < 0).length;
  return { reversals: changes / turns, negativeShare: negative / torque.length };
}
