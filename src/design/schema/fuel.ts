import * as v from 'valibot';
import { FUELS } from '../../sim/gas/fuels.ts';
import { choice, filled, group, number, numberOrNone, yesNo } from './builders.ts';
import { butterflyOrSlide } from './shared.ts';

const CHOICE = 'the builder’s choice';

const fuelNames = Object.keys(FUELS) as [string, ...string[]];

const carburettor = group('Carburettor', 'One throttle for the whole engine.', {
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

const MILLER = 'Miller, Internal Flow Systems, 1990';

const recovered = (value: number, what: string, source: string) =>
  number(value, {
    detail: true,
    label: `Pressure won back behind the ${what}`,
    help: `Share of the drop to its throat that the diffuser wins back; 0 for a sharp plate.`,
    min: 0,
    max: 0.95,
    plausible: [0, 0.85],
    source,
  });

const restrictor = group('Restrictor', 'A fixed hole ahead of the carburettor.', {
  bore_mm: number(20, {
    label: 'Bore of the restrictor',
    min: 2,
    max: 150,
    plausible: [10, 40],
    source: CHOICE,
  }),
  discharge: number(0.95, {
    detail: true,
    label: 'Discharge coefficient of the restrictor',
    min: 0.2,
    max: 1,
    plausible: [0.6, 0.98],
    source: 'typical, 0.95 for a venturi, 0.6 for a sharp plate',
  }),
  recovered: recovered(0, 'restrictor', 'none won back, as behind a sharp plate'),
});

const venturi = group(
  'Venturi',
  'The narrowest place of a carburettor with a fixed choke, ahead of the throttle. Without it air meets the throttle alone.',
  {
    bore_mm: number(26, {
      label: 'Bore of the venturi',
      help: 'Diameter of a circle of the same area where it holds a nozzle.',
      min: 2,
      max: 150,
      plausible: [10, 45],
      source: CHOICE,
    }),
    discharge: number(0.9, {
      detail: true,
      label: 'Discharge coefficient of the venturi',
      min: 0.2,
      max: 1,
      plausible: [0.8, 0.97],
      source:
        'typical, 0.8 to 0.9 with nozzle and bar in the way; Heywood, Internal Combustion Engine Fundamentals, 1988, section 7.3',
    }),
    recovered: recovered(
      0.6,
      'venturi',
      `typical for a short carburettor venturi; 0.8 to 0.9 behind a long cone of 7° to 15°, ISO 5167-4:2003 and ${MILLER}`,
    ),
  },
);

const arrester = group(
  'Flame arrester',
  'Between throttle and blower; it is to keep a backfire from leaving through the carburettor. Whether one does is a matter of its test, not of this loss.',
  {
    area_cm2: number(30, {
      label: 'Face area of the flame arrester',
      min: 0.5,
      max: 5000,
      plausible: [10, 200],
      source: CHOICE,
    }),
    lossFactor: number(6, {
      label: 'Loss factor of the flame arrester',
      help: 'Pressure loss over the dynamic pressure ρ w²/2 of the speed over its whole face.',
      min: 0.1,
      max: 200,
      plausible: [1, 30],
      source: `typical of gauze and crimped ribbon, and wide: its maker’s flow curve settles it; gauzes: ${MILLER}`,
    }),
  },
);

const WIEBE =
  'typical for two-strokes at full load; form of Wiebe; Blair, Design and Simulation of Two-Stroke Engines, 1996';

const burning = group(
  'Burning',
  'How the trapped charge releases its heat.',
  {
    enabled: yesNo(true, { label: 'Burns', help: 'Off: the engine is motored.', source: CHOICE }),
    wiebeA: number(6.908, {
      label: 'Wiebe efficiency factor a',
      help: 'Burned share at the end of the duration is 1 − exp(−a).',
      min: 1,
      max: 15,
      plausible: [5, 8],
      source: 'ln 1000: 99.9 % burned at the end of the duration',
    }),
    wiebeM: number(1.5, {
      label: 'Wiebe form factor m',
      min: 0.1,
      max: 6,
      plausible: [1, 2.5],
      source: WIEBE,
    }),
    delay_deg: number(10, {
      label: 'Delay from spark to the start of burning',
      help: 'At the reference state.',
      min: 0,
      max: 60,
      plausible: [6, 16],
      source: WIEBE,
    }),
    duration_deg: number(50, {
      label: 'Duration of burning',
      help: 'At the reference state.',
      min: 5,
      max: 180,
      plausible: [35, 70],
      source: WIEBE,
    }),
    referenceSpeed_rpm: number(6000, {
      label: 'Speed at which delay and duration are stated',
      min: 200,
      max: 30000,
      plausible: [3000, 10000],
      source: 'the reference state',
    }),
    speedExponent: number(0.3, {
      label: 'Exponent of the speed',
      help: 'Delay and duration in degrees grow with speed to this power.',
      min: 0,
      max: 1,
      plausible: [0.2, 0.5],
      source: 'typical, 0.2 to 0.5: turbulence grows with piston speed',
    }),
    referenceResidual: number(0.2, {
      label: 'Residual share at which the duration is stated',
      help: 'By mass.',
      min: 0,
      max: 0.6,
      plausible: [0.05, 0.35],
      source: 'the reference state',
    }),
    referenceTemperature_K: number(700, {
      label: 'Unburned temperature at which the duration is stated',
      min: 298,
      max: 1200,
      plausible: [550, 850],
      source: 'the reference state',
    }),
    referencePressure_bar: number(12, {
      label: 'Pressure at which the duration is stated',
      min: 1,
      max: 100,
      plausible: [6, 30],
      source: 'the reference state',
    }),
    flameSpeedExponent: number(0.5, {
      label: 'Exponent of the flame speed',
      help: 'Duration grows as the laminar flame speed falls, to this power.',
      min: 0,
      max: 2,
      plausible: [0.4, 0.8],
      source: 'typical; flame speed after Metghalchi & Keck, Combustion and Flame 48, 1982',
    }),
    completeness: number(0.97, {
      label: 'Share of the fuel that burns',
      help: 'Beyond the carbon monoxide and hydrogen that a rich mixture leaves.',
      min: 0.3,
      max: 1,
      plausible: [0.94, 0.98],
      source: 'typical, 0.96 to 0.98',
    }),
    misfireResidual: number(0.5, {
      label: 'Residual share at which it misfires',
      help: 'By mass.',
      min: 0.1,
      max: 0.95,
      plausible: [0.35, 0.65],
      source: 'typical, 0.4 to 0.65',
    }),
    leanLimit: number(1.5, {
      label: 'Mixture too lean to burn',
      help: 'Air over fuel over stoichiometric of a trapped charge, above which it does not burn; where turns are followed one by one, as in starting.',
      min: 1.05,
      max: 4,
      plausible: [1.3, 1.8],
      source:
        'typical, 1.3 to 1.8 at the plug; lower limit of petrol vapour 1.4 % by volume, Zabetakis, US Bureau of Mines Bulletin 627, 1965',
    }),
    misfireWidth: number(0.08, {
      label: 'Width over which burning fades round the misfire limit',
      min: 0.005,
      max: 0.4,
      plausible: [0.03, 0.15],
      source: 'numerical',
    }),
  },
  { detail: true },
);

const injection = group(
  'Injection into the cylinders',
  'Used where fuel joins the air in the cylinders.',
  {
    delay_deg: number(0, {
      label: 'From the shutting of the last window to the beginning',
      min: 0,
      max: 60,
      plausible: [0, 30],
      source: 'as early as nothing can be lost',
    }),
    duration_deg: number(30, {
      label: 'Duration of injection',
      min: 1,
      max: 90,
      plausible: [5, 50],
      source: 'typical; 30° at 6000 rpm are 0.8 ms',
    }),
  },
  { detail: true },
);

const DOUAUD =
  'Douaud & Eyzat, SAE 780080, 1978; as printed in Heywood, Internal Combustion Engine Fundamentals, 1988';

const knock = group(
  'Knock',
  'When end gas lights by itself: delay = factor · (octane/100)^a · (p/1 atm)^−n · exp(T_a/T).',
  {
    researchWeight: number(0.5, {
      label: 'Weight of the research octane number',
      help: 'Between motor (0) and research octane number (1); hot, slow engines lean to the motor number.',
      min: -1,
      max: 2,
      plausible: [0, 1],
      source: 'convention: the mean of both',
    }),
    octaneOffset: number(0, {
      label: 'Octane numbers added',
      help: 'For what the law does not know: hot spots and carbon take some away, squish adds some.',
      min: -30,
      max: 30,
      plausible: [-8, 5],
      source: CHOICE,
    }),
    delayFactor_ms: number(17.68, {
      label: 'Factor of the delay',
      min: 0.5,
      max: 500,
      plausible: [10, 30],
      source: DOUAUD,
    }),
    octaneExponent: number(3.402, {
      label: 'Exponent of the octane number',
      min: 0.5,
      max: 10,
      plausible: [3, 4],
      source: DOUAUD,
    }),
    pressureExponent: number(1.7, {
      label: 'Exponent of the pressure',
      min: 0.2,
      max: 4,
      plausible: [1.3, 2],
      source: DOUAUD,
    }),
    activation_K: number(3800, {
      label: 'Activation temperature',
      min: 500,
      max: 20000,
      plausible: [3500, 4200],
      source: DOUAUD,
    }),
    lastBurnedShare: number(0.85, {
      label: 'Share burned from which end gas no longer counts',
      min: 0.3,
      max: 0.999,
      plausible: [0.75, 0.95],
      source: 'typical: what is left later is too little and too near the walls',
    }),
  },
  { detail: true },
);

export const fuel = group('Fuel and spark', 'Carburettor, mixture and burning.', {
  kind: choice(fuelNames, 'petrol', { label: 'Fuel', source: CHOICE }),
  lambda: number(0.88, {
    label: 'Mixture: λ',
    help: 'Air/fuel ratio over the stoichiometric one; below 1 is rich.',
    min: 0.5,
    max: 2,
    plausible: [0.75, 1.1],
    source: 'typical, 0.82 to 0.92 for air-cooled two-strokes at full load',
  }),
  oilShare: number(0.02, {
    label: 'Oil in the fuel',
    help: 'By volume; 2 % is 1 : 49.',
    min: 0,
    max: 0.15,
    plausible: [0.01, 0.06],
    source: 'typical',
  }),
  feed: choice(['carburettor', 'passages', 'cylinders'], 'carburettor', {
    label: 'Fuel joins the air',
    help: 'In the carburettor; by an injector at the mouth of every passage; or by one in every cylinder after its windows have shut, where λ is that of the air shut in.',
    source: CHOICE,
  }),
  evaporatedShare: number(0.5, {
    detail: true,
    label: 'Fuel that evaporates before the blower',
    help: 'Of a carburettor: by the heat of the air itself; saturation may allow less.',
    min: 0,
    max: 1,
    plausible: [0.2, 0.9],
    source: 'typical',
  }),
  liquidGoesOn: yesNo(false, {
    detail: true,
    label: 'The rest goes on as liquid',
    help: 'Of a carburettor. Yes: as drops, which evaporate in passages and cylinders. No: the walls of the tract evaporate them at once.',
    source: 'no: a warm tract',
  }),
  drop_um: numberOrNone({
    detail: true,
    label: 'Diameter of drops',
    help: 'Sauter mean, of fuel that is injected or goes on as liquid; drops half as wide evaporate in a quarter of the time.',
    min: 2,
    max: 300,
    plausible: [8, 60],
    source:
      'typical; injectors into the cylinder make 10 µm with air to 25 µm without, Zhao, Lai & Harrington, Progress in Energy and Combustion Science 25, 1999; low pressure makes larger ones',
    otherwise: '15 µm injected into the cylinders, 30 µm else',
  }),
  injection: filled(injection),
  spark_degBTDC: number(24, {
    label: 'Spark advance',
    help: 'Before each cylinder’s own top dead centre.',
    min: -20,
    max: 60,
    plausible: [12, 32],
    source: 'typical',
  }),
  carburettor: filled(carburettor),
  restrictor: v.optional(v.nullable(restrictor), null),
  venturi: v.optional(v.nullable(venturi), null),
  arrester: v.optional(v.nullable(arrester), null),
  burning: filled(burning),
  knock: filled(knock),
});
