import { group, number } from './builders.ts';

export const rearRows = group(
  'Rows in the wake',
  'Row A meets the free air, each next row what is left.',
  {
    speedShare: number(0.7, {
      label: 'Share of the air speed left behind a row',
      min: 0.05,
      max: 1.5,
      plausible: [0.5, 1],
      source: 'estimate: 0.5 for cylinders right behind each other, 1 for staggered ones with baffles',
    }),
    warming: number(1, {
      label: 'Share of a row’s warmed air that meets the next',
      help: 'Of the heat of a cylinder, in the air that its own front, fins included, stands in the way of.',
      min: 0,
      max: 5,
      plausible: [0, 2],
      source: 'estimate',
    }),
  },
  { detail: true },
);
