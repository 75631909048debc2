import { loadDesign } from '../../src/cli/load-design.ts';
import { toEngine } from '../../src/design/to-engine.ts';
import type { Engine, Model, SolveOptions, Solution } from '../../src/sim/index.ts';
import { buildModel, solveToEnd } from '../../src/sim/index.ts';
import type { Outcome } from '../../src/sim/outcome.ts';
import type { SolvedPoint } from '../../src/sim/results/point-result.ts';
import { rpm } from '../../src/sim/units.ts';

/** What must be there: a bench without its preset is a bug. */
function sure<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new Error(outcome.faults.map(({ path, message }) => `${path}: ${message}`).join('\n'));
}

export const engineOf = (preset: string): Engine => toEngine(sure(loadDesign(preset, [])));
export const modelOf = (preset: string): Model => sure(buildModel(engineOf(preset)));

export type Solved = Solution & {
  readonly result: SolvedPoint;
  readonly next: NonNullable<Solution['next']>;
};

/** Solves with the throttle open; a bench of a point without an answer would be a bench of nothing. */
export function solveAt(model: Model, speed_rpm: number, options: SolveOptions = {}): Solved {
  const solution = solveToEnd(model, { speed: speed_rpm * rpm, throttle: 1 }, options);
  if (!solution.result.converged) throw new Error(`${speed_rpm} rpm: ${solution.result.reason}`);
  return solution as Solved;
}
