import type { Cooling } from '../../engine.ts';
import { finAirCoefficient, finEfficiency, finnedCoefficient, mixedCoefficient } from '../fins.ts';

/** What joins the metal of one cylinder to itself, to air and to the crankcase [W/K]. */
export interface WallConductances {
  /** Of the ceramic layer, gas side of the crown to its metal [K/W]; 0 without one. */
  readonly coatingResistance: number;
  /** Crown to the piston's body behind the rings, body to liner, crown and body to the crankcase's gas. */
  readonly crownToBody: number;
  readonly bodyToLiner: number;
  readonly crownToCase: number;
  readonly bodyToCase: number;
  /** Across the joint, and from each to the air. */
  readonly headToLiner: number;
  readonly headToAir: number;
  readonly linerToAir: number;
  /** Of `linerToAir` that of the barrel's wall, and that of its fins alone. */
  readonly barrelWall: number;
  readonly barrelFins: number;
}

/**
 * Conductances of a cylinder's walls from their dimensions.
 *
 *   coating:       R = t / (k A_crown)
 *   crown to body: 8 pi k t             a disc heated evenly, its mean above its rim
 *   body to liner: h_r pi B H  +  h_s pi B L eta(m L),  m = sqrt(h_s / (k t_s))     rings in contact, skirt as a fin
 *   to crankcase:  h_u A_bore from the crown's underside, h_u pi B L eta from the skirt's inside
 *   joint:         h_j pi w (B + w)
 *   barrel:        wall 2 pi k L / ln(1 + 2 w / B) in series with fins U 2 pi (B/2 + w) L;   head: U A_root, flat
 *
 * @param bore      - B [m]
 * @param crownArea - on the gas side [m^2]
 * @param cooling   - dimensions and coefficients
 * @param airSpeed  - of the air that meets this cylinder [m/s]
 *
 * Valid: steady means; one temperature for each of crown, body, head and liner. Heat into port walls, studs and flange is left out.
 * Source: conduction: Incropera & DeWitt 2002, ch. 3; fins: see fins.ts; coefficients of contact are typical values, to be calibrated.
 */
export function wallConductances(
  bore: number,
  crownArea: number,
  cooling: Cooling,
  airSpeed: number,
): WallConductances {
  const { piston, barrel, head, coating } = cooling;
  const round = Math.PI * bore;
  const m = Math.sqrt(piston.skirtCoefficient / (piston.conductivity * piston.skirtThickness));
  const skirt = round * piston.skirtLength * finEfficiency(m * piston.skirtLength);
  const toAir = (fins: Cooling['head']['fins'], rootRadius: number): number => {
    const forced = cooling.finFactor * finAirCoefficient(fins, airSpeed);
    return finnedCoefficient(mixedCoefficient(forced, cooling.stillAirCoefficient), fins, rootRadius);
  };
  const rootRadius = bore / 2 + barrel.wall;
  const barrelFins = toAir(barrel.fins, rootRadius) * 2 * Math.PI * rootRadius * barrel.length;
  const barrelWall =
    (2 * Math.PI * barrel.fins.conductivity * barrel.length) / Math.log(1 + (2 * barrel.wall) / bore);
  return {
    coatingResistance: coating.thickness / (coating.conductivity * crownArea),
    crownToBody: 8 * Math.PI * piston.conductivity * piston.crownThickness,
    bodyToLiner: piston.ringCoefficient * round * piston.ringHeight + piston.skirtCoefficient * skirt,
    crownToCase: piston.undersideCoefficient * 0.25 * Math.PI * bore * bore,
    bodyToCase: piston.undersideCoefficient * skirt,
    headToLiner: cooling.jointCoefficient * Math.PI * barrel.wall * (bore + barrel.wall),
    headToAir: toAir(head.fins, Infinity) * head.rootArea,
    linerToAir: barrelFins > 0 ? 1 / (1 / barrelWall + 1 / barrelFins) : 0,
    barrelWall,
    barrelFins,
  };
}
