import type { CycleSystem } from '../cycle/system.ts';
import { CROWN, HEAD, LINER, SURFACES } from '../cycle/sources/cylinder-walls.ts';
import { TURN } from '../units.ts';
import type { GasAnswer, WallFigures } from './point-result.ts';

/**
 * Walls of every cylinder after a recorded period, from the heat that crossed them: the network carries exactly that heat, and what it
 * differs by from the temperatures held over the period is the residual.
 *
 *   residual = max over surfaces of G_out |T_network - T_held| / Q,   Q: heat into all walls of the cylinder
 *
 * G_out: all that leads from the node. Gas side: G = mean of h A; gas temperature T_held + heat / G.
 *
 * @param held - crown, head, liner, cylinder by cylinder, over the period [K]
 * @returns null where wall temperatures are given, and turn by turn, where they are held
 */
export function wallFigures(
  system: CycleSystem,
  records: Float64Array,
  held: Float64Array,
  turns: number,
): readonly WallFigures[] | null {
  const { solvedWalls, filmMeans, cylinderWalls, omega } = system;
  if (!solvedWalls || !filmMeans || system.firing === 'by turns') return null;
  const heat = system.wallHeat(records, turns);
  const perSecond = omega / (TURN * turns);
  return solvedWalls.carrying(heat).map((state, j): WallFigures => {
    const at = SURFACES * j;
    const film = records[filmMeans.recordAt + 2 * j] * perSecond;
    const answer = (surface: number, conductance: number): GasAnswer => ({
      conductance,
      gasTemperature:
        conductance > 0 ? held[at + surface] + heat[at + surface] / conductance : held[at + surface],
    });
    const c = solvedWalls.conductanceOf(j);
    const whole = heat[at] + heat[at + 1] + heat[at + 2];
    const misses = [
      c.crownToBody * (state.crownSurface - held[at + CROWN]),
      (c.headToLiner + c.headToAir) * (state.head - held[at + HEAD]),
      (c.bodyToLiner + c.headToLiner + c.linerToAir) * (state.liner - held[at + LINER]),
    ];
    return {
      ...state,
      gasSide: {
        crown: answer(CROWN, film * cylinderWalls.crownArea),
        head: answer(HEAD, film * cylinderWalls.headArea),
        liner: answer(LINER, records[filmMeans.recordAt + 2 * j + 1] * perSecond),
      },
      residual: whole > 0 ? Math.max(...misses.map(Math.abs)) / whole : 0,
    };
  });
}
