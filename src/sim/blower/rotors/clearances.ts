/** Gaps of a rotor pair, warm and running [m]. */
export interface RotorGaps {
  /** Tip to casing. */
  readonly tip: number;
  /** Rotor to rotor, along the common normal. */
  readonly mesh: number;
  /** Rotor end to end plate. */
  readonly end: number;
}

/** Clearance area of one blower from discharge to inlet side, by path [m^2]. */
export interface ClearancePaths {
  readonly tips: number;
  readonly mesh: number;
  readonly ends: number;
}

/**
 * Clearance area of one blower by path.
 *
 *   tips = 2 g_tip L_R,   mesh = g_mesh L_r,   ends = 4 g_end D/2
 *   L_R = sqrt(L^2 + (psi D/2)^2),   L_r = sqrt(L^2 + (psi r)^2)      edges of twisted rotors are longer than the rotor
 *
 * Two tips seal at a time; two ends of two rotors, half a diameter each (published between a half and a whole one).
 *
 * @param gaps          - [m]
 * @param tipDiameter   - D [m]
 * @param length        - L of a rotor [m]
 * @param twist         - psi, over the length; 0 for straight rotors [rad]
 * @param pitchDiameter - 2 r, distance of the axes; matters for twisted rotors only [m]
 *
 * Valid: an estimate; measured slip is better. Wide tips leak less than the orifice law says, sharp ones do not.
 * Source: paths as in Patterson & Ritchie, Roots blower performance, Int. J. Mech. Sci. 11, 1969, and McDougald, Imrie & Cole,
 * Purdue Int. Compressor Eng. Conf., 1974, paper 127.
 */
export function clearancePaths(
  gaps: RotorGaps,
  tipDiameter: number,
  length: number,
  twist = 0,
  pitchDiameter = tipDiameter,
): ClearancePaths {
  const edge = (diameter: number) => Math.hypot(length, (twist * diameter) / 2);
  return {
    tips: 2 * gaps.tip * edge(tipDiameter),
    mesh: gaps.mesh * edge(pitchDiameter),
    ends: 2 * gaps.end * tipDiameter,
  };
}

export const clearanceTotal = ({ tips, mesh, ends }: ClearancePaths): number => tips + mesh + ends;
