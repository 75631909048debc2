import { choice, group, number, yesNo } from './builders.ts';
import { CHOICE } from './shared.ts';

const WIEBE =
  'typical for two-strokes at full load; form of Wiebe; Blair, Design and Simulation of Two-Stroke Engines, 1996';

export const burning = group(
  'Burning',
  'How the trapped charge releases its heat.',
  {
    enabled: yesNo(true, { label: 'Burns', help: 'Off: the engine is motored.', source: CHOICE }),
    products: choice(['frozen', 'equilibrium'], 'frozen', {
      label: 'Burned gas',
      help: 'Frozen: of fixed composition, so that temperature and pressure at the peak come out somewhat high. Equilibrium: it dissociates above 1500 K; a point takes a little longer.',
      source:
        'method of equilibrium constants after Olikara & Borman, SAE 750468, 1975; thermodynamic data of GRI-Mech 3.0',
    }),
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
    misfireWidth: number(0.08, {
      label: 'Width over which burning fades round the misfire limit',
      min: 0.005,
      max: 0.4,
      plausible: [0.03, 0.15],
      source: 'numerical',
    }),
    leanLimit: number(1.5, {
      label: 'Mixture too lean to burn',
      help: 'Air over fuel over stoichiometric of a trapped charge: at this λ half of it burns on the average; where turns are followed one by one, nothing above it.',
      min: 1.05,
      max: 4,
      plausible: [1.3, 1.8],
      source:
        'typical, 1.3 to 1.8 at the plug; lower limit of petrol vapour 1.4 % by volume, Zabetakis, US Bureau of Mines Bulletin 627, 1965',
    }),
    richLimit: number(0.45, {
      label: 'Mixture too rich to burn',
      help: 'The same on the rich side: half burns at this λ, nothing below it in single turns.',
      min: 0.1,
      max: 0.95,
      plausible: [0.35, 0.6],
      source:
        'typical, 0.4 to 0.6 at the plug, alcohols down to 0.3; petrol vapour itself burns up to 7.6 % by volume, λ 0.22, Zabetakis, US Bureau of Mines Bulletin 627, 1965',
    }),
    mixtureWidth: number(0.1, {
      label: 'Width over which burning fades round the mixture limits',
      help: 'In λ.',
      min: 0.01,
      max: 0.5,
      plausible: [0.05, 0.2],
      source: 'numerical; stands for charges that differ from turn to turn',
    }),
  },
  { detail: true },
);
