import type { Model } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import type { SolvedStart } from '../../cycle/solve.ts';
import type { Outcome } from '../../outcome.ts';
import { failure, success } from '../../outcome.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { stepwiseRoot } from '../stepwise-root.ts';
import type { Study, StudyStep } from '../study-step.ts';
import { coolingChanged, solvedWith } from './solved-with.ts';

export type WallPart = 'crown' | 'head' | 'liner';

/** Air speeds looked at [m/s], and how well the one sought is found. */
export const LEAST_AIR = 1;
export const MOST_AIR = 150;
const TOLERANCE = 0.02;

export interface AirNeeded {
  readonly part: WallPart;
  /** [K] */
  readonly limit: number;
  /** Before row A; null where no speed of those looked at does [m/s]. */
  readonly airSpeed: number | null;
  /** The hottest part at the least and at the most speed looked at [K]. */
  readonly atLeast: number;
  readonly atMost: number;
}

/** Why a root search stopped without a value. */
class NoAnswer {
  constructor(readonly message: string) {}
}

/**
 * The air speed at which the hottest crown, head or liner just comes to a limit; every speed is a solved point with its own wall
 * temperatures. Where the least speed looked at does already, that one is the answer.
 */
export function* airNeeded(
  model: Model,
  point: OperatingPoint,
  part: WallPart,
  limit: number,
): Study<Outcome<AirNeeded>> {
  let start: SolvedStart | null = null;
  function* hottestAt(airSpeed: number): Generator<StudyStep, number> {
    const engine = coolingChanged(model.engine, { airSpeed });
    const found = yield* solvedWith(`${airSpeed.toFixed(1)} m/s`, engine, point, start);
    if (!found.ok) throw new NoAnswer(found.faults[0]!.message);
    start = found.value.next;
    return hottest(found.value.point, part);
  }
  try {
    const atMost = yield* hottestAt(MOST_AIR);
    const atLeast = yield* hottestAt(LEAST_AIR);
    const ends = { part, limit, atLeast, atMost };
    if (atMost > limit) return success({ ...ends, airSpeed: null });
    if (atLeast <= limit) return success({ ...ends, airSpeed: LEAST_AIR });
    const known = new Map([
      [LEAST_AIR, atLeast - limit],
      [MOST_AIR, atMost - limit],
    ]);
    const airSpeed = yield* stepwiseRoot(
      function* (speed) {
        return (yield* hottestAt(speed)) - limit;
      },
      LEAST_AIR,
      MOST_AIR,
      TOLERANCE,
      known,
    );
    return success({ ...ends, airSpeed });
  } catch (stopped) {
    if (stopped instanceof NoAnswer) return failure([{ path: '', message: stopped.message }]);
    throw stopped;
  }
}

const hottest = ({ cylinders }: SolvedPoint, part: WallPart): number =>
  Math.max(...cylinders.map(({ walls }) => walls?.[part] ?? NaN));
