import { TURN } from '../units.ts';

/** Angles closer than this are taken as one [rad]: a thousand times the round-off of a few turns. */
export const SAME_ANGLE = 1e-12;

/** What whole turns leave of an angle, in [0, 2 pi); round-off below 0 leaves nearly a turn [rad]. */
export const restOfTurn = (angle: number): number => angle - TURN * Math.floor(angle / TURN);

/** What whole turns leave of an angle, in [-pi, pi) [rad]. */
export const aboutZero = (angle: number): number => restOfTurn(angle + TURN / 2) - TURN / 2;

/** The same direction in [0, 2 pi); what falls short of a whole turn by round-off is 0 [rad]. */
export function withinTurn(angle: number): number {
  const rest = restOfTurn(angle);
  return rest < SAME_ANGLE || TURN - rest < SAME_ANGLE ? 0 : rest;
}
