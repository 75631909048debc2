import type { Cursor } from '../charts/chart-types.ts';
import { degrees } from '../charts/format.ts';
import type { Crank } from './crank.svelte.ts';

/** The shared crank angle as a chart's cursor. */
export const turnCursor = (crank: Crank): Cursor => ({
  value: crank.angle_deg,
  name: 'crank angle',
  min: 0,
  max: 360,
  step: 1,
  format: degrees,
  onmove: (value) => crank.set(value),
});
