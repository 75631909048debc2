import type { SolvedPoint } from '../src/sim/results/point-result.ts';

/** The figures that the way of solving may not move: IMEP, plenum pressure, delivery ratio, every cylinder's trapped mass. */
export const figuresOf = ({ engine, plenum, cylinders }: SolvedPoint): number[] => [
  engine.imep,
  plenum.meanPressure,
  engine.deliveryRatio,
  ...cylinders.map(({ trappedMass }) => trappedMass),
];

/** Largest relative difference of two lists of figures [-]. */
export const largestDifference = (a: readonly number[], b: readonly number[]): number =>
  Math.max(...b.map((value, i) => Math.abs(a[i] / value - 1)));
