/**
 * Dynamic viscosity of air, used for every gas of the model.
 *
 *   mu = 7.457e-6 + 4.1547e-8 T - 7.4793e-12 T^2
 *
 * @param T - [K]
 * @returns [Pa s]
 *
 * Valid: 250-2800 K, within about 5 % of air; rises to 2777 K and falls slowly beyond (by 6 % at 3500 K), which has no meaning.
 * Source: fit given by Blair, Design and Simulation of Two-Stroke Engines, 1996, sec. 2.3.
 */
export const gasViscosity = (T: number): number => 7.457e-6 + T * (4.1547e-8 - 7.4793e-12 * T);

/**
 * Thermal conductivity of air, used for every gas of the model.
 *
 *   k = 6.1944e-3 + 7.3814e-5 T - 1.2491e-8 T^2
 *
 * @param T - [K]
 * @returns [W/(m K)]
 *
 * Valid: as gasViscosity; rises to 2955 K.
 * Source: as gasViscosity.
 */
export const gasConductivity = (T: number): number => 6.1944e-3 + T * (7.3814e-5 - 1.2491e-8 * T);
