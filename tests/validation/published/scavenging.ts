import type { Scavenging } from '../../../src/sim/engine.ts';
import { cc, percent } from '../../../src/sim/units.ts';
import { purityAfter } from '../../helpers/scavenge.ts';
import { scavenged, zonedEngine } from '../../helpers/scavenge-held.ts';
import type { Comparison, Subject } from './comparison.ts';

const mixing: Scavenging['law'] = { kind: 'perfect mixing' };
const twoStage = (displacedShare: number): Scavenging['law'] => ({
  kind: 'displacement then mixing',
  displacedShare,
});

/** A worked example with its printed data, SI; the reference is the whole cylinder, swept volume x r/(r - 1). */
interface Exercise {
  readonly name: string;
  readonly source: string;
  readonly bore: number;
  readonly stroke: number;
  readonly ratio: number;
  /** Cycles and air [1/s], [kg/s]. */
  readonly cycles: number;
  readonly air: number;
  readonly temperature: number;
  readonly pressure: number;
  readonly gasConstant: number;
  /** Printed answers, and half of the last digit of each. */
  readonly printed: Readonly<
    Record<'ratio' | 'scavenging' | 'trapping', readonly [value: number, half: number]>
  >;
}

const GRAVITY = 9.80665;

const EXERCISES: readonly Exercise[] = [
  {
    name: '112.5 × 150 mm, ratio 7, 1800 rpm, 4.5 kg/min of air at 72 °C, exhaust at 1 kgf/cm²',
    source: 'textbook exercise in technical units (a chapter on two-stroke engines, example 19.3)',
    bore: 0.1125,
    stroke: 0.15,
    ratio: 7,
    cycles: 30,
    air: 4.5 / 60,
    temperature: 345,
    pressure: GRAVITY * 1e4,
    gasConstant: GRAVITY * 29.27,
    printed: { ratio: [1.45, 5e-3], scavenging: [0.766, 5e-4], trapping: [0.53, 5e-3] },
  },
  {
    name: '120 × 150 mm, ratio 16, 2000 rpm, 4 kg/min of air at 300 K, exhaust at 1.025 bar',
    source: 'Gupta, Fundamentals of Internal Combustion Engines, 2006, example 11.2',
    bore: 0.12,
    stroke: 0.15,
    ratio: 16,
    cycles: 2000 / 60,
    air: 4 / 60,
    temperature: 300,
    pressure: 1.025e5,
    gasConstant: 287,
    printed: { ratio: [0.93, 5e-3], scavenging: [0.605, 5e-4], trapping: [0.651, 5e-4] },
  },
];

const wholeVolume = ({ bore, stroke, ratio }: Exercise): number =>
  ((Math.PI / 4) * bore * bore * stroke * ratio) / (ratio - 1);

/** Air over what fills the whole cylinder at inlet temperature and exhaust pressure [-]. */
const scavengeRatio = (of: Exercise): number =>
  (of.air * of.gasConstant * of.temperature) / (of.cycles * of.pressure * wholeVolume(of));

const against = ([value, half]: readonly [number, number], ours: number) => ({
  values: [[value, ours]] as const,
  within: { amount: half },
  because: 'half of the last digit printed',
});

function exercise(of: Exercise): readonly Comparison[] {
  const ratio = scavengeRatio(of);
  const kept = purityAfter(ratio, mixing, 0);
  const common = { origin: 'published', source: of.source, unit: '' } as const;
  const litres = (wholeVolume(of) / cc / 1000).toFixed(3);
  return [
    {
      ...common,
      quantity: `scavenge ratio: ${of.name}; reference ${litres} litres, the whole cylinder`,
      ...against(of.printed.ratio, ratio),
    },
    {
      ...common,
      quantity: 'its scavenging efficiency by perfect mixing',
      ...against(of.printed.scavenging, kept),
    },
    {
      ...common,
      quantity: 'its trapping efficiency',
      ...against(of.printed.trapping, kept / ratio),
    },
  ];
}

const TWO_STAGE =
  'SR up to x, then 1 − (1 − x) exp(x − SR), by hand; form of Benson & Brandham, Int. J. Mech. Sci. 11:299, 1969';

const exact: readonly Comparison[] = [
  {
    quantity: 'perfect mixing at a scavenge ratio of exactly 1.45',
    origin: 'closed form',
    source: '1 − exp(−SR), by hand (the exercise prints 0.766)',
    unit: '',
    values: [[0.7654, purityAfter(1.45, mixing, 0)]],
    within: { amount: 5e-5 },
    because: 'half of the last digit',
  },
  {
    quantity: 'perfect mixing, SR 0.2 to 2',
    origin: 'closed form',
    source: '1 − exp(−SR)',
    unit: '',
    values: [0.2, 0.6, 1, 1.4, 2].map((SR) => [1 - Math.exp(-SR), purityAfter(SR, mixing, 0)]),
    within: { amount: 1e-10 },
    because: 'round-off',
  },
  {
    quantity: 'perfect displacement, SR 0.2 to 2',
    origin: 'closed form',
    source: 'min(SR, 1)',
    unit: '',
    values: [0.2, 0.6, 1, 1.4, 2].map((SR) => [
      Math.min(SR, 1),
      purityAfter(SR, { kind: 'perfect displacement' }, 0.001),
    ]),
    within: { amount: 0.1 * percent },
    because: 'the jump of the law is spread over 0.001 here; a design spreads it over more',
  },
  {
    quantity: 'displacement up to 0.4, then mixing: SR 0.4, 1, 1.6, 2',
    origin: 'closed form',
    source: TWO_STAGE,
    unit: '',
    values: (
      [
        [0.4, 0.4],
        [1, 0.671],
        [1.6, 0.819],
        [2, 0.879],
      ] as const
    ).map(([SR, kept]) => [kept, purityAfter(SR, twoStage(0.4), 1e-4)]),
    within: { amount: 5e-4 },
    because: 'half of the last digit',
  },
  {
    quantity: 'displacement up to 0.6, then mixing: SR 1.6',
    origin: 'closed form',
    source: TWO_STAGE,
    unit: '',
    values: [[0.853, purityAfter(1.6, twoStage(0.6), 1e-4)]],
    within: { amount: 5e-4 },
    because: 'half of the last digit',
  },
];

const EQUAL = { passage: 400, cylinder: 400 };
const SHARES = [0.4, 0.8, 1.4];

/** Fresh mass share that the cycle's own flows leave in a cylinder at rest, both zones at one temperature. */
const throughTheCycle = (
  law: Scavenging['law'],
  straight: number,
  ideal: (kept: number) => number,
): (readonly [number, number])[] =>
  scavenged(zonedEngine(law, straight), EQUAL, SHARES).map(
    ({ ratio, xi }) => [ideal((1 - straight) * ratio), xi] as const,
  );

const cycled: readonly Comparison[] = [
  {
    quantity: 'displacement in the cycle with two zones at 400 K, SR 0.4, 0.8, 1.4',
    origin: 'closed form',
    source: 'min(SR, 1)',
    unit: '',
    values: throughTheCycle({ kind: 'perfect displacement' }, 0, (SR) => Math.min(SR, 1)),
    within: { amount: 0.02 },
    because: 'the jump is spread over 0.01, and the cylinder’s mass changes by under 1 % as it fills',
  },
  {
    quantity: 'displacement up to 0.4, then mixing, in the same way',
    origin: 'closed form',
    source: TWO_STAGE,
    unit: '',
    values: throughTheCycle(twoStage(0.4), 0, (SR) => (SR <= 0.4 ? SR : 1 - 0.6 * Math.exp(0.4 - SR))),
    within: { amount: 0.02 },
    because: 'as above',
  },
  {
    quantity: 'displacement up to 0.4, then mixing, 5 % straight across, in the same way',
    origin: 'closed form',
    source: 'the same with (1 − σ) SR for SR; Benson & Brandham, Int. J. Mech. Sci. 11:299, 1969',
    unit: '',
    values: throughTheCycle(twoStage(0.4), 0.05, (SR) => (SR <= 0.4 ? SR : 1 - 0.6 * Math.exp(0.4 - SR))),
    within: { amount: 0.02 },
    because: 'as above',
  },
];

export const scavenging = (): Subject => ({
  title: 'Scavenging',
  note: 'Printed scavenge ratios have the whole cylinder as their reference, swept volume × r/(r − 1) at inlet temperature and exhaust pressure. The delivery ratio of the program has the swept volume at ambient density: the two may not be compared.',
  comparisons: [...EXERCISES.flatMap(exercise), ...exact, ...cycled],
  unproven: [
    'Which law, displaced share and short-circuit share a cylinder has. The defaults by layout are starting values from the literature; only a measurement on the cylinder settles them.',
    'Temperature of what leaves. By default the cylinder is one mixed volume; with a fresh and a burned zone what leaves has their temperatures, but how fast zones mix is a closure, not a measurement.',
  ],
});
