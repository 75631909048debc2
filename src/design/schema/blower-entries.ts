import { ROTOR_MATERIALS } from '../../sim/blower/rotors/materials.ts';
import type { RotorMaterial } from '../../sim/blower/rotors/materials.ts';
import { ROTOR_PROFILES } from '../../sim/blower/rotors/profile.ts';
import { KINDS, displacing, of } from './blower-kinds.ts';
import { driven, geared } from './blower-drive.ts';
import { choice, filled, integer, number, numberOrNone } from './builders.ts';
import { impeller } from './impeller.ts';
import { CHOICE } from './shared.ts';
import { slip } from './slip.ts';

const materialNames = Object.keys(ROTOR_MATERIALS) as [RotorMaterial, ...RotorMaterial[]];

const gap = (what: string, where: string) =>
  number(0.06, {
    ...displacing,
    label: `Gap at the ${what}`,
    help: `${where}, warm and running.`,
    min: 0.005,
    max: 1,
    plausible: [0.03, 0.2],
    source: 'typical, 0.0008 to 0.0015 of the rotor diameter cold',
  });

/** What blowers of one stage, their drive and their limits are told by. */
export const blowerEntries = {
  kind: choice(KINDS, 'roots', {
    label: 'Type of blower',
    help: 'Roots: no compression inside. Internal compression: pockets shrink before they open, as in vane and screw blowers. Centrifugal: pressure goes with the square of speed.',
    source: CHOICE,
  }),
  count: integer(1, { label: 'Number of blowers', min: 1, max: 8, plausible: [1, 4], source: CHOICE }),
  tipDiameter_mm: number(56, {
    label: 'Tip diameter of rotor or impeller',
    min: 15,
    max: 400,
    plausible: [40, 150],
    source: CHOICE,
  }),
  rotorLength_mm: number(50, {
    ...displacing,
    label: 'Rotor length',
    min: 5,
    max: 800,
    plausible: [30, 250],
    source: CHOICE,
  }),
  lobes: integer(3, {
    ...displacing,
    label: 'Lobes of a rotor',
    min: 2,
    max: 4,
    plausible: [2, 4],
    source: CHOICE,
  }),
  helix_deg: number(0, {
    ...displacing,
    label: 'Twist of a rotor over its length',
    help: '0 for straight lobes. Twist evens out the delivery.',
    min: 0,
    max: 180,
    plausible: [0, 160],
    source: CHOICE,
  }),
  profile: choice(ROTOR_PROFILES, 'cycloidal', {
    ...of('roots'),
    detail: true,
    label: 'Profile of the rotors',
    help: 'Circular arcs displace more for their diameter, cycloids ripple less.',
    source: CHOICE,
  }),
  centreDistance_mm: numberOrNone({
    ...of('roots'),
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
    ...of('roots'),
    detail: true,
    label: 'Bore of a rotor',
    help: 'Hole for the shaft; 0 for none.',
    min: 0,
    max: 200,
    plausible: [0, 40],
    source: CHOICE,
  }),
  rotorMaterial: choice(materialNames, 'aluminium', {
    ...of('roots'),
    detail: true,
    label: 'Material of the rotors',
    source: CHOICE,
  }),
  casingMaterial: choice(materialNames, 'aluminium', {
    ...of('roots'),
    detail: true,
    label: 'Material of the casing',
    source: CHOICE,
  }),
  displacement_cc: numberOrNone({
    ...displacing,
    label: 'Displacement of one blower for a turn of its rotors',
    help: 'Type it where it is known; real profiles displace up to an eighth more than the cycloid.',
    min: 1,
    max: 20000,
    plausible: [30, 2000],
    otherwise: 'that of rotors of this diameter, length, profile and number of lobes',
    source: 'area of the rotor’s section',
  }),
  volumeRatio: number(1.3, {
    ...of('internal compression'),
    label: 'Built-in volume ratio',
    help: 'Volume of a pocket when it closes over that when it opens. Its pressure ratio is about the 1.4th power of it.',
    min: 1,
    max: 5,
    plausible: [1.1, 2],
    source: CHOICE,
  }),
  impeller: filled(impeller),
  ...geared,
  ripple: numberOrNone({
    ...displacing,
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
    ...displacing,
    detail: true,
    label: 'Rotor phase',
    help: 'Where the first blower’s rotors stand when the crank is at 0°; at 0° their lobes touch at the pitch point.',
    min: -360,
    max: 360,
    plausible: [0, 90],
    source: CHOICE,
  }),
  phaseStep_deg: number(0, {
    ...displacing,
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
    ...displacing,
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
    ...displacing,
    detail: true,
    label: 'Discharge coefficient of the clearances',
    min: 0.2,
    max: 1,
    plausible: [0.6, 0.9],
    source: 'typical',
  }),
  slip: filled(slip),
  carriedBackShare: number(0, {
    ...displacing,
    detail: true,
    label: 'Carried back in the mesh',
    help: 'Gas of the plenum that the rotors take back to the inlet, over the displacement; the gap of the mesh alone takes some percent.',
    min: 0,
    max: 0.5,
    plausible: [0, 0.06],
    source: 'geometry of the mesh; the report on the rotors gives what its gap takes',
  }),
  ...driven,
};
