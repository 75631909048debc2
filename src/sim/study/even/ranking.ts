import type { Candidate } from './candidates.ts';

/** By what ways are ranked; less is better in each. */
export const MEASURES = [
  'largestGap',
  'torqueRipple',
  'chargeSpread',
  'worstBackflow',
  'pinImbalance',
  'hiddenBarrels',
] as const;
export type Measure = (typeof MEASURES)[number];

export interface Measures extends Readonly<Record<Measure, number>> {
  /** What it comes to [W]; no measure, since the arrangement hardly moves it. */
  readonly brakePower: number;
}

export type Alternative = Candidate &
  (
    | { readonly measures: Measures; readonly reason: null }
    | { readonly measures: null; readonly reason: string }
  );

/** By code units, the same everywhere. */
export const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Figures to which two ways count as equal in a measure. */
const FIGURES = 3;
const rounded = (value: number): number => Number(value.toPrecision(FIGURES));

/**
 * Ways with an answer, best first by one measure; those equal in it to three figures by the next ones in their order, then by name.
 */
export function rank(ways: readonly Alternative[], by: Measure): readonly Alternative[] {
  const order = [by, ...MEASURES.filter((each) => each !== by)];
  const solved = ways.filter((way) => way.measures !== null);
  return solved.sort((a, b) => {
    for (const measure of order) {
      const difference = rounded(a.measures![measure]) - rounded(b.measures![measure]);
      if (difference !== 0) return difference;
    }
    return compareText(a.key, b.key);
  });
}

/** Ways that another one is at least as good as in every measure, and better in one: by their names. */
export function outdone(ways: readonly Alternative[]): ReadonlyMap<string, string> {
  const solved = rank(ways, MEASURES[0]);
  const found = new Map<string, string>();
  for (const way of solved) {
    const better = solved.find(
      (other) =>
        MEASURES.every((each) => rounded(other.measures![each]) <= rounded(way.measures![each])) &&
        MEASURES.some((each) => rounded(other.measures![each]) < rounded(way.measures![each])),
    );
    if (better) found.set(way.key, better.key);
  }
  return found;
}
