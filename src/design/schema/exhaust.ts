import * as v from 'valibot';
import { group, listOf, number, numberOrNone } from './builders.ts';
import { CHOICE, discharge, wall } from './shared.ts';

const collector = group('Collector', 'Into which exhaust windows open, with its outlet to the air.', {
  volume_cc: number(1500, {
    label: 'Volume of the collector',
    min: 5,
    max: 100000,
    plausible: [200, 10000],
    source: 'typical',
  }),
  outlet_mm: number(38, {
    label: 'Bore of the outlet',
    help: 'Diameter of a circle of the same area where it has another shape.',
    min: 2,
    max: 400,
    plausible: [15, 100],
    source: 'typical',
  }),
  outletDischarge: discharge('collector outlet', 0.75, 0.65),
  pipeLength_mm: numberOrNone({
    label: 'Length of the tail pipe',
    help: 'Behind the outlet. Its gas then has inertia and friction; waves in it are not reckoned.',
    min: 5,
    max: 10000,
    plausible: [50, 1500],
    otherwise: 'no tail pipe: the outlet opens into the air',
    source: CHOICE,
  }),
  pipeBore_mm: numberOrNone({
    label: 'Bore of the tail pipe',
    min: 2,
    max: 400,
    plausible: [15, 100],
    otherwise: 'that of the outlet',
    source: CHOICE,
  }),
  pipeFriction: number(0.03, {
    detail: true,
    label: 'Friction factor of the tail pipe',
    help: 'Darcy’s: pressure loss over ρ w²/2 and length over bore.',
    min: 0,
    max: 0.2,
    plausible: [0.02, 0.06],
    source: 'typical of sooted steel tubes at Reynolds numbers of 10⁴ to 10⁵; Moody, Trans. ASME 66, 1944',
  }),
  wall: wall('collector', { temperature_C: 350, diameter_mm: 45, enhancement: 2 }),
});

export const exhaust = group('Exhaust', 'What the cylinders blow into.', {
  collectors: v.optional(
    listOf(collector, 'Collectors', 'Exhaust collectors, counted from 1; rows and corrections name theirs.', {
      min: 1,
      max: 28,
    }),
    [{}],
  ),
});
