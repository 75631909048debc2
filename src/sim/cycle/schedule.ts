import type { CylinderGeometry } from '../geometry/build-geometry.ts';
import { TURN } from '../units.ts';

export type EventKind = 'exhaust opens' | 'trapped' | 'spark';

export interface CycleEvent {
  readonly kind: EventKind;
  readonly cylinder: number;
}

/** An angle at which no step may pass by: something happens there. */
export interface Knot {
  /** Within (0, period] [rad]. */
  readonly angle: number;
  readonly events: readonly CycleEvent[];
}

/** Angles closer than this are one [rad]. */
const SAME = 1e-9;

/**
 * All knots of a period of whole turns, in order: of each cylinder the opening of its exhaust, its spark, and the angle from
 * which all its windows are shut. The last knot is the period's end. Kinks of window areas are none: passing by one costs
 * a method of second order no order, and there are sixteen to a cylinder.
 */
export function buildSchedule(cylinders: readonly CylinderGeometry[], turns: number): Knot[] {
  const oneTurn: { angle: number; event: CycleEvent | null }[] = [];
  const put = (angle: number, event: CycleEvent | null) => {
    const within = ((angle % TURN) + TURN) % TURN;
    oneTurn.push({ angle: within < SAME ? TURN : within, event });
  };
  cylinders.forEach((c, cylinder) => {
    put(c.tdc + c.exhaust.opensAfterOwnTdc, { kind: 'exhaust opens', cylinder });
    put(trapAngle(c), { kind: 'trapped', cylinder });
    put(c.sparkAngle, { kind: 'spark', cylinder });
  });
  put(TURN, null);
  oneTurn.sort((a, b) => a.angle - b.angle);

  const knots: Knot[] = [];
  for (let turn = 0; turn < turns; turn++) {
    for (let i = 0; i < oneTurn.length;) {
      const { angle } = oneTurn[i];
      const events: CycleEvent[] = [];
      for (; i < oneTurn.length && oneTurn[i].angle - angle < SAME; i++) {
        const { event } = oneTurn[i];
        if (event) events.push(event);
      }
      const isLast = turn === turns - 1 && i === oneTurn.length;
      knots.push({ angle: isLast ? turns * TURN : angle + turn * TURN, events });
    }
  }
  return knots;
}

/** Crank angle from which all windows of a cylinder are shut: the later of the two closings [rad]. */
export function trapAngle(cylinder: CylinderGeometry): number {
  return cylinder.tdc + Math.max(cylinder.exhaust.closesAfterOwnTdc, cylinder.transfer.closesAfterOwnTdc);
}
