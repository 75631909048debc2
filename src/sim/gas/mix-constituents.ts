import { MOLAR_GAS_CONSTANT } from '../constants.ts';
import type { Constituent } from './constituent.ts';
import { molarMassOf } from './constituent.ts';
import { sumElements } from './elements.ts';
import type { SevenCoefficients } from './polynomial.ts';

/**
 * One constituent from amounts of others: an ideal mixture of ideal gases.
 *
 *   a_j = sum x_i a_ij  (j = 1..6),   a_7 = sum x_i (a_i7 - ln x_i),   M = sum x_i M_i
 *
 * @param name  - of the mixture
 * @param parts - amounts in any common unit, zero allowed, not all zero [mol]
 *
 * Valid: as its parts; every break of every part is kept.
 * Source: ideal-gas mixing; the last term is the entropy of mixing at constant total pressure.
 */
export function mixConstituents(
  name: string,
  parts: readonly { readonly moles: number; readonly gas: Constituent }[],
): Constituent {
  const present = parts.filter((part) => part.moles !== 0);
  const total = present.reduce((sum, part) => sum + part.moles, 0);
  if (!(total > 0) || present.some((part) => !(part.moles > 0)))
    throw new RangeError(`${name}: amounts must be positive, got ${parts.map((p) => p.moles).join(', ')}`);

  const shares = present.map((part) => ({ x: part.moles / total, gas: part.gas }));
  const molarMass = shares.reduce((sum, { x, gas }) => sum + x * molarMassOf(gas), 0);
  const breaks = [...new Set(present.flatMap((part) => part.gas.breaks))].sort((a, b) => a - b);
  const pieces = [...breaks, Infinity].map((top) => {
    const sum: [number, number, number, number, number, number, number] = [0, 0, 0, 0, 0, 0, 0];
    for (const { x, gas } of shares) {
      const piece = gas.pieces[gas.breaks.filter((own) => own < top).length];
      piece.forEach((a, j) => (sum[j] += x * a));
      sum[6] -= x * Math.log(x);
    }
    return sum satisfies SevenCoefficients;
  });
  return {
    name,
    gasConstant: MOLAR_GAS_CONSTANT / molarMass,
    scale: MOLAR_GAS_CONSTANT / molarMass,
    breaks,
    pieces,
    elements: sumElements(
      shares.map(({ x, gas }) => ({ weight: (x * molarMassOf(gas)) / molarMass, of: gas.elements })),
    ),
  };
}
