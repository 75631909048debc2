import { MOLAR_GAS_CONSTANT, THERMOCHEMICAL_TEMPERATURE } from '../constants.ts';
import type { Constituent } from './constituent.ts';
import type { Elements } from './elements.ts';
import { elements, molarMassOfAtoms, sumElements } from './elements.ts';
import type { Fuel } from './fuel.ts';
import { burnedEnthalpy, vapourHeatingValue } from './fuel.ts';
import { enthalpy } from './polynomial.ts';
import type { Species } from './species.ts';
import { SPECIES, speciesConstituent } from './species.ts';

type Given = Omit<
  Fuel,
  'molarMass' | 'vapour' | 'involatileShare' | 'volatileMoles' | 'atoms' | 'lowerHeatingValue'
>;

/** A pure substance: its heating value follows from its formation enthalpy. */
function pure(species: Species, given: Given): Fuel {
  const vapour = speciesConstituent(species);
  const molarMass = molarMassOfAtoms(species.atoms);
  const lowerHeatingValue = vapourHeatingValue(species.atoms, vapour) - given.latentHeat;
  return {
    ...given,
    atoms: species.atoms,
    molarMass,
    lowerHeatingValue,
    vapour,
    involatileShare: 0,
    volatileMoles: 1 / molarMass,
  };
}

/**
 * Vapour with isooctane's specific heat per kilogram and its own atoms; a6 is set so that complete combustion at 298.15 K
 * releases `heatingValue` [J/kg of vapour].
 */
function likeIsooctane(name: string, atoms: Elements, heatingValue: number): Constituent {
  const model = speciesConstituent(SPECIES.isooctane);
  const molarMass = molarMassOfAtoms(atoms);
  const gasConstant = MOLAR_GAS_CONSTANT / molarMass;
  const scale = model.gasConstant / gasConstant;
  const formation = burnedEnthalpy(atoms) / molarMass + heatingValue;
  const shift = (formation - enthalpy(model, THERMOCHEMICAL_TEMPERATURE)) / gasConstant;
  return {
    name,
    gasConstant,
    scale: gasConstant,
    breaks: model.breaks,
    pieces: model.pieces.map(([a1, a2, a3, a4, a5, a6, a7]) => [
      scale * a1,
      scale * a2,
      scale * a3,
      scale * a4,
      scale * a5,
      scale * a6 + shift,
      scale * a7,
    ]),
    elements: sumElements([{ weight: 1 / molarMass, of: atoms }]),
  };
}

/** A hydrocarbon lump CH_x of given molar mass [kg/mol]. */
function lump(hydrogenPerCarbon: number, molarMass: number): Elements {
  const group = elements({ C: 1, H: hydrogenPerCarbon });
  return sumElements([{ weight: molarMass / molarMassOfAtoms(group), of: group }]);
}

const ISOOCTANE_SATURATION = { share: 1, a: 8.93679, b: 1257.84, c: -52.415 };

const PETROL_ATOMS = lump(1.87, 0.11);
const PETROL_HEATING_VALUE = 43.4e6;
const PETROL_LATENT_HEAT = 350e3;

/**
 * Petrol: CH1.87 of molar mass 110 g/mol, a typical unleaded grade. Ranges: molar mass 95-115 g/mol, density 720-775 kg/m^3,
 * heating value 42.5-44 MJ/kg, latent heat 300-380 kJ/kg, RON 91-100.
 * Its saturation law is isooctane's, whose boiling point (372 K) is near petrol's 50 % point.
 */
const petrol: Fuel = {
  name: 'petrol',
  atoms: PETROL_ATOMS,
  molarMass: molarMassOfAtoms(PETROL_ATOMS),
  liquidDensity: 745,
  liquidSpecificHeat: 2220,
  latentHeat: PETROL_LATENT_HEAT,
  lowerHeatingValue: PETROL_HEATING_VALUE,
  ron: 95,
  mon: 85,
  vapour: likeIsooctane('petrol vapour', PETROL_ATOMS, PETROL_HEATING_VALUE + PETROL_LATENT_HEAT),
  saturation: [ISOOCTANE_SATURATION],
  involatileShare: 0,
  volatileMoles: 1 / molarMassOfAtoms(PETROL_ATOMS),
  source:
    'Heywood 1988, table D.4 (composition, molar mass, latent heat); US Department of Energy, Alternative Fuels Data Center (heating value); EN 228 (density, octane); typical',
};

const isooctane = pure(SPECIES.isooctane, {
  name: 'isooctane',
  liquidDensity: 692,
  liquidSpecificHeat: 2090,
  latentHeat: 308e3,
  ron: 100,
  mon: 100,
  saturation: [ISOOCTANE_SATURATION],
  source:
    'Heywood 1988, table D.4; saturation: Willingham et al., J. Res. Natl. Bur. Stand. 35:219, 1945 (297-373 K); octane by definition',
});

const methanol = pure(SPECIES.methanol, {
  name: 'methanol',
  liquidDensity: 796,
  liquidSpecificHeat: 2530,
  latentHeat: 1177e3,
  ron: 107,
  mon: 92,
  saturation: [{ share: 1, a: 10.20409, b: 1581.341, c: -33.5 }],
  source:
    'US Department of Energy, Alternative Fuels Data Center (density, latent heat, octane); saturation: Ambrose & Sprake, J. Chem. Thermodyn. 2:631, 1970 (288-357 K)',
});

const ethanol = pure(SPECIES.ethanol, {
  name: 'ethanol',
  liquidDensity: 794,
  liquidSpecificHeat: 2440,
  latentHeat: 921e3,
  ron: 108,
  mon: 92,
  saturation: [{ share: 1, a: 10.24677, b: 1598.673, c: -46.424 }],
  source:
    'US Department of Energy, Alternative Fuels Data Center (density, latent heat, octane); saturation: Ambrose & Sprake, J. Chem. Thermodyn. 2:631, 1970 (293-367 K)',
});

/** The fuels a design may name. */
export const FUELS: Readonly<Record<string, Fuel>> = { petrol, isooctane, methanol, ethanol };

const OIL_ATOMS = lump(1.9, 0.4);
const OIL_HEATING_VALUE = 42.5e6;

/**
 * Two-stroke oil: a hydrocarbon lump CH1.9 of 400 g/mol that stays a mist in the tract and burns with the fuel. Its heating
 * value is that of the mist (no latent heat). Typical; ranges: density 850-930 kg/m^3, heating value 40-43 MJ/kg. Octane numbers
 * of zero make 2 % by volume cost about half a number, as is commonly held.
 */
export const OIL: Fuel = {
  name: 'oil',
  atoms: OIL_ATOMS,
  molarMass: molarMassOfAtoms(OIL_ATOMS),
  liquidDensity: 880,
  liquidSpecificHeat: 2000,
  latentHeat: 0,
  lowerHeatingValue: OIL_HEATING_VALUE,
  ron: 0,
  mon: 0,
  vapour: likeIsooctane('burnt oil mist', OIL_ATOMS, OIL_HEATING_VALUE),
  saturation: [],
  involatileShare: 1,
  volatileMoles: 0,
  source: 'typical mineral base stock; Heywood & Sher, The Two-Stroke Cycle Engine, 1999, for its use',
};
