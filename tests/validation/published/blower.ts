import { cycloidDisplacement } from '../../../src/sim/blower/cycloid-rotors.ts';
import { idealRootsStages } from '../../../src/sim/blower/ideal-stages.ts';
import { lobeArc } from '../../../src/sim/blower/rotors/circular-arc-profile.ts';
import { displacedVolume } from '../../../src/sim/blower/rotors/displaced.ts';
import { BlowerSide } from '../../../src/sim/study/supply/blower-side.ts';
import { foot, inch } from '../../../src/sim/units.ts';
import { setValue } from '../../../src/design/set-value.ts';
import { toEngine } from '../../../src/design/to-engine.ts';
import { preset, sound } from '../../design/designs.ts';
import { at, modelOf, presetEngine } from '../../helpers/engines.ts';
import { sectionAt } from '../../sim/blower/rotors/sections.ts';
import { bareEngine, DIGITS, kinds, SQUARE } from './blower-kinds.ts';
import type { Comparison, Subject } from './comparison.ts';

const WARE = 'Ware, NACA Report 230, 1926, summary';

/** Pressure ratio; isentropic over actual work, γ/(γ−1) (x^((γ−1)/γ) − 1)/(x − 1); outlet over inlet temperature 1 + (γ−1)/γ (x − 1). */
const IDEAL_ROOTS: readonly (readonly [ratio: number, efficiency: number, heating: number])[] = [
  [1.1, 0.966, 1.029],
  [1.2, 0.936, 1.057],
  [1.3, 0.908, 1.086],
  [1.4, 0.883, 1.114],
  [1.5, 0.86, 1.143],
  [1.6, 0.838, 1.171],
  [1.8, 0.8, 1.229],
  [2, 0.767, 1.286],
  [3, 0.645, 1.571],
  [4, 0.567, 1.857],
];

const ideal: readonly Comparison[] = [
  {
    quantity: 'isentropic efficiency of an ideal Roots blower, pressure ratio 1.1 to 4',
    origin: 'closed form',
    source: SQUARE,
    unit: '',
    values: IDEAL_ROOTS.map(([ratio, efficiency]) => [
      efficiency,
      idealRootsStages(ratio, 1, false).efficiency,
    ]),
    within: { amount: 5e-4 },
    because: DIGITS,
  },
  {
    quantity: 'the same at pressure ratio 4',
    origin: 'closed form',
    source: SQUARE,
    unit: '',
    values: [[0.567, idealRootsStages(4, 1, false).efficiency]],
    within: { amount: 5e-4 },
    because: DIGITS,
  },
  {
    quantity: 'outlet over inlet temperature of the same, pressure ratio 1.1 to 4',
    origin: 'closed form',
    source: SQUARE,
    unit: '',
    values: IDEAL_ROOTS.map(([ratio, , heating]) => [heating, idealRootsStages(ratio, 1, false).heating]),
    within: { amount: 5e-4 },
    because: DIGITS,
  },
  {
    quantity: 'two equal stages to ratio 4, uncooled, against one isentropic compression',
    origin: 'closed form',
    source: SQUARE,
    unit: '',
    values: [[0.744, idealRootsStages(4, 2, false).efficiency]],
    within: { amount: 5e-4 },
    because: DIGITS,
  },
  {
    quantity: 'the same, cooled back to inlet temperature between the stages',
    origin: 'closed form',
    source: SQUARE,
    unit: '',
    values: [[0.85, idealRootsStages(4, 2, true).efficiency]],
    within: { amount: 5e-4 },
    because: DIGITS,
  },
  {
    quantity: 'share of its power that a blower spares by compressing inside, 20,000 ft (ratio 2.17)',
    origin: 'published',
    source:
      'Schey & Wilson, NACA Report 303, 1929, summary: about 26 %, worked out there from indicator diagrams and tests',
    unit: '',
    values: [[0.26, 1 - idealRootsStages(101_325 / 46_563, 1, false).efficiency]],
    within: { amount: 0.01 },
    because: 'printed as approximate, without digits; standard atmosphere at 20,000 ft 46.56 kPa',
  },
];

function stepped(): Comparison {
  const side = new BlowerSide(modelOf(bareEngine()), at(6000));
  return {
    quantity: 'the same heating by the blower of the cycle itself, in steady flow of air, ratio 1.2 to 2',
    origin: 'closed form',
    source: SQUARE,
    unit: '',
    values: IDEAL_ROOTS.filter(([ratio]) => ratio >= 1.2 && ratio <= 2).map(([ratio, , heating]) => {
      const supply = side.at(ratio * presetEngine('lovage-7').ambient.pressure);
      return [heating, supply ? supply.temperature / supply.boxTemperature : NaN];
    }),
    within: { share: 2e-3 },
    because: 'γ of air falls from 1.400 to 1.397 as it warms',
  };
}

const SWEPT: readonly (readonly [lobes: 2 | 3 | 4, share: number])[] = [
  [2, 0.785],
  [3, 0.638],
  [4, 0.534],
];

function rotors(): readonly Comparison[] {
  const listed = 0.51 * foot ** 3;
  const entered = toEngine(
    sound(setValue(preset('lovage-7'), 'blower.displacement_cc', String(listed / 1e-6))),
  );
  return [
    ...SWEPT.map(([lobes, share]): Comparison => ({
      quantity: `swept by a pair of pure cycloids with ${lobes} lobes, over D²L`,
      origin: 'closed form',
      source: 'area under epi- and hypocycloids: V = 2 (πR² − π r² (1 + 1/(2 z²))) L, R = r (1 + 1/z)',
      unit: '',
      values: [
        [
          share,
          displacedVolume(sectionAt('cycloidal', lobes, 1), 1) /
            (2 * sectionAt('cycloidal', lobes, 1).tipRadius) ** 2,
        ],
      ],
      within: { amount: 5e-4 },
      because: `${DIGITS}; ours adds up the drawn outline`,
    })),
    {
      quantity: 'pure cycloids of 9.5 in diameter and 11 in length, two lobes',
      origin: 'closed form',
      source: 'π/4 D²L by hand',
      unit: 'cu ft a turn',
      values: [[0.451, cycloidDisplacement(9.5 * inch, 11 * inch, 2) / foot ** 3]],
      within: { amount: 5e-4 },
      because: DIGITS,
    },
    {
      quantity:
        'a blower listed with “cycloidal” rotors of that size: what its displacement is, typed in as measured',
      origin: 'measured',
      source: WARE,
      unit: 'cu ft a turn',
      values: [[0.51, entered.blower.displacement / foot ** 3]],
      within: { share: 1e-9 },
      because: 'a typed displacement must reach the cycle as it stands',
    },
    {
      quantity: 'the same listed displacement against pure cycloids',
      origin: 'measured',
      source: WARE,
      unit: 'cu ft a turn',
      values: [[0.51, cycloidDisplacement(9.5 * inch, 11 * inch, 2) / foot ** 3]],
      within: { share: 0.13 },
      because: 'known to be too small, see the note above; the band holds the size of the gap',
    },
    {
      quantity: 'farthest centre of a lobe’s arc over the pitch radius, two and three lobes',
      origin: 'published',
      source: 'Litvin & Fuentes, Gear Geometry and Applied Theory, 2004, ch. 13',
      unit: '',
      values: (
        [
          [2, 0.9288],
          [3, 0.967],
        ] as const
      ).map(([lobes, limit]) => [limit, lobeArc(sectionAt('circular arc', lobes, 1)).b / 0.02]),
      within: { amount: 1e-4 },
      because: DIGITS,
    },
  ];
}

export const blower = (): Subject => ({
  title: 'Blower',
  note:
    'A published machine with rotors called cycloidal, 9.5 in in diameter and 11 in long, is listed at 0.51 cu ft a turn; pure cycloids of that size sweep 0.451, an eighth less. ' +
    'Tips longer than pure cycloids allow, or waists cut thinner, would do that: circular arcs of the same tips reach 0.913 D²L, which would be 0.52 cu ft. The summary does not say which. ' +
    'So a displacement that was measured can be typed in and stands above the one that follows from the shape.',
  comparisons: [...ideal, stepped(), ...kinds(), ...rotors()],
  unproven: [
    'Maps of centrifugal blowers: slip, work and choking hold for the theory; efficiency over flow, surge and losses at high Mach number are typical inputs on no measured wheel.',
    'Intercoolers beyond their definition, and relief valves whose disc has mass or pops open.',
    'Slip. No measured slip of a small blower with stated gaps was found; the coefficient of the clearances decides it. The leak test of the program measures it on the blower at hand.',
    'Bearing, gear and windage drag, and heat given off by the casing: typical inputs, on no measured machine.',
    'Pulses of a real plenum, which are stronger than the geometric ripple.',
  ],
});
