import { FUELS } from '../../sim/gas/fuels.ts';
import { choice, group, number } from './builders.ts';
import { CHOICE } from './shared.ts';

/** Names of the fuels that a design may be given. */
export const fuelNames = Object.keys(FUELS) as [string, ...string[]];

export const blend = group(
  'Blend',
  'A second fuel in the first. Alcohol in petrol takes up water and may part from it, and swells or eats what was made for petrol.',
  {
    kind: choice(fuelNames, 'ethanol', { label: 'Second fuel', source: CHOICE }),
    share: number(0.1, {
      label: 'Share of the second fuel',
      help: 'By volume of the two before they are mixed, oil apart: 10 % ethanol in petrol is E10, 85 % E85.',
      min: 0,
      max: 1,
      plausible: [0.02, 0.9],
      source: 'EN 228 allows petrol up to 10 % ethanol by volume',
    }),
  },
);
