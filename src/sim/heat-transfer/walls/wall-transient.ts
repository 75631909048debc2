import { symmetricModes } from '../../numerics/symmetric-modes.ts';

/**
 * Temperatures of lumped masses joined by conductances, on the way from a start.
 *
 *   C dT/dt = load - G T,   T(t) = sum over modes of C^-1/2 v [ z_0 e^(-t/tau) + b t phi(t/tau) ]
 *   phi(x) = (1 - e^-x) / x,   z_0 = v' C^1/2 T_0,   b = v' C^-1/2 load,   1/tau: eigenvalues of C^-1/2 G C^-1/2
 */
export interface WallTransient {
  /** Of every mode, the slowest first; Infinity for one that never settles [s]. */
  readonly timeConstants: readonly number[];
  /** At a time after the start, in the order of the masses [K]. */
  at(time: number): readonly number[];
}

/**
 * The exact course of a linear network, no steps taken.
 *
 * @param matrix     - G, symmetric [W/K]
 * @param load       - heat into each mass at 0 K: sources, and conductance times temperature of what stays as it is [W]
 * @param capacities - C [J/K]
 * @param start      - T_0 [K]
 *
 * Valid: constant coefficients and surroundings; each mass at one temperature.
 * Source: lumped capacities, Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 2002, sec. 5.1; modal solution of a linear system.
 */
export function wallTransient(
  matrix: readonly Float64Array[],
  load: ArrayLike<number>,
  capacities: readonly number[],
  start: readonly number[],
): WallTransient {
  const root = capacities.map(Math.sqrt);
  const { values, vectors } = symmetricModes(
    matrix.map((row, i) => Float64Array.from(row, (G, j) => G / (root[i] * root[j]))),
  );
  const largest = Math.max(...values.map(Math.abs));
  const modes = vectors.map((vector, m) => {
    const along = (of: (i: number) => number) => vector.reduce((sum, v, i) => sum + v * of(i), 0);
    const rate = values[m] > 1e-12 * largest ? values[m] : 0;
    return { vector, rate, z0: along((i) => root[i] * start[i]), b: along((i) => load[i] / root[i]) };
  });
  return {
    timeConstants: modes.map(({ rate }) => 1 / rate).sort((a, b) => b - a),
    at(time) {
      const temperatures = new Array<number>(capacities.length).fill(0);
      for (const { vector, rate, z0, b } of modes) {
        const driven = rate === 0 ? time : -Math.expm1(-rate * time) / rate;
        const z = z0 * Math.exp(-rate * time) + b * driven;
        vector.forEach((v, i) => (temperatures[i] += (v * z) / root[i]));
      }
      return temperatures;
    },
  };
}
