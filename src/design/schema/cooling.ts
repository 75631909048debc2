import { group, number } from './builders.ts';

const ANNAND = 'Annand, Proc. Instn Mech. Engrs 177, 1963';

export const cooling = group('Cooling', 'Heat from the gas to the walls of the cylinder.', {
  annandA: number(0.26, {
    detail: true,
    label: 'Annand’s multiplier a',
    help: 'Published correlations differ threefold at one state: calibrate it where a measurement exists.',
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
  crown_C: number(250, {
    label: 'Crown temperature',
    min: -40,
    max: 600,
    plausible: [180, 330],
    source: 'typical',
  }),
  head_C: number(170, {
    label: 'Head temperature',
    min: -40,
    max: 500,
    plausible: [110, 230],
    source: 'typical',
  }),
  liner_C: number(140, {
    label: 'Liner temperature',
    min: -40,
    max: 400,
    plausible: [90, 190],
    source: 'typical',
  }),
});
