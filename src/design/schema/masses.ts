import { group, number, numberOrNone } from './builders.ts';
import { CHOICE } from './shared.ts';

const WEIGH = 'typical; weigh it';

/** What moves with the rods: loads and balance follow from it, the cycle does not. */
export const masses = group(
  'Masses',
  'For torque by inertia, loads and balance; the gas does not feel them.',
  {
    piston_g: numberOrNone({
      label: 'Piston with pin and rings',
      min: 1,
      max: 20000,
      plausible: [20, 800],
      otherwise: '1 g for each cubic centimetre of bore³',
      source: 'typical, 0.7 to 1.4 g/cm³ of bore³ complete with pin and rings; weigh it',
    }),
    rod_g: numberOrNone({
      label: 'Plain or articulated rod',
      min: 1,
      max: 20000,
      plausible: [10, 800],
      otherwise: '0.8 g for each cubic centimetre of bore³',
      source: WEIGH,
    }),
    rodUpperShare: numberOrNone({
      label: 'Share of a rod’s mass at the gudgeon pin',
      help: 'Weigh the small end with the rod level, the big end held, over the whole mass.',
      min: 0,
      max: 1,
      plausible: [0.25, 0.5],
      otherwise: '0.3 for plain rods, 0.45 for articulated ones, whose ends are much alike',
      source: 'typical',
    }),
    masterRod_g: numberOrNone({
      label: 'Master rod with flange and knuckle pins',
      help: 'Not used where all rods are plain.',
      min: 1,
      max: 50000,
      plausible: [30, 3000],
      otherwise: '2.5 articulated rods',
      source: WEIGH,
    }),
    masterRodCentre_mm: numberOrNone({
      label: 'Centre of mass of the master rod from the crank pin',
      help: 'Balance it on an edge. Not used where all rods are plain.',
      min: 0,
      max: 300,
      plausible: [5, 60],
      otherwise: 'a fifth of its length',
      source: 'typical; balance it',
    }),
    throw_g: numberOrNone({
      label: 'Crank throw, counterweight apart',
      help: 'Crank pin, its bearing and what of the webs has no match on the other side, as a mass at the crank pin.',
      min: 0,
      max: 50000,
      plausible: [20, 2000],
      otherwise: '2.5 g for each cubic centimetre of bore³',
      source: 'typical',
    }),
    balancedShare: number(1, {
      label: 'Share that counterweights balance',
      help: 'Of what turns with a throw at once a turn, half the mass of all that goes to and fro included. 1 leaves none of it in a row of three or more.',
      min: 0,
      max: 1.5,
      plausible: [0.5, 1],
      source: 'usual practice in radials: all of it',
    }),
  },
  { detail: true },
);

/** What turns with the crank, and the shaft that leads to it. */
export const load = group(
  'Flywheel, load and output shaft',
  'For speed fluctuation and the loads of shaft and gears.',
  {
    flywheel_kg_cm2: numberOrNone({
      label: 'Inertia of crank and flywheel',
      help: 'About the crank axis, counterweights and starter ring included.',
      min: 0.01,
      max: 1000000,
      plausible: [0.5, 500],
      otherwise: '6 g/cm³ × bore⁵',
      source: 'typical; a steel disc of diameter D and mass m has m D²/8',
    }),
    inertia_kg_cm2: numberOrNone({
      label: 'Inertia of the load',
      help: 'Of propeller or brake about its own axis.',
      min: 0,
      max: 10000000,
      plausible: [5, 20000],
      otherwise: '90 g/cm³ × bore⁵, about a wooden propeller of 15 bores',
      source: 'typical; a propeller of diameter D and mass m has about m D²/12 to m D²/16',
    }),
    gearRatio: number(1, {
      label: 'Turns of the crank for one of the load',
      help: '1 for a direct drive, without gears.',
      min: 0.2,
      max: 10,
      plausible: [1, 4],
      source: CHOICE,
    }),
    gearPitch_mm: numberOrNone({
      label: 'Pitch diameter of the output gear on the crank',
      min: 5,
      max: 500,
      plausible: [20, 150],
      otherwise: '1.5 bores',
      source: CHOICE,
    }),
    shaft_mm: numberOrNone({
      label: 'Diameter of the output shaft',
      help: 'Where it is thinnest, solid; keyways and threads are not in the stress.',
      min: 3,
      max: 200,
      plausible: [10, 60],
      otherwise: 'half the bore',
      source: CHOICE,
    }),
    shock: number(2, {
      label: 'Factor on a sudden load',
      help: 'What an elastic shaft makes of a torque that is there at once.',
      min: 1,
      max: 5,
      plausible: [1.5, 3],
      source:
        'a load applied at once to an elastic shaft doubles: Timoshenko, Vibration Problems in Engineering, 1937, sec. 8',
    }),
  },
  { detail: true },
);
