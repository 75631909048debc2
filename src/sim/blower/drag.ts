import type { Blower } from '../engine.ts';

type Dragged = Pick<Blower, 'count' | 'dragTorque' | 'dragWithSpeed' | 'dragWithSquare' | 'maxSpeed'>;

/**
 * Drag torque of all blowers at their shafts, beside what goes with the work on the gas.
 *
 *   T = count (T_0 + T_1 n/n_max + T_2 (n/n_max)^2)
 *
 * T_0 seals and dry friction, T_1 oil in bearings and gears, T_2 churning and windage, both at the speed limit n_max [N m].
 *
 * @param rotorSpeed - n [rad/s]
 *
 * Source: laminar and turbulent friction; the shares are the design's.
 */
export function dragTorque(
  { count, dragTorque: constant, dragWithSpeed, dragWithSquare, maxSpeed }: Dragged,
  rotorSpeed: number,
): number {
  const share = rotorSpeed / maxSpeed;
  return count * (constant + share * (dragWithSpeed + share * dragWithSquare));
}
