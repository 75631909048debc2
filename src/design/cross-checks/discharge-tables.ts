import { formatNumber } from '../format-quantity.ts';
import type { Design } from '../schema/design.ts';
import type { CrossFault } from './cross-fault.ts';

/** Places of a discharge table rise over their whole range, and every pair of them has its coefficient. */
export function* dischargeTables({ windows }: Design): Generator<CrossFault> {
  for (const name of ['exhaustTable', 'transferTable'] as const) {
    const table = windows[name];
    if (!table) continue;
    const at = (key: keyof typeof table): string => `windows.${name}.${key}`;
    const uses = (Object.keys(table) as (keyof typeof table)[]).map(at);
    const { openings, pressureRatios } = table;
    const first = openings[0];
    if (openings.length < 2 || first !== 0 || openings.at(-1) !== 1) {
      const runs = openings.length === 0 ? 'is empty' : `runs from ${first} to ${openings.at(-1)}`;
      yield { path: at('openings'), message: `${runs}; allowed: from 0 to 1`, uses };
    }
    if (pressureRatios[0] !== 1) {
      const begins = pressureRatios.length === 0 ? 'is empty' : `begins at ${pressureRatios[0]}`;
      yield { path: at('pressureRatios'), message: `${begins}; allowed: from 1 on`, uses };
    }
    for (const key of ['openings', 'pressureRatios'] as const) {
      const i = table[key].findIndex((value, k, list) => k > 0 && value <= list[k - 1]!);
      if (i < 0) continue;
      const pair = `${formatNumber(table[key][i]!)} follows ${formatNumber(table[key][i - 1]!)}`;
      yield { path: at(key), message: `${pair}; allowed: each above the one before`, uses };
    }
    const wanted = openings.length * pressureRatios.length;
    for (const key of ['forward', 'backward'] as const) {
      const { length } = table[key];
      if (length === wanted) continue;
      const product = `${openings.length} openings × ${pressureRatios.length} pressure ratios`;
      yield { path: at(key), message: `has ${length} numbers; allowed: ${wanted}, ${product}`, uses };
    }
  }
}
