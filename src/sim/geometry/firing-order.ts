import { TURN } from '../units.ts';

export interface Firing {
  /** Index into the angles given. */
  readonly index: number;
  /** Crank angle [rad]. */
  readonly angle: number;
  /** Since the one before it; all of them add up to one turn [rad]. */
  readonly interval: number;
}

/**
 * Order and intervals of events that come once a turn.
 *
 * @param angles - true top dead centres, or sparks, of the cylinders in [0, 2 pi) [rad]
 * @returns in the order of the turn; events at one angle in the order given, 0 apart
 */
export function firingOrder(angles: readonly number[]): readonly Firing[] {
  const order = angles.map((angle, index) => ({ index, angle }));
  order.sort((a, b) => a.angle - b.angle || a.index - b.index);
  return order.map((event, i) => ({
    ...event,
    interval: i > 0 ? event.angle - order[i - 1]!.angle : event.angle - order.at(-1)!.angle + TURN,
  }));
}
