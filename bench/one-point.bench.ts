import type { SolveOptions } from '../src/sim/index.ts';
import type { Model } from '../src/sim/index.ts';
import { modelOf, solveAt } from './engines.ts';
import { finer, largestDifference } from './error.ts';
import type { Bench, Row } from './row.ts';

function pointRow(work: string, model: Model, speed_rpm: number, options: SolveOptions = {}): Row {
  const { result, next } = solveAt(model, speed_rpm, options);
  return {
    work,
    run: () => solveAt(model, speed_rpm, options),
    pieces: 1,
    unit: 'ms',
    steps: next.mesh.length - 1,
    cycles: result.cycles,
    error: largestDifference(result, finer(model, speed_rpm)),
  };
}

/** One operating point of Lovage 7, from the cold start and from a neighbour 2 % slower. */
export const onePoint: Bench = () => {
  const lovage = modelOf('lovage-7');
  const neighbour = solveAt(lovage, 6000 / 1.02).next;
  return [
    pointRow('Lovage 7, 6000 rpm, cold', lovage, 6000),
    pointRow('Lovage 7, 6000 rpm, from 2 % slower', lovage, 6000, { start: neighbour }),
    pointRow('Lovage 7, 1500 rpm, cold', lovage, 1500),
    pointRow('Lovage 7, 250 rpm, cold', lovage, 250),
  ];
};
