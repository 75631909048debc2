/** How far values of one kind lie apart, in their own unit. */
export interface Spread {
  readonly mean: number;
  readonly least: number;
  readonly most: number;
  /** most - least. */
  readonly range: number;
  /** Standard deviation of all of them: these are no sample. */
  readonly deviation: number;
}

/** Spread of at least one value. */
export function spreadOf(values: readonly number[]): Spread {
  const mean = values.reduce((sum, each) => sum + each, 0) / values.length;
  const variance = values.reduce((sum, each) => sum + (each - mean) ** 2, 0) / values.length;
  const [least, most] = [Math.min(...values), Math.max(...values)];
  return { mean, least, most, range: most - least, deviation: Math.sqrt(variance) };
}
