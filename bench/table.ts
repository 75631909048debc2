import type { Row } from './row.ts';

const COLUMNS = ['work', 'median', 'aim', 'spread', 'error', 'steps', 'cycles', 'ratio'] as const;
const WIDTHS = [70, 13, 9, 8, 9, 7, 8, 8];

const inColumns = (cells: readonly string[]): string =>
  cells.map((cell, i) => (i === 0 ? cell.padEnd(WIDTHS[i]) : cell.padStart(WIDTHS[i]))).join('');

export const tableHead = (): string => inColumns(COLUMNS);

export function tableLine({ work, median, aim, spread, error, steps, cycles, ratio }: Row): string {
  const or = (value: number | null, show: (value: number) => string): string =>
    value === null ? '-' : show(value);
  return inColumns([
    work,
    median,
    aim,
    or(spread, (share) => `±${(50 * share).toFixed(0)} %`),
    or(error, (relative) => relative.toExponential(1)),
    or(steps, String),
    or(cycles, String),
    or(ratio, (share) => share.toFixed(2)),
  ]);
}
