import { roundedWindowArea } from '../../../src/sim/geometry/window-area.ts';
import { buildGeometry } from '../../../src/sim/geometry/build-geometry.ts';
import type { CylinderGeometry } from '../../../src/sim/geometry/build-geometry.ts';
import { deg, mm, mm2 } from '../../../src/sim/units.ts';
import { sound } from '../../design/designs.ts';
import { engineWith, referenceRows } from '../../sim/geometry/workshop.ts';
import { referenceFive } from '../../sim/geometry/reference-five.ts';
import type { Comparison, Subject } from './comparison.ts';

const INDEPENDENT = 'worked out apart from this program';

/** Rows of the table beside ours, one column of it. */
function column(place: number, ours: (cylinder: CylinderGeometry) => number): Comparison['values'] {
  const { cylinders } = sound(buildGeometry(referenceFive()));
  return referenceRows('articulated-a.csv').map((row) => [row[place]!, ours(cylinders[row[0]!]!)]);
}

const articulated = (): readonly Comparison[] => [
  {
    quantity:
      'top and bottom dead centres of five cylinders with articulated rods (crank 20, rod 90, knuckles 20 mm)',
    origin: 'tabulated',
    source: `tests/reference/articulated-a.csv, ${INDEPENDENT}`,
    unit: '°',
    values: [...column(1, (c) => c.tdc / deg), ...column(2, (c) => c.bdc / deg)],
    within: { amount: 1e-3 },
    because: 'digits of the table',
  },
  {
    quantity: 'their strokes',
    origin: 'tabulated',
    source: `tests/reference/articulated-a.csv, ${INDEPENDENT}`,
    unit: 'mm',
    values: column(3, (c) => c.stroke / mm),
    within: { amount: 1e-6 },
    because: 'digits of the table',
  },
  {
    quantity: 'opening and closing of their exhaust and transfer windows',
    origin: 'tabulated',
    source: `tests/reference/articulated-a.csv, ${INDEPENDENT}`,
    unit: '°',
    values: [
      ...column(4, (c) => c.exhaust.opensAfterOwnTdc / deg),
      ...column(5, (c) => c.exhaust.closesAfterOwnTdc / deg),
      ...column(6, (c) => c.transfer.opensAfterOwnTdc / deg),
      ...column(7, (c) => c.transfer.closesAfterOwnTdc / deg),
    ],
    within: { amount: 1e-3 },
    because: 'digits of the table',
  },
  {
    quantity:
      'compression ratios of five cylinders at one barrel height (crank 25, rod 95, knuckles 24 mm, master 8)',
    origin: 'closed form',
    source: 'geometry by hand: 8.00, 7.16, 7.75, 7.75, 7.16',
    unit: '',
    values: sound(buildGeometry(engineWith({ count: 5 }))).cylinders.map((cylinder, j) => [
      [8, 7.16, 7.75, 7.75, 7.16][j]!,
      cylinder.compressionRatio,
    ]),
    within: { amount: 0.005 },
    because: 'half of the last digit',
  },
];

const windows: readonly Comparison[] = [
  {
    quantity: 'area uncovered of a window of 14 × 10 mm with corners of 3 mm, 12 heights',
    origin: 'tabulated',
    source: `tests/reference/window.csv, ${INDEPENDENT}`,
    unit: 'mm²',
    values: referenceRows('window.csv').map(([e, area]) => [
      area!,
      roundedWindowArea(14 * mm, 10 * mm, 3 * mm, e! * mm) / mm2,
    ]),
    within: { amount: 5e-7 },
    because: 'half of the last digit',
  },
];

export const crankTrain = (): Subject => ({
  title: 'Crank train and windows',
  comparisons: [...articulated(), ...windows],
  unproven: [
    'Slack of rods and bearings, thermal growth, chamfers: a tenth of a millimetre in an edge is about a quarter of a degree.',
  ],
});
