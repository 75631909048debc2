/**
 * Which method at which tolerance: steps of the mesh, periods, time and error of Lovage 7 at three speeds. The last lines
 * of each speed leave the stiff time derivative of moving volumes out. Run: npx tsx bench/studies/methods.ts
 */
import type { RosenbrockW } from '../../src/sim/numerics/rosenbrock-w.ts';
import { ros2, ros34pw2 } from '../../src/sim/numerics/rosenbrock-w.ts';
import { finer, largestDifference } from './error.ts';
import { modelOf, solveAt } from './engines.ts';

const SPEEDS_RPM = [250, 1500, 6000];
const withoutDrift = (method: RosenbrockW): RosenbrockW => ({
  ...method,
  name: `${method.name}, no drift`,
  d: new Float64Array(method.stages),
});
const CHOICES: readonly (readonly [RosenbrockW, readonly number[]])[] = [
  [ros2, [3e-3, 1e-3, 3e-4, 1e-4]],
  [ros34pw2, [1e-3, 3e-4, 1e-4, 3e-5]],
  [withoutDrift(ros2), [1e-3]],
  [withoutDrift(ros34pw2), [1e-4]],
];

const model = modelOf('lovage-7');
console.log('  rpm  method              tolerance  steps  periods  time [ms]  error');
for (const speed of SPEEDS_RPM) {
  const reference = finer(model, speed);
  for (const [method, tolerances] of CHOICES) {
    for (const tolerance of tolerances) {
      const began = performance.now();
      let outcome: string;
      try {
        const { result, next } = solveAt(model, speed, { method, tolerance });
        const took = performance.now() - began;
        outcome = [
          String(next.mesh.length - 1).padStart(5),
          String(result.cycles).padStart(7),
          took.toFixed(0).padStart(9),
          ` ${largestDifference(result, reference).toExponential(1)}`,
        ].join('  ');
      } catch (error) {
        outcome = `no answer: ${(error as Error).message}`;
      }
      console.log(
        `${String(speed).padStart(5)}  ${method.name.padEnd(18)}  ${tolerance.toExponential(0).padStart(9)}  ${outcome}`,
      );
    }
  }
}
