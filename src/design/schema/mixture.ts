import { choice, filled, group, number, numbers } from './builders.ts';
import { CHOICE } from './shared.ts';

/** Air/fuel ratios that a design may state, over the stoichiometric one. */
export const LAMBDAS = { min: 0.5, max: 2, plausible: [0.75, 1.1] } as const;

/** What sets λ. */
const mixture = choice(['constant', 'over speed', 'main jet'], 'constant', {
  label: 'Mixture is set by',
  help: 'One λ at every speed; a table of λ over speed; or the main jet of a carburettor, which gives what the air draws from it.',
  source: CHOICE,
});

const lambdaTable = group(
  'Mixture over speed',
  'λ at stated speeds: straight lines between, the ends held beyond.',
  {
    speeds_rpm: numbers(
      [1500, 4500, 7500],
      {
        label: 'Speeds of the table',
        help: 'Rising, two or more.',
        min: 0,
        max: 20_000,
        plausible: [150, 12_000],
        source: CHOICE,
      },
      64,
    ),
    lambdas: numbers(
      [0.82, 0.9, 0.86],
      { label: 'λ at these speeds', help: 'One for each speed.', ...LAMBDAS, source: CHOICE },
      64,
    ),
  },
  { only: { key: 'mixture', is: ['over speed'] } },
);

const jet = group(
  'Main jet',
  'Sets λ by the air that draws from it in the venturi, or in the bore at the throttle where there is none. A plain jet: no air bleed, no needle, no slow-running jet.',
  {
    bore_mm: number(1.1, {
      label: 'Bore of the main jet',
      min: 0.1,
      max: 10,
      plausible: [0.5, 3],
      source: CHOICE,
    }),
    discharge: number(0.75, {
      detail: true,
      label: 'Discharge coefficient of the jet',
      help: 'Falls where the pressure behind the jet is small: viscosity.',
      min: 0.2,
      max: 1,
      plausible: [0.6, 0.85],
      source:
        'typical, 0.7 to 0.8; Taylor, The Internal-Combustion Engine in Theory and Practice, vol. 2, 1985, chapter 5',
    }),
    lift_mm: number(5, {
      detail: true,
      label: 'Nozzle above the fuel in the bowl',
      help: 'No fuel comes until the air’s depression lifts it so far; it makes the mixture lean at little air.',
      min: 0,
      max: 60,
      plausible: [2, 12],
      source: 'typical',
    }),
  },
  { only: { key: 'mixture', is: ['main jet'] } },
);

/** Fields and groups of a fuel that set its mixture. */
export const mixtureFields = { mixture, lambdaTable: filled(lambdaTable), jet: filled(jet) };
