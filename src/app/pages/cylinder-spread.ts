import { spreadOf } from '../../sim/study/even/spread.ts';
import type { Spread } from '../../sim/study/even/spread.ts';

/** How unequal the cylinders are in one figure. */
export interface CylinderSpread extends Spread {
  /** Which cylinder, by index; the first of equals. */
  readonly leastIndex: number;
  readonly mostIndex: number;
  /** range / mean [-]; NaN where the mean is 0. */
  readonly relativeRange: number;
}

/** Null where a value is missing: a spread over some of the cylinders would mislead. */
export function cylinderSpread(values: readonly number[]): CylinderSpread | null {
  if (values.length === 0 || !values.every(Number.isFinite)) return null;
  const spread = spreadOf(values);
  return {
    ...spread,
    leastIndex: values.indexOf(spread.least),
    mostIndex: values.indexOf(spread.most),
    relativeRange: spread.mean === 0 ? NaN : spread.range / Math.abs(spread.mean),
  };
}
