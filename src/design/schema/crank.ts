import * as v from 'valibot';
import { choice, filled, group, integer, listOf, number, numberOrNone, numbersOrNone } from './builders.ts';
import { correction } from './correction.ts';
import { crankcase } from './crankcase.ts';
import { rodShapes } from './fit.ts';
import { load, masses } from './masses.ts';
import { CHOICE } from './shared.ts';

const row = group('Row', 'One row of cylinders round one crank pin.', {
  cylinders: integer(7, {
    label: 'Cylinders in the row',
    min: 1,
    max: 14,
    plausible: [1, 9],
    source: CHOICE,
  }),
  throw_deg: number(0, {
    label: 'Throw angle',
    help: 'Angle of this row’s crank pin, positive with the rotation.',
    min: -360,
    max: 360,
    plausible: [0, 360],
    source: CHOICE,
  }),
  stagger_deg: number(0, {
    label: 'Stagger',
    help: 'Angle by which this row’s housing is turned, positive with the rotation.',
    min: -360,
    max: 360,
    plausible: [0, 180],
    source: CHOICE,
  }),
  master: integer(1, {
    label: 'Cylinder with the master rod',
    min: 1,
    max: 14,
    plausible: [1, 14],
    source: 'usual practice: the first',
  }),
  axes_deg: numbersOrNone(
    {
      label: 'Axis angles',
      help: 'Angle of each cylinder’s axis, positive with the rotation, one number for each cylinder.',
      min: -360,
      max: 360,
      plausible: [0, 360],
      otherwise: 'evenly spaced from 0',
      source: CHOICE,
    },
    14,
  ),
  collector: integer(1, {
    label: 'Exhaust collector of the row',
    help: 'Number of the collector, counted from 1, into which the row exhausts.',
    min: 1,
    max: 28,
    plausible: [1, 4],
    source: CHOICE,
  }),
});

const FRICTION_SOURCE =
  'typical for rolling bearings; form of Chen & Flynn, SAE 650733, 1965; size after Blair, Design and Simulation of Two-Stroke Engines, 1996';

const friction = group(
  'Friction',
  'Friction mean effective pressure: a + b p_max + c (mean piston speed) + d (speed)².',
  {
    law: choice(['Chen and Flynn', 'Blair'], 'Chen and Flynn', {
      label: 'Law of friction',
      help: 'Chen and Flynn: the four terms below. Blair: 105 Pa for each metre of stroke and turn a minute, of two-strokes on rolling bearings; the four terms are then unused.',
      source:
        'Chen & Flynn, SAE 650733, 1965; Blair, Design and Simulation of Two-Stroke Engines, 1996, sec. 5.4',
    }),
    bearingShare: number(0.25, {
      label: 'Share of bearings in friction',
      help: 'Of what the law gives; rings and pistons take the rest. It divides, it does not add.',
      min: 0,
      max: 0.5,
      plausible: [0.15, 0.35],
      source: 'typical of rolling bearings, wide',
    }),
    windageShare: number(0.1, {
      label: 'Share of windage in friction',
      help: 'Crank and rods in the gas of the crankcase. It divides, it does not add.',
      min: 0,
      max: 0.5,
      plausible: [0.02, 0.2],
      source: 'typical, wide',
    }),
    oilPump_N_m: number(0, {
      label: 'Torque of the oil pump',
      help: 'At the crank. A dry crankcase needs oil of its own for mains, master and knuckle pins.',
      min: 0,
      max: 50,
      plausible: [0, 0.5],
      source: 'the builder’s choice; a metering pump needs some 0.05 N m',
    }),
    starter_N_m: number(0, {
      label: 'Torque of starter or generator',
      help: 'At the crank, while running.',
      min: 0,
      max: 100,
      plausible: [0, 2],
      source: 'the builder’s choice; 100 W at 6000 rpm are 0.16 N m',
    }),
    constant_bar: number(0.1, {
      label: 'Friction, constant part',
      min: 0,
      max: 3,
      plausible: [0.05, 0.3],
      source: FRICTION_SOURCE,
    }),
    peakPressureFactor: number(0.004, {
      label: 'Friction, share of the peak pressure',
      min: 0,
      max: 0.05,
      plausible: [0.002, 0.008],
      source: FRICTION_SOURCE,
    }),
    pistonSpeedFactor_bar_s_per_m: number(0.02, {
      label: 'Friction, for each m/s of mean piston speed',
      min: 0,
      max: 0.5,
      plausible: [0.01, 0.06],
      source: FRICTION_SOURCE,
    }),
    speedSquaredFactor_Pa_per_rpm2: number(0, {
      label: 'Friction, with the square of the speed',
      min: 0,
      max: 0.01,
      plausible: [0, 0.001],
      source: FRICTION_SOURCE,
    }),
    outputGearEfficiency: number(1, {
      label: 'Efficiency of the output gears',
      help: 'From crank to propeller or load; 1 for a direct drive.',
      min: 0.5,
      max: 1,
      plausible: [0.9, 1],
      source: 'typical, 0.985 to 0.995 for each good ground mesh, 0.96 to 0.98 for a toothed belt',
    }),
  },
  { detail: true },
);

export const crank = group(
  'Crank and rods',
  'One crank; a row is a master rod with its articulated rods on one pin.',
  {
    stroke_mm: number(41, {
      label: 'Stroke of the master piston',
      help: 'Twice the crank radius. Pistons on articulated rods have their own strokes, a little longer.',
      min: 10,
      max: 150,
      plausible: [25, 80],
      source: CHOICE,
    }),
    masterRod_mm: number(85, {
      label: 'Length of the master rod',
      help: 'Between centres.',
      min: 15,
      max: 600,
      plausible: [50, 200],
      source: 'typical, 3.6 to 4.6 crank radii in radials',
    }),
    knuckleRadius_mm: number(0, {
      label: 'Knuckle radius',
      help: 'From crank pin to knuckle pins, centre to centre. 0: plain rods side by side on one pin.',
      min: 0,
      max: 150,
      plausible: [0, 60],
      source: 'typical, 0.9 to 1.15 crank radii; small radials need more for the pins to fit',
    }),
    rows: v.optional(listOf(row, 'Rows', 'Rows of cylinders, A first.', { min: 1, max: 4 }), [{}]),
    corrections: v.optional(
      listOf(correction, 'Corrections', 'What differs in single cylinders.', {
        min: 0,
        max: 56,
        keyedBy: 'cylinder',
      }),
      [],
    ),
    rowSpacing_mm: numberOrNone({
      detail: true,
      label: 'Distance of the rows along the crank',
      help: 'From cylinder axis to cylinder axis of two neighbouring rows.',
      min: 1,
      max: 500,
      plausible: [30, 150],
      otherwise: '1.5 bores',
      source: CHOICE,
    }),
    crankcase: v.optional(v.nullable(crankcase), null),
    friction: filled(friction),
    rodShapes: filled(rodShapes),
    masses: filled(masses),
    load: filled(load),
  },
);
