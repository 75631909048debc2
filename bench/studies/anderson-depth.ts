/**
 * How many earlier periods Anderson iteration should remember: periods until Lovage 7 repeats, without damping. The mesh is
 * chosen in the first two periods and, `anew`, once more when a period changes less than 0.5 %; or it is `held` throughout.
 * Run: npx tsx bench/studies/anderson-depth.ts
 */
import { keepFeasible, largestChange, weigh } from '../../src/sim/cycle/period-map.ts';
import { Period } from '../../src/sim/cycle/period.ts';
import { buildSchedule } from '../../src/sim/cycle/schedule.ts';
import { runningGuess } from '../../src/sim/cycle/start.ts';
import { stepMethod } from '../../src/sim/cycle/step-method.ts';
import { CycleSystem } from '../../src/sim/cycle/system.ts';
import type { Model } from '../../src/sim/index.ts';
import { Anderson } from '../../src/sim/numerics/anderson.ts';
import { rpm } from '../../src/sim/units.ts';
import { modelOf } from './engines.ts';

const DEPTHS = [0, 2, 4, 6, 8, 12];
const SPEEDS_RPM = [250, 1500, 6000, 9500];
const MOST = 400;

/** Periods until a period changes nothing by more than 1e-6. */
function periods(model: Model, speed_rpm: number, depth: number, anew: boolean): string {
  const point = { speed: speed_rpm * rpm, throttle: 1 };
  const system = new CycleSystem(model, point);
  const knots = buildSchedule(model.geometry.cylinders, model.drive.turns);
  const { method, fine } = stepMethod(model, point);
  const period = new Period(system, knots, method);
  const start = runningGuess(system);
  const n = system.stateSize;
  const x = Float64Array.from([...start.state, ...start.memory]);
  const gx = x.slice();
  const weights = x.slice();
  const anderson = new Anderson(x.length, depth);
  let adapt = 2;
  let chosen = !anew;
  for (let cycle = 1; cycle <= MOST; cycle++) {
    const state = x.slice(0, n);
    system.memory.values.set(x.subarray(n));
    const end = adapt > 0 ? period.adapt(state, fine) : period.follow(state);
    if (!end.ok) return 'failed';
    gx.set(state);
    gx.set(system.memory.values, n);
    weigh(system, weights);
    const change = largestChange(x, gx, weights);
    if (adapt > 0) adapt--;
    else if (change < 1e-6) return String(cycle);
    else if (change < 5e-3 && !chosen) {
      chosen = true;
      adapt = 1;
      anderson.forget();
    } else {
      anderson.propose(x, gx, weights, x);
      keepFeasible(system, x, gx, weights, 'constituents');
      continue;
    }
    x.set(gx);
  }
  return `>${MOST}`;
}

const model = modelOf('lovage-7');
for (const anew of [true, false]) {
  console.log(anew ? 'mesh chosen anew' : 'mesh held');
  console.log(
    ['depth', ...SPEEDS_RPM.map((speed) => `${speed} rpm`)].map((cell) => cell.padStart(9)).join(''),
  );
  for (const depth of DEPTHS) {
    const cells = [String(depth), ...SPEEDS_RPM.map((speed) => periods(model, speed, depth, anew))];
    console.log(cells.map((cell) => cell.padStart(9)).join(''));
  }
}
