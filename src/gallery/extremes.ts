/** Figures that charts must bear; made up, the same every time. */
export interface Extreme<T> {
  readonly name: string;
  readonly data: T;
}

const steps = (count: number): number[] => Array.from({ length: count }, (_, i) => i);
const wave = (i: number, count: number): number => 1 + 0.2 * Math.sin((7.3 * i) / count) * Math.cos(2.1 * i);

export const columns: readonly Extreme<{ xs: number[]; a: number[]; b: number[] }>[] = [
  {
    name: 'usual',
    data: { xs: steps(40), a: steps(40).map((i) => wave(i, 40)), b: steps(40).map((i) => 0.5 * wave(i, 40)) },
  },
  {
    name: 'gaps',
    data: {
      xs: steps(40),
      a: steps(40).map((i) => (i % 9 < 3 ? NaN : wave(i, 40))),
      b: steps(40).map((i) => (i > 12 ? NaN : 0.5)),
    },
  },
  { name: 'all missing', data: { xs: steps(5), a: steps(5).map(() => NaN), b: steps(5).map(() => NaN) } },
  { name: 'empty', data: { xs: [], a: [], b: [] } },
  { name: 'one point', data: { xs: [3000], a: [1.04], b: [0.5] } },
  { name: 'all zero', data: { xs: steps(10), a: steps(10).map(() => 0), b: steps(10).map(() => 0) } },
  {
    name: 'huge beside small',
    data: { xs: steps(20), a: steps(20).map((i) => 10 ** (i / 2)), b: steps(20).map((i) => i) },
  },
  {
    name: 'negative and tiny',
    data: { xs: steps(20), a: steps(20).map((i) => -1e-6 * i), b: steps(20).map((i) => 2e-6 - 1e-7 * i) },
  },
];

/** The same against something earlier: of other steps, of one point, of nothing. */
export const pinnedColumns = [
  { name: 'other steps', before: { xs: [5, 15, 25, 45], ys: [0.9, 1.1, 1.0, 0.7] } },
  { name: 'one point', before: { xs: [12], ys: [0.8] } },
  { name: 'gaps and huge', before: { xs: [0, 10, 20, 30], ys: [3e6, NaN, NaN, -2e6] } },
  { name: 'nothing', before: { xs: [], ys: [] } },
].map(({ name, before }) => ({ name, data: { ...columns[0]!.data, before } }));

export interface Cylinders {
  readonly names: string[];
  readonly values: number[];
  readonly others: number[];
}

const cylinders = (names: string[], of: (i: number) => number): Cylinders => ({
  names,
  values: names.map((_, i) => of(i)),
  others: names.map((_, i) => 0.6 * of(i + 1)),
});
const inRows = (rows: number, each: number): string[] =>
  steps(rows * each).map((i) => `${'ABCD'[Math.floor(i / each)]}${(i % each) + 1}`);
const seven = steps(7).map((i) => String(i + 1));

export const sets: readonly Extreme<Cylinders>[] = [
  { name: 'one cylinder', data: cylinders(['1'], () => 0.5) },
  { name: 'seven', data: cylinders(seven, (i) => wave(i, 7)) },
  { name: '56 in four rows', data: cylinders(inRows(4, 14), (i) => wave(i, 56)) },
  { name: 'gaps', data: cylinders(seven, (i) => (i % 3 === 1 ? NaN : wave(i, 7))) },
  { name: 'all zero', data: cylinders(seven, () => 0) },
  { name: 'huge and negative', data: cylinders(seven, (i) => (i === 2 ? -4e8 : 1e9 * wave(i, 7))) },
];

/** Top dead centres in rows, and what lies between them. */
export function dial(tdcs_deg: readonly (readonly number[])[]) {
  const letters = 'ABCD';
  const rings = tdcs_deg.map((row, r) => ({
    label: `row ${letters[r]}`,
    events: row.map((tdc_deg, i) => ({
      label: tdcs_deg.length > 1 ? `${letters[r]}${i + 1}` : `${i + 1}`,
      tdc_deg,
      exhaust_deg: (tdc_deg + 97) % 360,
      transfer_deg: (tdc_deg + 116) % 360,
      selected: r === 0 && i === 0,
    })),
  }));
  const order = rings.flatMap((ring) => ring.events).sort((a, b) => a.tdc_deg - b.tdc_deg);
  const gaps = order.map((event, i) => {
    const before = order.at(i - 1)!;
    return {
      from: before.label,
      to: event.label,
      at_deg: event.tdc_deg,
      gap_deg: i > 0 ? event.tdc_deg - before.tdc_deg : event.tdc_deg - before.tdc_deg + 360,
    };
  });
  return { rings, gaps, even_deg: order.length > 0 ? 360 / order.length : 360 };
}

const evenRow = (count: number, from: number): number[] =>
  steps(count).map((i) => (from + (360 * i) / count) % 360);

export const dials: readonly Extreme<ReturnType<typeof dial>>[] = [
  { name: 'one cylinder', data: dial([[0]]) },
  { name: 'seven, uneven', data: dial([[0, 52.6, 107.4, 157, 203, 252.6, 307.4]]) },
  { name: 'two rows that fire in pairs', data: dial([evenRow(5, 0), evenRow(5, 0)]) },
  { name: '56 in four rows', data: dial([0, 6.4, 12.9, 19.3].map((from) => evenRow(14, from))) },
];

const flow = (label: string, value: number, colour: string) => ({ label, value, colour: `var(--${colour})` });

export const balances: readonly Extreme<{
  source: ReturnType<typeof flow>;
  flows: ReturnType<typeof flow>[];
}>[] = [
  {
    name: 'usual',
    data: {
      source: flow('fuel', 100, 'fresh'),
      flows: [flow('brake', 22, 'cylinder'), flow('walls', 18, 'heat-crown'), flow('exhaust', 60, 'burned')],
    },
  },
  {
    name: 'thin ones',
    data: {
      source: flow('fuel', 100, 'fresh'),
      flows: [
        ...steps(6).map((i) => flow(`thin ${i + 1}`, 0.01 * (i + 1), 'heat-head')),
        flow('exhaust', 99.79, 'burned'),
      ],
    },
  },
  {
    name: 'driven from outside',
    data: {
      source: flow('fuel', 4, 'fresh'),
      flows: [flow('brake', -3, 'cylinder'), flow('friction', 2, 'quiet-ink'), flow('exhaust', 5, 'burned')],
    },
  },
  { name: 'nothing', data: { source: flow('fuel', 0, 'fresh'), flows: [flow('brake', NaN, 'cylinder')] } },
  {
    name: 'huge',
    data: { source: flow('fuel', 9.7e8, 'fresh'), flows: [flow('exhaust', 9.7e8, 'burned')] },
  },
];
