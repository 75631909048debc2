import type { Cooling } from '../../engine.ts';

/** Speed below which warmed air is carried off by its own rising [m/s]. A declared guess; it keeps still air finite. */
const RISING = 1;
/** Of air at 25 degrees Celsius and one atmosphere [J/(kg K)], [kg/m^3]; the two shares below outweigh their last digits by far. */
const AIR_HEAT = 1006;
const AIR_DENSITY = 1.18;

/**
 * Air that meets a row standing behind `ahead` others.
 *
 *   v = v_0 f^ahead,   T = T_0 + s Q / (rho v_0 A c_p),   v_0 -> sqrt(v_0^2 + 1 (m/s)^2) in the second
 *
 * f: share of the speed left in a row's wake; s: share of the warmed air that meets the next row; A: what one cylinder stands in
 * the way with, fins included; Q: what one cylinder of each row ahead gives the air.
 *
 * @param cooling - f, s, v_0 and the fins
 * @param bore    - [m]
 * @param ahead   - rows in front
 * @param given   - Q, mean of a cylinder, summed over the rows in front [W]
 * @returns speed [m/s] and how much warmer than the free air [K]
 *
 * Valid: a stated estimate; the wake of staggered cylinders, cowls and a propeller's swirl are in the two shares alone.
 */
export function rowAir(
  { airSpeed, wakeSpeedShare, wakeWarming, barrel, head }: Cooling,
  bore: number,
  ahead: number,
  given: number,
): { readonly speed: number; readonly warmer: number } {
  const width = bore + 2 * (barrel.wall + barrel.fins.height);
  const flow = AIR_DENSITY * Math.hypot(airSpeed, RISING) * width * (barrel.length + head.fins.height);
  return {
    speed: airSpeed * wakeSpeedShare ** ahead,
    warmer: ahead === 0 ? 0 : (wakeWarming * given) / (flow * AIR_HEAT),
  };
}
