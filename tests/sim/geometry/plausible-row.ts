import fc from 'fast-check';
import { uniform } from './uniform.ts';

/** Rows of 1 to 14 cylinders of the proportions builders use: k up to 0.35 L, r from L/6 to L/3.2. */
export const plausibleRow = fc.record({
  count: fc.integer({ min: 1, max: 14 }),
  crankRadius: uniform(0.008, 0.06),
  rodOverRadius: uniform(3.2, 6),
  knuckleOverRod: fc.oneof(fc.constant(0), uniform(0, 0.35)),
});
