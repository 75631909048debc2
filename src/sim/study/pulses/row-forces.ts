import type { Point } from '../../geometry/rod-points.ts';
import type { RodAccelerations } from '../../geometry/rod-accelerations.ts';
import { ORIGIN, cross, dot, minus, plus, quarterOn, times } from '../../geometry/vectors.ts';
import type { MovingRow } from './moving-row.ts';

export interface RodForces {
  /** Along the rod, positive where it is pressed together [N]; of the master rod in its shank. */
  readonly push: number;
  /** Of the piston on its liner, positive with the rotation [N]. */
  readonly side: number;
  /** Of the rod on its knuckle pin; null where it has none. */
  readonly knuckle: Point | null;
}

export interface RowForces {
  /** Of all rods on the crank pin, in the frame of the row [N]. */
  readonly pin: Point;
  /** Of that force about the crank's axis [N m]. */
  readonly torque: number;
  /** Of the master rod's shank at the knuckle flange, a knuckle radius from the crank pin; 0 for plain rods [N m]. */
  readonly bending: number;
  readonly rods: readonly RodForces[];
}

/**
 * What the rods of a row do to each other, to the liners and to the crank pin, gas and inertia together.
 *
 *   rod on two pins:  S = (G + m s'' w^2)/(e.u),   knuckle pin:  F_k = -S e - m_k K'' w^2
 *   master rod:       moments about the crank pin vanish:  (g - P) x (N n - (G + m s'' w^2) u) + sum (K - P) x F_k = 0  -> N
 *   crank pin:        C = N n - (G + m s'' w^2) u + sum F_k - m_P P'' w^2,    torque P x C
 *   bending:          (1 - k/L) |sum (K - P) x F_k|
 *
 * u, n along and across the axis, e along the rod, G gas force on the piston, w speed; each mass at its pin.
 *
 * @param at    - of the rods, at one crank angle
 * @param speed - constant over the turn [rad/s]
 * @param gas   - (p - p_a) A of each rod's cylinder [N]
 *
 * Valid: no friction, no weight, rigid rods; the whip of the shanks by their own mass is not in the bending.
 * Source: d'Alembert's principle; Biezeno & Grammel, Engineering Dynamics, vol. 4, 1954, ch. 13.
 */
export function rowForces(
  row: MovingRow,
  at: readonly RodAccelerations[],
  speed: number,
  gas: readonly number[],
): RowForces {
  const square = speed * speed;
  const crankPin = at[0]!.crankPin;
  let pin = ORIGIN;
  let moment = 0;
  const two = row.rods.map((rod, j): RodForces | null => {
    if (rod.isMaster) return null;
    const { axis, rod: along, lowerPin, gudgeonPin } = at[j]!;
    const push = (gas[j]! + rod.upperMass * square * dot(gudgeonPin.bend, axis)) / dot(along, axis);
    const force = minus(times(-push, along), times(rod.lowerMass * square, lowerPin.bend));
    pin = plus(pin, force);
    if (row.master) moment += cross(minus(lowerPin.at, crankPin.at), force);
    return { push, side: push * cross(axis, along), knuckle: row.master ? force : null };
  });
  let bending = 0;
  const rods = two.map((forces, j): RodForces => {
    if (forces) return forces;
    const { upperMass, lowerMass, rods } = row.rods[j]!;
    const { axis, rod: along, gudgeonPin } = at[j]!;
    const across = quarterOn(axis);
    const arm = minus(gudgeonPin.at, crankPin.at);
    const head = -(gas[j]! + upperMass * square * dot(gudgeonPin.bend, axis));
    const liner = -(head * cross(arm, axis) + moment) / cross(arm, across);
    const atGudgeon = plus(times(head, axis), times(liner, across));
    pin = plus(pin, minus(atGudgeon, times(lowerMass * square, crankPin.bend)));
    bending = (1 - knuckleRadius(row) / rods.rodLength) * Math.abs(moment);
    return { push: -dot(atGudgeon, along), side: -liner, knuckle: null };
  });
  return { pin, torque: cross(crankPin.at, pin), bending, rods };
}

/** Of the first rod that has a knuckle pin; 0 for a master rod alone [m]. */
const knuckleRadius = ({ rods }: MovingRow): number =>
  rods.find(({ isMaster }) => !isMaster)?.rods.knuckleRadius ?? 0;
