import { group, number } from './builders.ts';

export const injection = group(
  'Injection into the cylinders',
  'Used where fuel joins the air in the cylinders.',
  {
    delay_deg: number(0, {
      label: 'From the shutting of the last window to the beginning',
      min: 0,
      max: 60,
      plausible: [0, 30],
      source: 'as early as nothing can be lost',
    }),
    duration_deg: number(30, {
      label: 'Duration of injection',
      min: 1,
      max: 90,
      plausible: [5, 50],
      source: 'typical; 30° at 6000 rpm are 0.8 ms',
    }),
  },
  { detail: true },
);
