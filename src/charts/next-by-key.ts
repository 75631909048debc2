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
