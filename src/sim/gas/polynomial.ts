import type { Constituent } from './constituent.ts';

/** a1..a7 of the seven-coefficient form. */
export type SevenCoefficients = readonly [number, number, number, number, number, number, number];

/**
 * Seven-coefficient polynomials of one constituent, per kilogram; R stands for its scale, which is the gas constant of a gas.
 *
 *   cp(T) = R (a1 + a2 T + a3 T^2 + a4 T^3 + a5 T^4)
 *   h(T)  = R (a1 T + a2 T^2/2 + a3 T^3/3 + a4 T^4/4 + a5 T^5/5 + a6)      absolute: zero for the elements at 298.15 K
 *   u(T)  = h(T) - R T
 *   s(T)  = R (a1 ln T + a2 T + a3 T^2/2 + a4 T^3/3 + a5 T^4/4 + a7)        at 101 325 Pa
 *
 * Valid: 300 K (200 K for the simple gases) to 3500 K. Below and above, the end pieces are extrapolated; cp stays
 * positive and u rising from 150 K to 3600 K for every gas of the model (tested), but the values there are not data.
 * Numerics: Horner; u, h and s are continuous at a break to the digits of the source, cp to about 1e-6.
 * Source: McBride, Gordon & Reno, NASA TM-4513, 1993, for the form.
 */
function pieceAt(gas: Constituent, T: number): SevenCoefficients {
  let k = 0;
  while (k < gas.breaks.length && T > gas.breaks[k]) k++;
  return gas.pieces[k];
}

/** Specific heat at constant pressure [J/(kg K)] at temperature T [K]; see above. */
export function specificHeat(gas: Constituent, T: number): number {
  const [a1, a2, a3, a4, a5] = pieceAt(gas, T);
  return gas.scale * (a1 + T * (a2 + T * (a3 + T * (a4 + T * a5))));
}

/** Ratio of specific heats [-] at temperature T [K]. */
export function heatRatio(gas: Constituent, T: number): number {
  const cp = specificHeat(gas, T);
  return cp / (cp - gas.gasConstant);
}

/** Absolute enthalpy [J/kg] at temperature T [K]; see above. */
export function enthalpy(gas: Constituent, T: number): number {
  const [a1, a2, a3, a4, a5, a6] = pieceAt(gas, T);
  return gas.scale * (a6 + T * (a1 + T * (a2 / 2 + T * (a3 / 3 + T * (a4 / 4 + (T * a5) / 5)))));
}

/** Absolute internal energy [J/kg] at temperature T [K]; see above. */
export function internalEnergy(gas: Constituent, T: number): number {
  return enthalpy(gas, T) - gas.gasConstant * T;
}

/** Entropy at one atmosphere [J/(kg K)] at temperature T [K]; see above. */
export function entropy(gas: Constituent, T: number): number {
  const [a1, a2, a3, a4, a5, , a7] = pieceAt(gas, T);
  return gas.scale * (a7 + a1 * Math.log(T) + T * (a2 + T * (a3 / 2 + T * (a4 / 3 + (T * a5) / 4))));
}
