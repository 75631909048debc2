import type { Model } from '../cycle/model.ts';
import type { OperatingPoint } from '../cycle/operating-point.ts';
import { Period } from '../cycle/period.ts';
import { largestChange, weigh } from '../cycle/period-map.ts';
import { buildSchedule } from '../cycle/schedule.ts';
import type { PeriodStart } from '../cycle/start.ts';
import { atRest } from '../cycle/start.ts';
import { stepMethod } from '../cycle/step-method.ts';
import { CycleSystem } from '../cycle/system.ts';
import type { SolvedPoint } from '../results/point-result.ts';
import { Recorder } from '../results/recorder.ts';
import { summarise } from '../results/summarise.ts';
import { TURN } from '../units.ts';

/** One turn of the crank on the way from a stated start; nothing about it repeats. */
export interface Turn {
  /** Counted from 1. */
  readonly turn: number;
  /** The turn's figures. Its residuals' `change` is how far it was from repeating the one before. */
  readonly figures: SolvedPoint;
}

/** How a run of turns ended: null where its consumer stopped it, a reason where the gas left the accepted range. */
export type TurnsEnd = { readonly reason: string } | null;

/** Points of a turn that a recorder holds. */
const MOST_POINTS = 20_000;

/**
 * Steps turn after turn at one speed and throttle: cranking from rest, misfire that comes and goes, a blower that fills its
 * plenum. No acceleration, no repeated mesh: every turn is stepped by its own error, starting where the last one ended.
 * A cylinder burns its charge or skips it, turn by turn.
 *
 * @param start - state to begin from; at rest and full of air unless given
 * @returns a generator that goes on until its consumer stops or the gas leaves the accepted range
 */
export function* turnByTurn(
  model: Model,
  point: OperatingPoint,
  start?: PeriodStart,
): Generator<Turn, TurnsEnd> {
  const system = new CycleSystem(model, point, 'by turns');
  const { method, fine } = stepMethod(model, point);
  const period = new Period(system, buildSchedule(model.geometry.cylinders, 1), method);
  const begin = start ?? atRest(system);
  const n = system.stateSize;
  const now = new Float64Array(n + begin.memory.length);
  now.set(begin.state);
  now.set(begin.memory, n);
  system.memory.values.set(begin.memory);
  const weights = new Float64Array(now.length);
  for (let turn = 1; ; turn++) {
    system.instant.before = (turn - 1) * TURN;
    const began = now.slice();
    const records = new Float64Array(system.size);
    records.set(now.subarray(0, n));
    const recorder = new Recorder(system, MOST_POINTS);
    const end = period.adapt(records, fine, true, recorder.note);
    if (!end.ok) return { reason: end.reason };
    now.set(records.subarray(0, n));
    now.set(system.memory.values, n);
    weigh(system, weights);
    const change = largestChange(began, now, weights);
    yield { turn, figures: summarise(system, records, began, recorder, turn, change, 1) };
  }
}
