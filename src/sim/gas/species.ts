import { MOLAR_GAS_CONSTANT } from '../constants.ts';
import type { Constituent } from './constituent.ts';
import type { Elements } from './elements.ts';
import { elements, molarMassOfAtoms, sumElements } from './elements.ts';
import type { SevenCoefficients } from './polynomial.ts';

/** A pure gas: its atoms and its two polynomial ranges. */
export interface Species {
  readonly name: string;
  /** Atoms per molecule. */
  readonly atoms: Elements;
  /** Temperature where `high` takes over from `low` [K]. */
  readonly breakTemperature: number;
  readonly low: SevenCoefficients;
  readonly high: SevenCoefficients;
}

const ARGON: SevenCoefficients = [2.5, 0, 0, 0, 0, -7.45375e2, 4.366];

/**
 * Seven-coefficient data.
 *
 * Valid: low range from 200 K (N2 and Ar 300 K) to the break, high range to 3500 K (N2, Ar 5000 K).
 * Source: GRI-Mech 3.0 thermodynamic file (Smith et al., Gas Research Institute, 1999) for O2, N2, Ar, CO2, H2O, CO, H2, OH, H, O, NO and
 * methanol; ethanol from the Third Millennium database (Burcat & Ruscic, ANL-05/20, 2005; entry L8/88); isooctane from
 * the primary-reference-fuel mechanism of Curran, Gaffuri, Pitz & Westbrook, Combust. Flame 129:253, 2002 (break at 1396 K).
 */
export const SPECIES = {
  O2: {
    name: 'O2',
    atoms: elements({ O: 2 }),
    breakTemperature: 1000,
    low: [
      3.78245636, -2.99673416e-3, 9.84730201e-6, -9.68129509e-9, 3.24372837e-12, -1.06394356e3, 3.65767573,
    ],
    high: [
      3.28253784, 1.48308754e-3, -7.57966669e-7, 2.09470555e-10, -2.16717794e-14, -1.08845772e3, 5.45323129,
    ],
  },
  N2: {
    name: 'N2',
    atoms: elements({ N: 2 }),
    breakTemperature: 1000,
    low: [3.298677, 1.4082404e-3, -3.963222e-6, 5.641515e-9, -2.444854e-12, -1.0208999e3, 3.950372],
    high: [2.92664, 1.4879768e-3, -5.68476e-7, 1.0097038e-10, -6.753351e-15, -9.227977e2, 5.980528],
  },
  OH: {
    name: 'OH',
    atoms: elements({ O: 1, H: 1 }),
    breakTemperature: 1000,
    low: [
      3.99201543, -2.40131752e-3, 4.61793841e-6, -3.88113333e-9, 1.3641147e-12, 3.61508056e3, -1.03925458e-1,
    ],
    high: [3.09288767, 5.48429716e-4, 1.26505228e-7, -8.79461556e-11, 1.17412376e-14, 3.858657e3, 4.4766961],
  },
  H: {
    name: 'H',
    atoms: elements({ H: 1 }),
    breakTemperature: 1000,
    low: [
      2.5, 7.05332819e-13, -1.99591964e-15, 2.30081632e-18, -9.27732332e-22, 2.54736599e4, -4.46682853e-1,
    ],
    high: [
      2.50000001, -2.30842973e-11, 1.61561948e-14, -4.73515235e-18, 4.98197357e-22, 2.54736599e4,
      -4.46682914e-1,
    ],
  },
  O: {
    name: 'O',
    atoms: elements({ O: 1 }),
    breakTemperature: 1000,
    low: [3.1682671, -3.27931884e-3, 6.64306396e-6, -6.12806624e-9, 2.11265971e-12, 2.91222592e4, 2.05193346],
    high: [
      2.56942078, -8.59741137e-5, 4.19484589e-8, -1.00177799e-11, 1.22833691e-15, 2.92175791e4, 4.78433864,
    ],
  },
  NO: {
    name: 'NO',
    atoms: elements({ N: 1, O: 1 }),
    breakTemperature: 1000,
    low: [4.2184763, -4.638976e-3, 1.1041022e-5, -9.3361354e-9, 2.803577e-12, 9.844623e3, 2.2808464],
    high: [3.2606056, 1.1911043e-3, -4.2917048e-7, 6.9457669e-11, -4.0336099e-15, 9.9209746e3, 6.3693027],
  },
  Ar: { name: 'Ar', atoms: elements({ Ar: 1 }), breakTemperature: 1000, low: ARGON, high: ARGON },
  CO2: {
    name: 'CO2',
    atoms: elements({ C: 1, O: 2 }),
    breakTemperature: 1000,
    low: [
      2.35677352, 8.98459677e-3, -7.12356269e-6, 2.45919022e-9, -1.43699548e-13, -4.83719697e4, 9.90105222,
    ],
    high: [
      3.85746029, 4.41437026e-3, -2.21481404e-6, 5.23490188e-10, -4.72084164e-14, -4.8759166e4, 2.27163806,
    ],
  },
  H2O: {
    name: 'H2O',
    atoms: elements({ H: 2, O: 1 }),
    breakTemperature: 1000,
    low: [
      4.19864056, -2.0364341e-3, 6.52040211e-6, -5.48797062e-9, 1.77197817e-12, -3.02937267e4, -8.49032208e-1,
    ],
    high: [
      3.03399249, 2.17691804e-3, -1.64072518e-7, -9.7041987e-11, 1.68200992e-14, -3.00042971e4, 4.9667701,
    ],
  },
  CO: {
    name: 'CO',
    atoms: elements({ C: 1, O: 1 }),
    breakTemperature: 1000,
    low: [
      3.57953347, -6.1035368e-4, 1.01681433e-6, 9.07005884e-10, -9.04424499e-13, -1.4344086e4, 3.50840928,
    ],
    high: [
      2.71518561, 2.06252743e-3, -9.98825771e-7, 2.30053008e-10, -2.03647716e-14, -1.41518724e4, 7.81868772,
    ],
  },
  H2: {
    name: 'H2',
    atoms: elements({ H: 2 }),
    breakTemperature: 1000,
    low: [
      2.34433112, 7.98052075e-3, -1.9478151e-5, 2.01572094e-8, -7.37611761e-12, -9.17935173e2, 6.83010238e-1,
    ],
    high: [
      3.3372792, -4.94024731e-5, 4.99456778e-7, -1.79566394e-10, 2.00255376e-14, -9.50158922e2, -3.20502331,
    ],
  },
  isooctane: {
    name: 'isooctane vapour',
    atoms: elements({ C: 8, H: 18 }),
    breakTemperature: 1396,
    low: [
      -4.20868893, 1.11440581e-1, -7.91346582e-5, 2.92406242e-8, -4.43743191e-12, -2.99446875e4, 4.49521701e1,
    ],
    high: [
      2.7137359e1, 3.79004889e-2, -1.29437358e-5, 2.00760372e-9, -1.1640058e-13, -4.07958177e4, -1.23277495e2,
    ],
  },
  methanol: {
    name: 'methanol vapour',
    atoms: elements({ C: 1, H: 4, O: 1 }),
    breakTemperature: 1000,
    low: [
      5.71539582, -1.52309129e-2, 6.52441155e-5, -7.10806889e-8, 2.61352698e-11, -2.56427656e4, -1.50409823,
    ],
    high: [
      1.78970791, 1.40938292e-2, -6.36500835e-6, 1.38171085e-9, -1.1706022e-13, -2.53748747e4, 1.45023623e1,
    ],
  },
  ethanol: {
    name: 'ethanol vapour',
    atoms: elements({ C: 2, H: 6, O: 1 }),
    breakTemperature: 1000,
    low: [4.8586957, -3.7401726e-3, 6.9555378e-5, -8.8654796e-8, 3.5168835e-11, -2.9996132e4, 4.8018545],
    high: [6.5624365, 1.5204222e-2, -5.3896795e-6, 8.6225011e-10, -5.1289787e-14, -3.1525621e4, -9.4730202],
  },
} as const satisfies Record<string, Species>;

/** One pure species as a constituent. */
export function speciesConstituent(species: Species): Constituent {
  const molarMass = molarMassOfAtoms(species.atoms);
  return {
    name: species.name,
    gasConstant: MOLAR_GAS_CONSTANT / molarMass,
    scale: MOLAR_GAS_CONSTANT / molarMass,
    breaks: [species.breakTemperature],
    pieces: [species.low, species.high],
    elements: sumElements([{ weight: 1 / molarMass, of: species.atoms }]),
  };
}
