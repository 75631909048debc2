/**
 * Laminar flow through a thin flat gap: plane Poiseuille flow of an ideal gas at constant temperature.
 *
 *   mdot = b d^3 (p0^2 - p1^2) / (24 mu R T L)
 *
 * @param width - b, across the flow [m]
 * @param gap   - d [m]
 * @param land  - L, along the flow [m]
 * @param p0, p1 - before and behind [Pa]
 * @param RT    - gas constant times temperature [J/kg]
 * @param viscosity - mu [Pa s]
 * @returns [kg/s]
 *
 * Valid: rho u d / mu below some 1500, no loss at entry and exit, no moving wall (a tip that moves at U drags rho U d/2 per width along).
 * Source: White, Viscous Fluid Flow, 2006, sec. 3-2, with rho = p / (R T) integrated along the gap.
 */
export const thinGapFlow = (
  width: number,
  gap: number,
  land: number,
  p0: number,
  p1: number,
  RT: number,
  viscosity: number,
): number => (width * gap ** 3 * (p0 * p0 - p1 * p1)) / (24 * viscosity * RT * land);

/**
 * Length of a flat land that resists like a round edge at the same least gap.
 *
 *   h = d + s^2/(2 rho):   integral of d^3/h^3 ds = (3 pi / 8) sqrt(2 rho d)
 *
 * @param radius - rho, of the edge against what it passes: 1/rho is the difference of the curvatures [m]
 * @param gap    - d, d << rho [m]
 *
 * Source: lubrication theory; the integral of (1 + t^2)^-3 over all t is 3 pi / 8.
 */
export const roundEdgeLand = (radius: number, gap: number): number =>
  ((3 * Math.PI) / 8) * Math.sqrt(2 * radius * gap);

/**
 * Radius of a full cycloid's tip against the casing [m].
 *
 *   tip 4 q (r + q) / (r + 2 q) with q = r/(2 z), r = R/(1 + 1/z);   1/rho = 1/tip - 1/R
 *
 * @param tipRadius - R [m]; @param lobes - z
 *
 * Source: curvature of an epicycloid at its vertex.
 */
export function cycloidTipRadius(tipRadius: number, lobes: number): number {
  const r = tipRadius / (1 + 1 / lobes);
  const q = r / (2 * lobes);
  const tip = (4 * q * (r + q)) / (r + 2 * q);
  return (tip * tipRadius) / (tipRadius - tip);
}
