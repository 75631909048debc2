import type { Gap } from './firing.ts';

/** Gaps that differ by less are alike [degrees]. */
const ALIKE_DEG = 0.05;

const alike = (a_deg: number, b_deg: number): boolean => Math.abs(a_deg - b_deg) < ALIKE_DEG;

export interface GapExtremes {
  /** NaN without any gap. */
  readonly least_deg: number;
  readonly most_deg: number;
  /** The two are not alike. */
  readonly uneven: boolean;
  /** Whether a gap is one of the smallest, or of the largest; none is while all are alike. */
  isLeast(gap_deg: number): boolean;
  isMost(gap_deg: number): boolean;
  /** How many are either, all of them while all are alike. */
  readonly count: number;
}

/** The smallest and the largest of the gaps; what is not finite does not count. */
export function gapExtremes(gaps: readonly Gap[]): GapExtremes {
  const sizes = gaps.map(({ gap_deg }) => gap_deg).filter(Number.isFinite);
  const least_deg = sizes.length > 0 ? Math.min(...sizes) : NaN;
  const most_deg = sizes.length > 0 ? Math.max(...sizes) : NaN;
  const uneven = most_deg - least_deg > ALIKE_DEG;
  return {
    least_deg,
    most_deg,
    uneven,
    isLeast: (gap_deg) => uneven && alike(gap_deg, least_deg),
    isMost: (gap_deg) => uneven && alike(gap_deg, most_deg),
    count: sizes.filter((size) => alike(size, least_deg) || alike(size, most_deg)).length,
  };
}

/** Between which cylinders a gap of this size lies: `1–2, 3–4`, two and how many more from four on. */
export function pairText(gaps: readonly Gap[], size_deg: number): string {
  const pairs = gaps.filter(({ gap_deg }) => alike(gap_deg, size_deg)).map(({ from, to }) => `${from}–${to}`);
  return pairs.length > 3 ? `${pairs.slice(0, 2).join(', ')} and ${pairs.length - 2} more` : pairs.join(', ');
}
