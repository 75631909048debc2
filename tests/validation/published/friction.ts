import { fmep } from '../../../src/sim/friction/fmep.ts';
import { frictionParts, rollingFmep } from '../../../src/sim/friction/friction-parts.ts';
import { bar, cc, kPa, mm, rpm } from '../../../src/sim/units.ts';
import { presetEngine } from '../../helpers/engines.ts';
import type { Comparison, Subject } from './comparison.ts';

const rolling = {
  constant: 0.12 * bar,
  peakPressureFactor: 0.004,
  pistonSpeedFactor: 0.02 * bar,
  speedSquaredFactor: 0,
};

const lines: readonly Comparison[] = [
  {
    quantity:
      'friction of two-strokes on rolling bearings: stroke 50 mm at 6000 and 8000 rpm, 54 mm at 10 000 rpm',
    origin: 'closed form',
    source: 'Blair, Design and Simulation of Two-Stroke Engines, 1996, sec. 5.4: 105 S N, by hand',
    unit: 'bar',
    values: (
      [
        [0.315, 50, 6000],
        [0.42, 50, 8000],
        [0.567, 54, 10_000],
      ] as const
    ).map(([printed, stroke, speed]) => [printed, rollingFmep(stroke * mm, speed * rpm) / bar]),
    within: { amount: 1e-9 },
    because: 'round-off',
  },
  {
    quantity:
      'four terms with constants of rolling bearings: 0.12 bar, 0.004 of 40 bar, 0.02 bar s/m at 10 m/s',
    origin: 'closed form',
    source: 'Chen & Flynn, SAE 650733, 1965 (form), by hand: 0.12 + 0.16 + 0.20',
    unit: 'bar',
    values: [[0.48, fmep(rolling, 40 * bar, 10, 6000 * rpm) / bar]],
    within: { amount: 1e-9 },
    because: 'round-off',
  },
  {
    quantity: 'oil pump of 0.1 N m on 100 cc',
    origin: 'closed form',
    source: '2π T / V_s, by hand',
    unit: 'kPa',
    values: [
      [
        6.283185,
        frictionParts(
          { ...presetEngine('lovage-7').friction, oilPumpTorque: 0.1 },
          40 * bar,
          50 * mm,
          6000 * rpm,
          100 * cc,
        ).oilPump / kPa,
      ],
    ],
    within: { amount: 5e-7 },
    because: 'half of the last digit',
  },
];

/** How far the presets' four terms stand above Blair's line, 30 to 50 bar and 6 to 14 m/s [bar]. */
const above = [
  [6, 30],
  [8, 40],
  [10, 40],
  [12, 45],
  [14, 50],
].map(
  ([speed, peak]) =>
    (fmep(presetEngine('lovage-7').friction, peak! * bar, speed!, 6000 * rpm) - 3150 * speed!) / bar,
);

export const friction = (): Subject => ({
  title: 'Friction',
  note: `The two forms are two fits of the same thing and do not agree: with their defaults the four terms stand ${Math.min(...above).toFixed(2)} to ${Math.max(...above).toFixed(2)} bar above Blair’s line at 6 to 14 m/s and peaks of 30 to 50 bar, near the share that the peak pressure has in them. Which is right for an engine, only its test bed knows: both are there to choose.`,
  comparisons: lines,
  unproven: [
    'Friction of a radial: knuckle pins, one master bearing for all cylinders and the side thrust on the master piston are in neither form but by its constants.',
    'Which share bearings, rings and windage have: stated shares, which divide a sum and move nothing.',
  ],
});
