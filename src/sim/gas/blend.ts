import type { Fuel } from './fuel.ts';
import { sumElements } from './elements.ts';
import { OIL } from './fuels.ts';
import { mixConstituents } from './mix-constituents.ts';

/**
 * Blend of fuels by volume of the separate liquids.
 *
 *   mass share w_i = v_i rho_i / sum v rho,   mole share x_i = (w_i / M_i) / sum(w / M)
 *   heating value, latent heat, specific heat, involatile share: by mass;  atoms, octane numbers: by mole;
 *   1 / rho = sum w_i / rho_i;   saturation: Raoult with the fresh composition
 *
 * @param name  - of the blend
 * @param parts - fuels and their volumes, in any common unit; shares need not sum to one
 *
 * Valid: ideal liquids. Octane by mole fraction is good to about 2 numbers for alcohol in petrol.
 * Source: Anderson et al., Energy Fuels 24:6576, 2010 (octane); ideal mixing for the rest.
 */
export function blend(
  name: string,
  parts: readonly { readonly volume: number; readonly fuel: Fuel }[],
): Fuel {
  const masses = parts.map(({ volume, fuel }) => volume * fuel.liquidDensity);
  const mass = masses.reduce((sum, m) => sum + m, 0);
  const volume = parts.reduce((sum, part) => sum + part.volume, 0);
  if (!(mass > 0) || parts.some((part) => !(part.volume >= 0)))
    throw new RangeError(`${name}: volumes must be positive, got ${parts.map((p) => p.volume).join(', ')}`);

  const w = masses.map((m) => m / mass);
  const moles = parts.map(({ fuel }, i) => w[i] / fuel.molarMass);
  const total = moles.reduce((sum, n) => sum + n, 0);
  const x = moles.map((n) => n / total);
  const byMass = (of: (fuel: Fuel) => number) => parts.reduce((sum, { fuel }, i) => sum + w[i] * of(fuel), 0);
  const byMole = (of: (fuel: Fuel) => number) => parts.reduce((sum, { fuel }, i) => sum + x[i] * of(fuel), 0);
  return {
    name,
    atoms: sumElements(parts.map(({ fuel }, i) => ({ weight: x[i], of: fuel.atoms }))),
    molarMass: 1 / total,
    liquidDensity: mass / volume,
    liquidSpecificHeat: byMass((fuel) => fuel.liquidSpecificHeat),
    latentHeat: byMass((fuel) => fuel.latentHeat),
    lowerHeatingValue: byMass((fuel) => fuel.lowerHeatingValue),
    ron: byMole((fuel) => fuel.ron),
    mon: byMole((fuel) => fuel.mon),
    vapour: mixConstituents(
      `${name} vapour`,
      parts.map(({ fuel }, i) => ({ moles: moles[i], gas: fuel.vapour })),
    ),
    saturation: parts.flatMap(({ fuel }, i) =>
      fuel.saturation.map((term) => ({ ...term, share: term.share * x[i] })),
    ),
    involatileShare: byMass((fuel) => fuel.involatileShare),
    volatileMoles: byMass((fuel) => fuel.volatileMoles),
    source: parts.map(({ fuel }) => `${fuel.name}: ${fuel.source}`).join('; '),
  };
}

/**
 * Fuel with oil in it. The oil displaces fuel by volume, stays a mist in the tract, and burns with the fuel as a heavy
 * hydrocarbon lump, so that it takes its share of the air (about as much per kilogram as petrol).
 *
 * @param share - oil over the whole, by volume; 0.02 is 1:49 [-]
 */
export const withOil = (fuel: Fuel, share: number): Fuel =>
  share === 0
    ? fuel
    : blend(`${fuel.name} with oil`, [
        { volume: 1 - share, fuel },
        { volume: share, fuel: OIL },
      ]);
