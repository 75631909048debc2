export interface Span {
  readonly from: number;
  readonly to: number;
}

/**
 * A stretch of the turn as it lies on an axis from 0 to `turn`: one piece, or two where it runs across the end.
 * A stretch as long as the turn is the whole axis.
 */
export function turnSpans(from: number, to: number, turn: number): Span[] {
  if (!(to > from)) return [];
  if (to - from >= turn) return [{ from: 0, to: turn }];
  const start = from - turn * Math.floor(from / turn);
  const end = start + (to - from);
  return end <= turn
    ? [{ from: start, to: end }]
    : [
        { from: 0, to: end - turn },
        { from: start, to: turn },
      ];
}
