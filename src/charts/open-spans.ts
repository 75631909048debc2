export interface Span {
  readonly from: number;
  readonly to: number;
}

/**
 * The stretches of a sampled turn over which a window stands open, its area above zero. An edge lies at the last
 * sample that is still shut, so a span is never drawn shorter than it was sampled.
 */
export function openSpans(angle: ArrayLike<number>, openArea: ArrayLike<number>): Span[] {
  const spans: Span[] = [];
  let from: number | null = null;
  for (let i = 0; i < angle.length; i++) {
    const open = openArea[i]! > 0;
    if (open && from === null) from = angle[Math.max(0, i - 1)]!;
    if (!open && from !== null) {
      spans.push({ from, to: angle[i]! });
      from = null;
    }
  }
  if (from !== null) spans.push({ from, to: angle[angle.length - 1]! });
  return spans;
}
