import type { SolvedPoint } from '../../results/point-result.ts';
import { TURN } from '../../units.ts';

/** What turning the crank takes in one turn; positive where it has to be turned [N m]. */
export interface TurnTorque {
  /** Mean over the turn: of the gas on the pistons, friction, blowers, and all of them. */
  readonly gas: number;
  readonly friction: number;
  readonly blower: number;
  readonly needed: number;
  /** Largest at any angle, gas and blowers as they come, friction even. */
  readonly peak: number;
  /** Most work in one stretch that a starter of even torque `needed` does not cover: what the flywheel lends [J]. */
  readonly lent: number;
}

/**
 * Torque over one turn.
 *
 *   gas = -imep V_s / 2 pi,   friction = f fmep V_s / 2 pi,   blower = shaft power / omega,   needed = their sum
 *   lent = largest rise of  integral (T_resisting - needed) dtheta
 *
 * @param coldFriction - f, friction of the cold engine over that of the warm one [-]
 *
 * Valid: inertia of pistons and rods left out, which evens out over a turn and is small while cranking.
 */
export function turnTorque(figures: SolvedPoint, coldFriction: number): TurnTorque {
  const { engine, blower, traces, speed } = figures;
  const perPressure = engine.sweptVolume / TURN;
  const gas = -engine.imep * perPressure;
  const friction = coldFriction * engine.fmep * perPressure;
  const drive = blower.shaftPower / speed;
  const needed = gas + friction + drive;
  const { angle, gasTorque, blowerTorque } = traces;
  let peak = -Infinity;
  let [sum, lowest, lent] = [0, 0, 0];
  for (let i = 0; i < angle.length; i++) {
    const resisting = friction + blowerTorque[i]! - gasTorque[i]!;
    peak = Math.max(peak, resisting);
    if (i === 0) continue;
    const before = friction + blowerTorque[i - 1]! - gasTorque[i - 1]!;
    sum += (0.5 * (resisting + before) - needed) * (angle[i]! - angle[i - 1]!);
    lowest = Math.min(lowest, sum);
    lent = Math.max(lent, sum - lowest);
  }
  return { gas, friction, blower: drive, needed, peak, lent };
}
