import { group, number } from './builders.ts';
import { CHOICE } from './shared.ts';

const DOUAUD =
  'Douaud & Eyzat, SAE 780080, 1978; as printed in Heywood, Internal Combustion Engine Fundamentals, 1988';

export const knock = group(
  'Knock',
  'When end gas lights by itself: delay = factor · (octane/100)^a · (p/1 atm)^−n · exp(T_a/T).',
  {
    researchWeight: number(0.5, {
      label: 'Weight of the research octane number',
      help: 'Between motor (0) and research octane number (1); hot, slow engines lean to the motor number.',
      min: -1,
      max: 2,
      plausible: [0, 1],
      source: 'convention: the mean of both',
    }),
    octaneOffset: number(0, {
      label: 'Octane numbers added',
      help: 'For what the law does not know: hot spots and carbon take some away, squish adds some.',
      min: -30,
      max: 30,
      plausible: [-8, 5],
      source: CHOICE,
    }),
    delayFactor_ms: number(17.68, {
      label: 'Factor of the delay',
      min: 0.5,
      max: 500,
      plausible: [10, 30],
      source: DOUAUD,
    }),
    octaneExponent: number(3.402, {
      label: 'Exponent of the octane number',
      min: 0.5,
      max: 10,
      plausible: [3, 4],
      source: DOUAUD,
    }),
    pressureExponent: number(1.7, {
      label: 'Exponent of the pressure',
      min: 0.2,
      max: 4,
      plausible: [1.3, 2],
      source: DOUAUD,
    }),
    activation_K: number(3800, {
      label: 'Activation temperature',
      min: 500,
      max: 20000,
      plausible: [3500, 4200],
      source: DOUAUD,
    }),
    lastBurnedShare: number(0.85, {
      label: 'Share burned from which end gas no longer counts',
      min: 0.3,
      max: 0.999,
      plausible: [0.75, 0.95],
      source: 'typical: what is left later is too little and too near the walls',
    }),
  },
  { detail: true },
);
