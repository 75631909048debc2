import type { Model } from '../src/sim/index.ts';
import { modelOf, solveAt } from './engines.ts';
import { finer, largestDifference } from './error.ts';
import type { Bench } from './row.ts';

const FROM_RPM = 1500;
const TO_RPM = 9500;
const POINTS = 20;

const speeds = Array.from({ length: POINTS }, (_, i) => FROM_RPM + ((TO_RPM - FROM_RPM) * i) / (POINTS - 1));
const solveAll = (model: Model) => speeds.map((speed) => solveAt(model, speed));

/** A sweep in one thread, every point from the cold start, as a worker would solve it. */
export const sweep: Bench = () => {
  const model = modelOf('lovage-7');
  const points = solveAll(model);
  const errors = points.map(({ result }, i) => largestDifference(result, finer(model, speeds[i])));
  return [
    {
      work: `Lovage 7, ${POINTS} points, ${FROM_RPM} to ${TO_RPM} rpm`,
      run: () => solveAll(model),
      pieces: 1,
      unit: 'ms',
      steps: points.reduce((sum, { next }) => sum + next.mesh.length - 1, 0),
      cycles: points.reduce((sum, { result }) => sum + result.cycles, 0),
      error: Math.max(...errors),
    },
  ];
};
