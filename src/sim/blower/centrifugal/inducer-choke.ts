/** Radius of the inducer's mean over that of the tip: usual eyes reach from 0.25 to 0.6 of it. Typical [-]. */
export const INDUCER_RADIUS = 0.45;

/**
 * Mass flow at which the inducer's throat chokes, as seen from the turning blades.
 *
 *   m / (rho0 a0 A) = ( (2 + (g-1) (U/a0)^2) / (g+1) )^((g+1)/(2(g-1)))
 *
 * @param throatArea - A, between the blades [m^2]
 * @param bladeSpeed - U, of the inducer at its mean radius [m/s]
 * @param density, soundSpeed - rho0, a0 of the gas at rest before it [kg/m^3], [m/s]
 * @param gamma      - [-]
 * @returns [kg/s]
 *
 * Valid: no swirl ahead of the wheel. Source: Dixon & Hall, Fluid Mechanics and Thermodynamics of Turbomachinery, 2010, sec. 7.12.
 */
export function inducerChoke(
  throatArea: number,
  bladeSpeed: number,
  density: number,
  soundSpeed: number,
  gamma: number,
): number {
  const mach = bladeSpeed / soundSpeed;
  const relative = (2 + (gamma - 1) * mach * mach) / (gamma + 1);
  return throatArea * density * soundSpeed * relative ** ((gamma + 1) / (2 * (gamma - 1)));
}
