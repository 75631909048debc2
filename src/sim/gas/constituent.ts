import { MOLAR_GAS_CONSTANT } from '../constants.ts';
import type { Elements } from './elements.ts';
import type { SevenCoefficients } from './polynomial.ts';

/**
 * A gas of fixed composition that the model carries as one mass: air, a fuel's vapour, the products of a mixture.
 * It is data; nothing that steps the cycle knows which gas it is.
 *
 * `pieces[k]` holds a1..a7 of cp/scale between `breaks[k - 1]` and `breaks[k]`; there is one piece more than breaks.
 * A mixture keeps every break of its parts, so that no piece is ever refitted.
 */
export interface Constituent {
  readonly name: string;
  /** Specific gas constant; 0 for a liquid, which makes no pressure [J/(kg K)]. */
  readonly gasConstant: number;
  /** What the polynomials are in multiples of: the gas constant of a gas [J/(kg K)]. */
  readonly scale: number;
  /** Temperatures where the next piece begins, rising [K]. */
  readonly breaks: readonly number[];
  readonly pieces: readonly SevenCoefficients[];
  /** Atoms of each element [mol/kg]. */
  readonly elements: Elements;
}

/** Molar mass [kg/mol]. */
export const molarMassOf = (gas: Constituent): number => MOLAR_GAS_CONSTANT / gas.gasConstant;
