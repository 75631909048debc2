import { solveLinear } from '../../numerics/solve-linear.ts';
import type { WallConductances } from './wall-conductances.ts';

/** Metal of one cylinder, in the order of the network's unknowns. */
export const METAL = ['crown', 'body', 'head', 'liner'] as const;

/** What the gas gives a surface whose temperature is T: heat + conductance (at - T) [W, W/K, K]. */
export interface GasSide {
  readonly heat: number;
  readonly conductance: number;
  readonly at: number;
}
export type GasSides = Readonly<Record<'crown' | 'head' | 'liner', GasSide>>;

export interface Surroundings {
  /** Air that meets this cylinder, and gas in the crankcase [K]. */
  readonly air: number;
  readonly crankcase: number;
}

/** Steady temperatures of one cylinder's walls [K], and what goes where [W]. */
export interface WallState {
  /** Gas side of the crown, on top of its coating; without one, the crown's metal. */
  readonly crownSurface: number;
  readonly crown: number;
  /** Piston behind the rings, and skirt. */
  readonly body: number;
  readonly head: number;
  readonly liner: number;
  /** Of the barrel's fins. */
  readonly finRoot: number;
  /** Gas to each surface. */
  readonly fromGas: { readonly crown: number; readonly head: number; readonly liner: number };
  readonly headToAir: number;
  readonly barrelToAir: number;
  readonly crownToCase: number;
  readonly bodyToCase: number;
  /** Through rings and skirt into the liner, and from the head across the joint. */
  readonly throughRings: number;
  readonly throughJoint: number;
}

/**
 * Conductance matrix and load of the network at rest.
 *
 *   crown:  q_gas = G_cb (T_c - T_b) + G_cc (T_c - T_case)
 *   body:   G_cb (T_c - T_b) = G_bl (T_b - T_l) + G_bc (T_b - T_case)
 *   head:   q_gas = G_hl (T_h - T_l) + G_ha (T_h - T_air)
 *   liner:  q_gas + G_bl (T_b - T_l) + G_hl (T_h - T_l) = G_la (T_l - T_air)
 *
 * The crown's gas side acts through its coating: q = (heat + g (at - T_c)) / (1 + g R).
 */
export function networkOf(
  c: WallConductances,
  gas: GasSides,
  { air, crankcase }: Surroundings,
): { readonly matrix: Float64Array[]; readonly load: Float64Array } {
  const through = 1 + gas.crown.conductance * c.coatingResistance;
  const [gc, gh, gl] = [gas.crown.conductance / through, gas.head.conductance, gas.liner.conductance];
  const matrix = [
    [c.crownToBody + c.crownToCase + gc, -c.crownToBody, 0, 0],
    [-c.crownToBody, c.crownToBody + c.bodyToLiner + c.bodyToCase, 0, -c.bodyToLiner],
    [0, 0, c.headToLiner + c.headToAir + gh, -c.headToLiner],
    [0, -c.bodyToLiner, -c.headToLiner, c.bodyToLiner + c.headToLiner + c.linerToAir + gl],
  ].map((row) => Float64Array.from(row));
  const load = Float64Array.of(
    (gas.crown.heat + gas.crown.conductance * gas.crown.at) / through + c.crownToCase * crankcase,
    c.bodyToCase * crankcase,
    gas.head.heat + gh * gas.head.at + c.headToAir * air,
    gas.liner.heat + gl * gas.liner.at + c.linerToAir * air,
  );
  return { matrix, load };
}

/**
 * Steady temperatures of one cylinder's walls: `networkOf`, solved.
 *
 * Valid: as wallConductances. Where nothing leads heat away and the gas gives a fixed heat, there is no steady state: not finite.
 * Source: nodal balance, Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 2002, ch. 3.
 */
export function steadyWalls(c: WallConductances, gas: GasSides, around: Surroundings): WallState {
  const { matrix, load } = networkOf(c, gas, around);
  const [crown, body, head, liner] = solveLinear(matrix, load);
  return stateAt(c, gas, around, [crown, body, head, liner]);
}

/** What flows where at given temperatures of the metal, in the order of METAL. */
export function stateAt(
  c: WallConductances,
  gas: GasSides,
  { air, crankcase }: Surroundings,
  [crown, body, head, liner]: readonly [number, number, number, number],
): WallState {
  const into = ({ heat, conductance, at }: GasSide, T: number) => heat + conductance * (at - T);
  const fromCrown = into(gas.crown, crown) / (1 + gas.crown.conductance * c.coatingResistance);
  const barrelToAir = c.linerToAir * (liner - air);
  return {
    crownSurface: crown + fromCrown * c.coatingResistance,
    crown,
    body,
    head,
    liner,
    finRoot: liner - barrelToAir / c.barrelWall,
    fromGas: { crown: fromCrown, head: into(gas.head, head), liner: into(gas.liner, liner) },
    headToAir: c.headToAir * (head - air),
    barrelToAir,
    crownToCase: c.crownToCase * (crown - crankcase),
    bodyToCase: c.bodyToCase * (body - crankcase),
    throughRings: c.bodyToLiner * (body - liner),
    throughJoint: c.headToLiner * (head - liner),
  };
}
