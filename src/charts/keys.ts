import type { Key } from './chart-types.ts';

interface Drawn {
  readonly label: string;
  readonly colour: string;
  readonly dashed?: boolean;
}

/** A curve's key looks as the curve does. */
export const curveKey = ({ label, colour, dashed = false }: Drawn): Key => ({
  label,
  colour,
  mark: dashed ? 'dashed' : 'line',
});

/** How an earlier result is drawn in every chart. */
export const PINNED_KEY: Key = { label: 'pinned', colour: 'var(--quiet-ink)', mark: 'dashed' };
