/** How unequal the cylinders are in one figure. */
export interface Spread {
  readonly mean: number;
  readonly least: number;
  readonly most: number;
  /** Which cylinder, by index; the first of equals. */
  readonly leastIndex: number;
  readonly mostIndex: number;
  /** (most - least) / mean [-]; NaN where the mean is 0. */
  readonly range: number;
  /** Standard deviation of the cylinders there are (divisor n), in the unit of the values. */
  readonly deviation: number;
}

/** Null where a value is missing: a spread over some of the cylinders would mislead. */
export function spreadOf(values: readonly number[]): Spread | null {
  if (values.length === 0 || !values.every(Number.isFinite)) return null;
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const least = Math.min(...values);
  const most = Math.max(...values);
  const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length;
  return {
    mean,
    least,
    most,
    leastIndex: values.indexOf(least),
    mostIndex: values.indexOf(most),
    range: mean === 0 ? NaN : (most - least) / Math.abs(mean),
    deviation: Math.sqrt(variance),
  };
}
