import { group, number, numberOrNone } from './builders.ts';
import { CHOICE } from './shared.ts';

const MEASURE = 'typical; measure it';

interface LengthSpec {
  readonly label: string;
  readonly help?: string;
  readonly max: number;
  readonly plausible: readonly [number, number];
  readonly otherwise: string;
  readonly min?: number;
  readonly source?: string;
}

/** A size in millimetres; left out, it follows from bore, stroke or rods. */
const size = (spec: LengthSpec) => numberOrNone({ min: 0.1, source: MEASURE, ...spec });

/** The barrel as its neighbours meet it. */
export const barrel = group(
  'Barrel outside',
  'Only decides whether the engine goes together.',
  {
    base_mm: size({
      label: 'Barrel base above the crank axis',
      help: 'Underside of the flange, gasket or spacer included. What is corrected for one barrel comes on top.',
      max: 700,
      plausible: [30, 250],
      otherwise: 'master rod less half the stroke, as high as its gudgeon pin at bottom dead centre',
    }),
    flange_mm: size({
      label: 'Flange across the row',
      help: 'Of the barrel’s foot, measured round the case.',
      max: 400,
      plausible: [35, 130],
      otherwise: '1.45 bores',
    }),
    flangeAlong_mm: size({
      label: 'Flange along the crank',
      max: 400,
      plausible: [35, 130],
      otherwise: 'as wide as across',
    }),
    mouth_mm: size({
      label: 'Outside diameter of the mouth',
      help: 'Of what reaches through the flange into the case.',
      max: 300,
      plausible: [33, 100],
      otherwise: '1.15 bores',
    }),
    mouthDepth_mm: size({
      label: 'Mouth below the base',
      help: 'How far the barrel reaches into the case.',
      min: 0,
      max: 200,
      plausible: [0, 25],
      otherwise: 'a tenth of the bore',
    }),
    fins_mm: size({
      label: 'Diameter over the fins',
      max: 500,
      plausible: [45, 170],
      otherwise: '1.9 bores',
    }),
    finsFrom_mm: size({
      label: 'Lowest fin below the deck',
      max: 400,
      plausible: [15, 100],
      otherwise: 'a bore',
    }),
    head_mm: size({
      label: 'Head above the deck',
      help: 'To its highest point, plug and cap included.',
      max: 300,
      plausible: [15, 100],
      otherwise: '0.9 bores',
    }),
    headGap_mm: number(0, {
      label: 'Squish band above the deck',
      help: 'Of the head, over a gasket or into a recess (+); dipping into the bore (−).',
      min: -10,
      max: 10,
      plausible: [-1, 1.5],
      source: 'a flat head on the bare deck',
    }),
  },
  { detail: true },
);

export const piston = group(
  'Piston',
  'Only decides whether the engine goes together.',
  {
    pinToCrown_mm: size({
      label: 'Gudgeon pin to crown edge',
      help: 'Compression height.',
      max: 200,
      plausible: [12, 60],
      otherwise: '0.6 bores',
    }),
    length_mm: size({
      label: 'Crown edge to skirt edge',
      help: 'Where the skirt is longest, which is across the gudgeon pin.',
      max: 300,
      plausible: [25, 120],
      otherwise: 'the stroke and 0.12 bores, enough to cover windows of the full stroke',
    }),
    skirtWall_mm: size({
      label: 'Wall of the skirt',
      max: 30,
      plausible: [1, 5],
      otherwise: '0.05 bores',
    }),
    crownThickness_mm: size({
      label: 'Thickness of the crown',
      help: 'From the crown edge down to the hollow under it.',
      max: 60,
      plausible: [2, 12],
      otherwise: '0.1 bores',
    }),
  },
  { detail: true },
);

/** Rods as they pass each other. */
export const rodShapes = group(
  'Shapes of the rods',
  'Only decides whether the engine goes together.',
  {
    bigEnd_mm: size({
      label: 'Outside diameter of the big end',
      help: 'Over the flange with the knuckle pins, or over the eye of a plain rod.',
      max: 500,
      plausible: [20, 150],
      otherwise: 'two knuckle radii and 2.2 knuckle pins; 0.95 bores for plain rods',
    }),
    bigEndBore_mm: size({
      label: 'Bore of the big end',
      help: 'The hole for the bearing on the crank pin.',
      max: 300,
      plausible: [12, 70],
      otherwise: '0.6 bores',
    }),
    bigEndWidth_mm: size({
      label: 'Width of all big ends on one crank pin',
      help: 'Along the crank.',
      max: 400,
      plausible: [12, 80],
      otherwise: '0.6 bores; 0.3 bores for each plain rod',
    }),
    web_mm: size({
      label: 'Crank between two rows',
      help: 'Webs and bearing between two neighbouring crank pins, along the crank.',
      max: 400,
      plausible: [8, 80],
      otherwise: '0.4 bores',
    }),
    knucklePin_mm: size({
      label: 'Diameter of the knuckle pins',
      max: 100,
      plausible: [5, 25],
      otherwise: 'a fifth of the bore',
    }),
    knuckleEye_mm: size({
      label: 'Outside diameter of the knuckle eyes',
      max: 150,
      plausible: [8, 40],
      otherwise: '0.35 bores',
    }),
    smallEnd_mm: size({
      label: 'Outside diameter of the small end',
      max: 150,
      plausible: [10, 45],
      otherwise: '0.42 bores',
    }),
    shankLower_mm: size({
      label: 'Width of a rod at its lower end',
      help: 'Of a plain or articulated rod’s shank, seen along the crank.',
      max: 100,
      plausible: [5, 30],
      otherwise: 'a quarter of the bore',
    }),
    shankUpper_mm: size({
      label: 'Width of a rod at its upper end',
      max: 100,
      plausible: [5, 30],
      otherwise: '0.22 bores',
    }),
    masterShankLower_mm: size({
      label: 'Width of the master rod at its flange',
      max: 150,
      plausible: [6, 40],
      otherwise: '0.35 bores',
    }),
    masterShankUpper_mm: size({
      label: 'Width of the master rod at its upper end',
      max: 150,
      plausible: [6, 40],
      otherwise: '0.28 bores',
    }),
  },
  { detail: true },
);

export const space = group(
  'Space there is',
  'What the whole engine has to go into.',
  {
    diameter_mm: numberOrNone({
      label: 'Diameter there is room for',
      help: 'Of a circle about the crank axis.',
      min: 10,
      max: 5000,
      plausible: [150, 900],
      otherwise: 'as much as it takes',
      source: CHOICE,
    }),
    length_mm: numberOrNone({
      label: 'Length there is room for',
      min: 10,
      max: 5000,
      plausible: [100, 1500],
      otherwise: 'as much as it takes',
      source: CHOICE,
    }),
    ends_mm: size({
      label: 'Before and behind the rows',
      help: 'What gears, blowers, bearings and shaft ends stand out beyond the outermost barrels, together.',
      min: 0,
      max: 3000,
      plausible: [40, 500],
      otherwise: '4 bores',
    }),
  },
  { detail: true },
);

const departure = (value: number, label: string, help: string, plausible: readonly [number, number]) =>
  number(value, {
    label,
    help,
    min: 0,
    max: 5,
    plausible,
    source: 'typical of a good small workshop; measure yours',
  });

export const tolerances = group(
  'How closely it is made',
  'What each size may be out, either way: a tolerance of ±. Clearances are told with all of them added up.',
  {
    centres_mm: departure(0.03, 'Centre distances', 'Throw, rods, places of the knuckle pins.', [0.01, 0.1]),
    heights_mm: departure(
      0.1,
      'Heights of barrels',
      'Base with its gasket, deck, window edges, squish band.',
      [0.03, 0.3],
    ),
    castings_mm: departure(0.3, 'Outlines of castings', 'Flanges, mouths, fins.', [0.05, 1]),
    outlines_mm: departure(0.1, 'Outlines of rods and pistons', 'Rods, eyes, skirts, crowns.', [0.02, 0.5]),
    play_mm: departure(
      0.06,
      'Play',
      'Radial, of all bearings between crank and piston together.',
      [0.02, 0.2],
    ),
    along_mm: departure(0.2, 'Places along the crank', 'Ends of rods, webs and rows.', [0.05, 0.5]),
  },
  { detail: true },
);
