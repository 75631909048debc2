import { FIELDS, HOLDERS } from '../../../src/design/fields.ts';

/** One thing in which designs differ in kind, and what it may be. */
export interface Factor {
  readonly name: string;
  readonly levels: readonly Level[];
}

export interface Level {
  readonly name: string;
  /** Puts it into a design as typed. */
  readonly put: (data: Data) => void;
}

export type Data = Record<string, unknown>;

/** Sets a value at a path of open positions, its groups made where they are missing; lists at their first item. */
export function putAt(data: Data, path: string, value: unknown): void {
  const steps = path.replaceAll('[]', '.0').split('.');
  let place: Record<string, unknown> = data;
  steps.slice(0, -1).forEach((step, i) => {
    if (place[step] === undefined || place[step] === null) place[step] = steps[i + 1] === '0' ? [] : {};
    place = place[step] as Record<string, unknown>;
  });
  place[steps.at(-1)!] = value;
}

const level = (name: string, ...puts: readonly (readonly [path: string, value: unknown])[]): Level => ({
  name,
  put: (data) => puts.forEach(([path, value]) => putAt(data, path, value)),
});

/** A list of one item's copies, the first as it is in the base design. */
function repeated(data: Data, path: string, count: number): void {
  const [group, key] = path.split('.') as [string, string];
  const holder = data[group] as Record<string, unknown[]>;
  holder[key] = Array.from({ length: count }, () => structuredClone(holder[key]![0]));
}

/** What a choice needs beside itself to be a design. */
const NEEDS: Readonly<Record<string, readonly (readonly [string, unknown])[]>> = {
  'windows.scavenging.law=table': [
    ['windows.scavenging.inside', [0, 0.4, 0.7, 1]],
    ['windows.scavenging.leaving', [0, 0.1, 0.6, 1]],
  ],
  'fuel.mixture=main jet': [['fuel.feed', 'carburettor']],
};

/** Choices and switches of the schema, each with all that it may be: new ones join by themselves. */
const ofSchema = (): Factor[] => [
  ...FIELDS.filter(({ kind }) => kind === 'choice' || kind === 'boolean').map(({ path, kind, choices }) => ({
    name: path,
    levels: (kind === 'boolean' ? [true, false] : choices).map((value) =>
      level(String(value), ...(NEEDS[`${path}=${String(value)}`] ?? []), [path, value]),
    ),
  })),
  ...HOLDERS.filter(({ nullable }) => nullable).map(({ path }) => ({
    name: path,
    levels: [
      level('off', [path, null]),
      {
        name: 'on',
        put: (data: Data) => {
          // What a choice inside it has put stays.
          const there = path.split('.').reduce<unknown>((at, step) => (at as Data | undefined)?.[step], data);
          if (typeof there !== 'object' || there === null) putAt(data, path, {});
        },
      },
    ],
  })),
];

/** Numbers that make another network, by hand. */
const ofNetwork: readonly Factor[] = [
  {
    name: 'cylinders in a row',
    levels: [1, 2, 3].map((n) => level(String(n), ['crank.rows[].cylinders', n])),
  },
  {
    name: 'rows',
    levels: [
      { name: '1', put: () => undefined },
      {
        name: '2',
        put: (data) => {
          repeated(data, 'crank.rows', 2);
          const { rows } = data['crank'] as { rows: Data[] };
          rows[1]!['throw_deg'] = 180;
          rows[1]!['collector'] = 1;
        },
      },
    ],
  },
  {
    name: 'collectors',
    levels: [1, 2].map((count) => ({
      name: String(count),
      put: (data: Data) => {
        repeated(data, 'exhaust.collectors', count);
        const { rows } = data['crank'] as { rows: Data[] };
        rows.at(-1)!['collector'] = count;
      },
    })),
  },
  { name: 'blowers', levels: [1, 2].map((n) => level(String(n), ['blower.count', n])) },
  { name: 'lobes', levels: [2, 3, 4].map((n) => level(String(n), ['blower.lobes', n])) },
  { name: 'helix', levels: [0, 60].map((n) => level(`${n}°`, ['blower.helix_deg', n])) },
  {
    name: 'gears',
    levels: [
      level('direct', ['blower.gears', []]),
      level('36:24', ['blower.gears', [{ driver: 36, driven: 24 }]]),
      level('37:20, five turns', ['blower.gears', [{ driver: 37, driven: 20 }]]),
      level('36:17, averaged', ['blower.gears', [{ driver: 36, driven: 17 }]]),
    ],
  },
  {
    name: 'rods',
    levels: [
      level('plain', ['crank.knuckleRadius_mm', 0]),
      level('articulated', ['crank.knuckleRadius_mm', 22]),
    ],
  },
];

/**
 * The network first: switches hang on rows and collectors that stand.
 *
 * @param most - levels of each factor of the network that are taken, the first ones; fewer make smaller, cheaper engines
 */
export const factors = (most: Readonly<Record<string, number>> = {}): readonly Factor[] => [
  ...ofNetwork.map(({ name, levels }) => ({ name, levels: levels.slice(0, most[name] ?? levels.length) })),
  ...ofSchema(),
];

/** One cylinder, a blower that repeats within two turns: what fits into the tests. */
export const SMALL = { 'cylinders in a row': 1, rows: 1, collectors: 1, gears: 2 };
