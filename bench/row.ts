/** One line of the table: a piece of work, timed, and how good its answer is. */
export interface Row {
  readonly work: string;
  /** Does it once; what comes back only keeps it from being optimised away. */
  readonly run: () => unknown;
  /** How many pieces `run` does: the time shown is that of one [-]. */
  readonly pieces: number;
  readonly unit: 'ms' | 'us';
  /** Steps of one period's mesh and periods until it repeated; sums over the points of a sweep. Null where not asked. */
  readonly steps: number | null;
  readonly cycles: number | null;
  /** Relative, against a finer solution; null where there is nothing to be wrong. */
  readonly error: number | null;
}

/** Rows of one file, made ready: whatever is not to be timed is done here. */
export type Bench = () => readonly Row[];
