/** Amounts of the elements the model knows, per molecule or per kilogram as the owner says. */
export interface Elements {
  readonly C: number;
  readonly H: number;
  readonly O: number;
  readonly N: number;
  readonly Ar: number;
}

export type Element = keyof Elements;
export const ELEMENTS: readonly Element[] = ['C', 'H', 'O', 'N', 'Ar'];

/**
 * Atomic masses [kg/mol].
 *
 * Source: conventional atomic weights, IUPAC 2013 (Meija et al., Pure Appl. Chem. 88, 265, 2016), to five figures.
 */
export const ATOMIC_MASS: Elements = { C: 12.011e-3, H: 1.008e-3, O: 15.999e-3, N: 14.007e-3, Ar: 39.948e-3 };

/** An element count with what is not named set to zero. */
export const elements = (given: Partial<Elements>): Elements => ({ C: 0, H: 0, O: 0, N: 0, Ar: 0, ...given });

/** Molar mass of a molecule [kg/mol], from its atoms. */
export const molarMassOfAtoms = (atoms: Elements): number =>
  ELEMENTS.reduce((sum, element) => sum + atoms[element] * ATOMIC_MASS[element], 0);

/** Weighted sum of element counts, each part with its own weight. */
export function sumElements(parts: readonly { readonly weight: number; readonly of: Elements }[]): Elements {
  const total = { C: 0, H: 0, O: 0, N: 0, Ar: 0 };
  for (const { weight, of } of parts) for (const element of ELEMENTS) total[element] += weight * of[element];
  return total;
}
