/** Places of so many bars side by side [px]. */
export interface BarPlaces {
  /** From one bar to the next. */
  readonly step: number;
  readonly width: number;
  /** One bar in so many has room for its name. */
  readonly nameEvery: number;
  middle(index: number): number;
  /** Of the bar whose column a place is in; that at the end for a place beyond it. */
  indexAt(px: number): number;
}

/** Room for a name [px]. */
const NAME = 26;

export function barPlaces(count: number, left: number, right: number): BarPlaces {
  const step = Math.max(1, right - left) / Math.max(1, count);
  return {
    step,
    width: Math.min(46, Math.max(2, 0.68 * step)),
    nameEvery: Math.max(1, Math.ceil(NAME / step)),
    middle: (index) => left + (index + 0.5) * step,
    indexAt: (px) => Math.min(count - 1, Math.max(0, Math.floor((px - left) / step))),
  };
}
