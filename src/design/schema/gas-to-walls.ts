import { choice, number } from './builders.ts';

const ANNAND = 'Annand, Proc. Instn Mech. Engrs 177, 1963';
const WOSCHNI = 'Woschni, SAE 670931, 1967';

/** Laws of the heat from the gas to the walls of the cylinder, and the areas of these. */
export const gasToWalls = {
  law: choice(['Annand', 'Woschni', 'Hohenberg'], 'Annand', {
    detail: true,
    label: 'Law of heat from gas to walls',
    help: 'Published laws differ threefold at one state: take the one whose multiplier you have calibrated.',
    source:
      'Annand 1963 with the two-stroke multiplier is usual for small two-strokes; Woschni, SAE 670931, 1967 and Hohenberg, SAE 790825, 1979 come from diesels',
  }),
  annandA: number(0.26, {
    detail: true,
    label: 'Annand’s multiplier a',
    help: '0.26 is usual for two-strokes, 0.49 for four-strokes. Calibrate it where a measurement exists.',
    min: 0,
    max: 2,
    plausible: [0.2, 0.8],
    source: `${ANNAND}; 0.26 typical of two-strokes, Blair 1996`,
  }),
  annandB: number(0.7, {
    detail: true,
    label: 'Annand’s exponent b',
    min: 0.4,
    max: 1,
    plausible: [0.65, 0.8],
    source: ANNAND,
  }),
  annandC_W_per_m2K4: number(4.3e-9, {
    detail: true,
    label: 'Annand’s radiation constant c',
    min: 0,
    max: 1e-7,
    plausible: [0, 1e-8],
    source: `${ANNAND}: 0.075 of the Stefan–Boltzmann constant`,
  }),
  filmFactor: number(1, {
    detail: true,
    label: 'Multiplier on Woschni’s or Hohenberg’s law',
    help: 'Unused with Annand’s law, whose multiplier is a.',
    min: 0,
    max: 10,
    plausible: [0.5, 2.5],
    source: '1 as published; calibrate it where a measurement exists',
  }),
  woschniScavenging: number(6.18, {
    detail: true,
    label: 'Woschni’s C1 while gas is exchanged',
    min: 0,
    max: 50,
    plausible: [4, 9],
    source: WOSCHNI,
  }),
  woschniClosed: number(2.28, {
    detail: true,
    label: 'Woschni’s C1 while the cylinder is shut',
    min: 0,
    max: 50,
    plausible: [1.5, 4],
    source: WOSCHNI,
  }),
  woschniBurning_m_per_sK: number(3.24e-3, {
    detail: true,
    label: 'Woschni’s C2 from the spark on',
    min: 0,
    max: 0.1,
    plausible: [1e-3, 7e-3],
    source: WOSCHNI,
  }),
  motoredExponent: number(1.32, {
    detail: true,
    label: 'Exponent of the motored pressure in Woschni’s law',
    min: 1,
    max: 1.67,
    plausible: [1.25, 1.38],
    source: 'typical polytropic exponent of a petrol charge',
  }),
  crownAreaRatio: number(1.05, {
    detail: true,
    label: 'Crown area over bore area',
    min: 0.8,
    max: 3,
    plausible: [1, 1.3],
    source: 'typical',
  }),
  headAreaRatio: number(1.2, {
    detail: true,
    label: 'Head area over bore area',
    min: 0.8,
    max: 4,
    plausible: [1, 1.6],
    source: 'typical',
  }),
};
