import { modelOf, solveAt } from './engines.ts';
import { finer, largestDifference } from './error.ts';
import type { Bench } from './row.ts';

const SPEED_RPM = 6000;

/** Twice the cylinders: how the cost of a point grows with the engine. */
export const sizes: Bench = () => {
  const model = modelOf('angelica-14');
  const { result, next } = solveAt(model, SPEED_RPM);
  return [
    {
      work: `Angelica 14, ${SPEED_RPM} rpm, cold`,
      run: () => solveAt(model, SPEED_RPM),
      pieces: 1,
      unit: 'ms',
      steps: next.mesh.length - 1,
      cycles: result.cycles,
      error: largestDifference(result, finer(model, SPEED_RPM)),
    },
  ];
};
