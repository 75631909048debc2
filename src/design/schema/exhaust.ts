import * as v from 'valibot';
import { group, listOf, number } from './builders.ts';
import { discharge, wall } from './shared.ts';

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
