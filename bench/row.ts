import type { Cores } from './core/cores.ts';
import type { Measured } from './measure.ts';

/** One line of the table. What is null was not asked. */
export interface Row {
  readonly work: string;
  /** With its unit. */
  readonly median: string;
  /** What is aimed at, with its unit; empty where nothing is. */
  readonly aim: string;
  /** Between the quartiles of the runs, as a share of the median [-]. */
  readonly spread: number | null;
  /** Relative, largest of the figures in figures.ts, against a far finer solution. */
  readonly error: number | null;
  /** Steps of a period's mesh and periods until it repeated; sums over the points of a sweep. */
  readonly steps: number | null;
  readonly cycles: number | null;
  /** Time over that of the baseline. */
  readonly ratio: number | null;
}

/** A group of rows, each worked out when it is asked for. */
export type Rows = (cores: Cores) => AsyncIterable<Row>;

export const NOTHING: Row = {
  work: '',
  median: '',
  aim: '',
  spread: null,
  error: null,
  steps: null,
  cycles: null,
  ratio: null,
};

export const ms = (seconds: number): string => `${(1e3 * seconds).toFixed(1)} ms`;
export const times = (factor: number): string => `${factor.toFixed(2)} x`;

export const timed = ({ median, spread, ratio }: Measured): Pick<Row, 'median' | 'spread' | 'ratio'> => ({
  median: ms(median),
  spread,
  ratio,
});
