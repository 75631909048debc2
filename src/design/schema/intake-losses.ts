import { group, number } from './builders.ts';
import { CHOICE } from './shared.ts';

const MILLER = 'Miller, Internal Flow Systems, 1990';

const recovered = (value: number, what: string, source: string) =>
  number(value, {
    detail: true,
    label: `Pressure won back behind the ${what}`,
    help: `Share of the drop to its throat that the diffuser wins back; 0 for a sharp plate.`,
    min: 0,
    max: 0.95,
    plausible: [0, 0.85],
    source,
  });

export const restrictor = group('Restrictor', 'A fixed hole ahead of the carburettor.', {
  bore_mm: number(20, {
    label: 'Bore of the restrictor',
    min: 2,
    max: 150,
    plausible: [10, 40],
    source: CHOICE,
  }),
  discharge: number(0.95, {
    detail: true,
    label: 'Discharge coefficient of the restrictor',
    min: 0.2,
    max: 1,
    plausible: [0.6, 0.98],
    source: 'typical, 0.95 for a venturi, 0.6 for a sharp plate',
  }),
  recovered: recovered(0, 'restrictor', 'none won back, as behind a sharp plate'),
});

export const venturi = group(
  'Venturi',
  'The narrowest place of a carburettor with a fixed choke, ahead of the throttle. Without it air meets the throttle alone.',
  {
    bore_mm: number(26, {
      label: 'Bore of the venturi',
      help: 'Diameter of a circle of the same area where it holds a nozzle.',
      min: 2,
      max: 150,
      plausible: [10, 45],
      source: CHOICE,
    }),
    discharge: number(0.9, {
      detail: true,
      label: 'Discharge coefficient of the venturi',
      min: 0.2,
      max: 1,
      plausible: [0.8, 0.97],
      source:
        'typical, 0.8 to 0.9 with nozzle and bar in the way; Heywood, Internal Combustion Engine Fundamentals, 1988, section 7.3',
    }),
    recovered: recovered(
      0.6,
      'venturi',
      `typical for a short carburettor venturi; 0.8 to 0.9 behind a long cone of 7° to 15°, ISO 5167-4:2003 and ${MILLER}`,
    ),
  },
);

export const arrester = group(
  'Flame arrester',
  'Between throttle and blower; it is to keep a backfire from leaving through the carburettor. Whether one does is a matter of its test, not of this loss.',
  {
    area_cm2: number(30, {
      label: 'Face area of the flame arrester',
      min: 0.5,
      max: 5000,
      plausible: [10, 200],
      source: CHOICE,
    }),
    lossFactor: number(6, {
      label: 'Loss factor of the flame arrester',
      help: 'Pressure loss over the dynamic pressure ρ w²/2 of the speed over its whole face.',
      min: 0.1,
      max: 200,
      plausible: [1, 30],
      source: `typical of gauze and crimped ribbon, and wide: its maker’s flow curve settles it; gauzes: ${MILLER}`,
    }),
  },
);
