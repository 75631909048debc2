interface Reach {
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  /** Steps that the page keys take at once. */
  readonly page?: number;
}

const arrows = new Map([
  ['ArrowRight', 1],
  ['ArrowUp', 1],
  ['ArrowLeft', -1],
  ['ArrowDown', -1],
]);
const pages = new Map([
  ['PageUp', 1],
  ['PageDown', -1],
]);

/** Where a key takes a slider, as such keys do everywhere; null for any other key. */
export function nextByKey(key: string, { value, min, max, step, page = 10 }: Reach): number | null {
  if (key === 'Home') return min;
  if (key === 'End') return max;
  const steps = arrows.get(key) ?? (pages.has(key) ? page * pages.get(key)! : undefined);
  return steps === undefined ? null : Math.min(max, Math.max(min, value + steps * step));
}

/** The same for a slider that has no ends, as the hand of a dial: past `max` it goes on from `min`, and no key takes it to an end. */
export function nextRound(key: string, reach: Reach): number | null {
  const { min, max } = reach;
  if (key === 'Home') return min;
  const next = key === 'End' ? null : nextByKey(key, { ...reach, min: -Infinity, max: Infinity });
  if (next === null) return null;
  const turn = max - min;
  return min + ((((next - min) % turn) + turn) % turn);
}
