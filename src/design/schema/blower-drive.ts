import * as v from 'valibot';
import { group, integer, listOf, number, numberOrNone } from './builders.ts';
import { CHOICE } from './shared.ts';

const stage = group('Gear stage', 'One mesh, from the crank towards the rotors.', {
  driver: integer(36, {
    label: 'Teeth of the driving wheel',
    min: 6,
    max: 400,
    plausible: [12, 120],
    source: CHOICE,
  }),
  driven: integer(18, {
    label: 'Teeth of the driven wheel',
    min: 6,
    max: 400,
    plausible: [12, 120],
    source: CHOICE,
  }),
  efficiency: number(0.985, {
    detail: true,
    label: 'Efficiency of the stage',
    min: 0.5,
    max: 1,
    plausible: [0.95, 0.995],
    source: 'typical, 0.985 to 0.995 for a good ground mesh, 0.96 to 0.98 for a toothed belt',
  }),
});

/** From the crank to the rotors of one stage. */
export const geared = {
  gears: v.optional(
    listOf(
      stage,
      'Gear stages',
      'From the crank to the rotors; the ratio is the product of driving over driven teeth.',
      {
        min: 0,
        max: 4,
      },
    ),
    [{}],
  ),
  gearPitch_mm: numberOrNone({
    detail: true,
    label: 'Pitch diameter of the first driving wheel',
    help: 'On the crank. For the force on its teeth; each blower has its own mesh.',
    min: 5,
    max: 500,
    plausible: [20, 150],
    otherwise: 'its teeth × bore/32',
    source: 'the builder’s choice; teeth × module',
  }),
  shaft_mm: numberOrNone({
    detail: true,
    label: 'Diameter of a blower’s drive shaft',
    help: 'Turns at rotor speed; solid, where it is thinnest.',
    min: 2,
    max: 100,
    plausible: [6, 30],
    otherwise: '0.3 bores',
    source: CHOICE,
  }),
};

/** What the drive of one stage loses, and how fast it may turn. */
export const driven = {
  mechanicalEfficiency: number(0.9, {
    detail: true,
    label: 'Mechanical efficiency of the blower',
    help: 'Of bearings and timing gears, on the work done on the gas.',
    min: 0.3,
    max: 1,
    plausible: [0.85, 0.95],
    source: 'typical',
  }),
  drag_N_m: number(0.02, {
    detail: true,
    label: 'Drag torque of one blower at its shaft',
    min: 0,
    max: 20,
    plausible: [0, 0.5],
    source: 'typical',
  }),
  dragWithSpeed_N_m: number(0, {
    detail: true,
    label: 'Drag that grows with speed, at the speed limit',
    help: 'Of one blower at its shaft: oil in bearings and timing gears.',
    min: 0,
    max: 20,
    plausible: [0, 0.5],
    source: 'typical',
  }),
  dragWithSquare_N_m: number(0, {
    detail: true,
    label: 'Drag that grows with the square of speed, at the speed limit',
    help: 'Of one blower at its shaft: churned oil and windage.',
    min: 0,
    max: 20,
    plausible: [0, 0.5],
    source: 'typical',
  }),
  casingHeatShare: number(0.1, {
    detail: true,
    label: 'Share of the work on the gas that the casing gives away',
    min: 0,
    max: 0.9,
    plausible: [0, 0.3],
    source: 'typical',
  }),
  maxTipSpeed_m_per_s: numberOrNone({
    detail: true,
    label: 'Tip speed not to be passed',
    min: 5,
    max: 700,
    plausible: [30, 450],
    otherwise: '40 m/s for straight rotors, 80 m/s for twisted ones, 400 m/s for impellers',
    source:
      'typical, 30 to 45 m/s for old straight two-lobe rotors, 60 to 100 m/s for small twisted ones, 350 to 450 m/s for cast aluminium impellers',
  }),
  maxSpeed_rpm: numberOrNone({
    label: 'Speed of rotor or impeller not to be passed',
    min: 500,
    max: 300000,
    plausible: [8000, 120000],
    otherwise: '20 000 rpm for rotors, 120 000 rpm for impellers',
    source: 'typical; the maker of the bearings decides',
  }),
};
