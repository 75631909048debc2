/**
 * Physical constants and reference states; conversion factors are in units.ts.
 *
 * Source: CODATA 2018 (Tiesinga et al., Rev. Mod. Phys. 93, 025010, 2021); the molar gas constant and the
 * Stefan-Boltzmann constant are exact since the 2019 SI.
 */

/** Molar gas constant [J/(mol K)]. */
export const MOLAR_GAS_CONSTANT = 8.31446261815324;

/** Stefan-Boltzmann constant [W/(m^2 K^4)]. */
export const STEFAN_BOLTZMANN = 5.670374419e-8;

/** Temperature of formation enthalpies and heating values [K]. */
export const THERMOCHEMICAL_TEMPERATURE = 298.15;
