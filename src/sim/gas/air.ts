import { mixConstituents } from './mix-constituents.ts';
import { SPECIES, speciesConstituent } from './species.ts';

/**
 * Dry air, mole fractions [-]; carbon dioxide counted as nitrogen and argon.
 *
 * Source: US Standard Atmosphere 1976, rounded so that the three sum to one.
 */
export const AIR_MOLE_FRACTIONS = { O2: 0.20946, N2: 0.78088, Ar: 0.00966 } as const;

/** Dry air as a constituent. */
export const AIR = mixConstituents('air', [
  { moles: AIR_MOLE_FRACTIONS.O2, gas: speciesConstituent(SPECIES.O2) },
  { moles: AIR_MOLE_FRACTIONS.N2, gas: speciesConstituent(SPECIES.N2) },
  { moles: AIR_MOLE_FRACTIONS.Ar, gas: speciesConstituent(SPECIES.Ar) },
]);
