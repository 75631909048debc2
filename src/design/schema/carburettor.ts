import { group, number } from './builders.ts';
import { butterflyOrSlide, CHOICE } from './shared.ts';

export const carburettor = group('Carburettor', 'One throttle for the whole engine.', {
  kind: butterflyOrSlide,
  bore_mm: number(32, {
    label: 'Bore at the throttle',
    min: 3,
    max: 150,
    plausible: [15, 50],
    source: CHOICE,
  }),
  shaftRatio: number(0.15, {
    detail: true,
    label: 'Shaft diameter over bore',
    help: 'Of a butterfly; a slide has none.',
    min: 0,
    max: 0.6,
    plausible: [0.1, 0.25],
    source: 'typical',
  }),
  closed_deg: number(5, {
    detail: true,
    label: 'Plate angle when closed',
    help: 'Of a butterfly, from square across the bore.',
    min: 0,
    max: 45,
    plausible: [2, 15],
    source: 'typical',
  }),
  leakShare: number(0.005, {
    detail: true,
    label: 'Share of the bore open when closed',
    min: 0,
    max: 0.2,
    plausible: [0.001, 0.03],
    source: 'typical; the idle stop',
  }),
  discharge: number(0.85, {
    detail: true,
    label: 'Discharge coefficient of the throttle',
    min: 0.2,
    max: 1,
    plausible: [0.7, 0.92],
    source: 'typical; Heywood, Internal Combustion Engine Fundamentals, 1988, section 7.6',
  }),
});
