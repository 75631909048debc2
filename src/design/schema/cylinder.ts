import { choice, filled, group, number } from './builders.ts';
import { barrel, piston } from './fit.ts';
import { CHOICE } from './shared.ts';

export const cylinder = group('Cylinder', 'The small production cylinder of which the engine is made.', {
  bore_mm: number(40, {
    label: 'Bore',
    min: 15,
    max: 150,
    plausible: [30, 80],
    source: CHOICE,
  }),
  compressionRatio: number(7, {
    label: 'Compression ratio',
    help: 'Of the master cylinder; those on articulated rods differ unless corrected.',
    min: 2,
    max: 25,
    plausible: [5.5, 13],
    source: 'typical, 6 to 7.5 from exhaust closing on petrol',
  }),
  compressionRatioFrom: choice(['full stroke', 'exhaust closing'], 'exhaust closing', {
    label: 'Compression ratio counted from',
    help: 'From the full stroke (geometric), or from the volume trapped when the exhaust closes.',
    source: 'both are in use: state which one is meant',
  }),
  deckClearance_mm: number(0.8, {
    label: 'Deck clearance',
    help: 'Crown edge below the deck at the master cylinder’s top dead centre.',
    min: 0,
    max: 10,
    plausible: [0.5, 2],
    source: 'typical, 0.6 to 1.2 mm of squish height',
  }),
  piston: filled(piston),
  barrel: filled(barrel),
});
