import * as v from 'valibot';
import { ROTOR_MATERIALS } from '../../sim/blower/rotors/materials.ts';
import type { RotorMaterial } from '../../sim/blower/rotors/materials.ts';
import { ROTOR_PROFILES } from '../../sim/blower/rotors/profile.ts';
import { choice, group, integer, listOf, number, numberOrNone } from './builders.ts';

const CHOICE = 'the builder’s choice';

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

const materialNames = Object.keys(ROTOR_MATERIALS) as [RotorMaterial, ...RotorMaterial[]];

const gap = (what: string, where: string) =>
  number(0.06, {
    label: `Gap at the ${what}`,
    help: `${where}, warm and running.`,
    min: 0.005,
    max: 1,
    plausible: [0.03, 0.2],
    source: 'typical, 0.0008 to 0.0015 of the rotor diameter cold',
  });

export const blower = group('Blower and drive', 'Roots blowers, alike, side by side, geared to the crank.', {
  count: integer(1, { label: 'Number of blowers', min: 1, max: 8, plausible: [1, 4], source: CHOICE }),
  tipDiameter_mm: number(56, {
    label: 'Rotor tip diameter',
    min: 15,
    max: 400,
    plausible: [40, 150],
    source: CHOICE,
  }),
  rotorLength_mm: number(50, {
    label: 'Rotor length',
    min: 5,
    max: 800,
    plausible: [30, 250],
    source: CHOICE,
  }),
  lobes: integer(3, { label: 'Lobes of a rotor', min: 2, max: 4, plausible: [2, 4], source: CHOICE }),
  helix_deg: number(0, {
    label: 'Twist of a rotor over its length',
    help: '0 for straight lobes. Twist evens out the delivery.',
    min: 0,
    max: 180,
    plausible: [0, 160],
    source: CHOICE,
  }),
  profile: choice(ROTOR_PROFILES, 'cycloidal', {
    detail: true,
    label: 'Profile of the rotors',
    help: 'Circular arcs displace more for their diameter, cycloids ripple less.',
    source: CHOICE,
  }),
  centreDistance_mm: numberOrNone({
    detail: true,
    label: 'Distance of the rotor axes',
    help: 'Closer axes make a rotor of the same diameter displace more, as far as the profile can mesh.',
    min: 8,
    max: 400,
    plausible: [25, 120],
    otherwise:
      'cycloids: where lobe and hollow fill the pitch circle; arcs: tip over pitch radius of 1.6, 1.43, 1.33 for 2, 3, 4 lobes',
    source: 'geometry; the arcs’ values leave a margin to where the hollow would be cut away',
  }),
  rotorBore_mm: number(0, {
    detail: true,
    label: 'Bore of a rotor',
    help: 'Hole for the shaft; 0 for none.',
    min: 0,
    max: 200,
    plausible: [0, 40],
    source: CHOICE,
  }),
  rotorMaterial: choice(materialNames, 'aluminium', {
    detail: true,
    label: 'Material of the rotors',
    source: CHOICE,
  }),
  casingMaterial: choice(materialNames, 'aluminium', {
    detail: true,
    label: 'Material of the casing',
    source: CHOICE,
  }),
  displacement_cc: numberOrNone({
    label: 'Displacement of one blower for a turn of its rotors',
    help: 'Type it where it is known; real profiles displace up to an eighth more than the cycloid.',
    min: 1,
    max: 20000,
    plausible: [30, 2000],
    otherwise: 'that of rotors of this diameter, length, profile and number of lobes',
    source: 'area of the rotor’s section',
  }),
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
    source: 'the builder’s choice',
  }),
  ripple: numberOrNone({
    detail: true,
    label: 'Ripple of straight rotors',
    help: 'Half the swing of the displaced flow over its mean, before the twist evens it.',
    min: 0,
    max: 1,
    plausible: [0.05, 0.25],
    otherwise: 'that of the profile; full cycloids have 1/(4 × lobes + 1)',
    source: 'displaced area of the rotors',
  }),
  phase_deg: number(0, {
    detail: true,
    label: 'Rotor phase',
    help: 'Where the first blower’s rotors stand when the crank is at 0°; at 0° their lobes touch at the pitch point.',
    min: -360,
    max: 360,
    plausible: [0, 90],
    source: CHOICE,
  }),
  phaseStep_deg: number(0, {
    detail: true,
    label: 'Rotor phase from one blower to the next',
    help: 'Each further blower’s rotors stand this much further on. Half a pulse, 90° over the lobes, evens two blowers.',
    min: -360,
    max: 360,
    plausible: [0, 90],
    source: CHOICE,
  }),
  tipGap_mm: gap('tips', 'Between rotor tip and casing'),
  meshGap_mm: gap('mesh', 'Between the rotors'),
  endGap_mm: gap('ends', 'Between rotor ends and end plates'),
  clearanceArea_mm2: numberOrNone({
    detail: true,
    label: 'Clearance area of one blower',
    help: 'Type it where slip has been measured.',
    min: 0,
    max: 5000,
    plausible: [5, 200],
    otherwise: 'gaps × their lengths: two tips, one mesh, four half end gaps',
    source: 'geometry',
  }),
  clearanceDischarge: number(0.8, {
    detail: true,
    label: 'Discharge coefficient of the clearances',
    min: 0.2,
    max: 1,
    plausible: [0.6, 0.9],
    source: 'typical',
  }),
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
    max: 200,
    plausible: [30, 100],
    otherwise: '40 m/s for straight rotors, 80 m/s for twisted ones',
    source: 'typical, 30 to 45 m/s for old straight two-lobe rotors, 60 to 100 m/s for small twisted ones',
  }),
  maxSpeed_rpm: number(20000, {
    label: 'Rotor speed not to be passed',
    min: 500,
    max: 100000,
    plausible: [8000, 25000],
    source: 'typical; the maker of the bearings decides',
  }),
});
