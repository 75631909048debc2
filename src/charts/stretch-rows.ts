import type { Stretch } from './chart-types.ts';

/** Of one row of stretches under a chart [px]. */
export const ROW_HEIGHT = 15;

/** Stretches of one label share a row, in the order in which labels first come. */
export const stretchRows = (stretches: readonly Stretch[]): string[] => [
  ...new Set(stretches.map(({ label }) => label)),
];
