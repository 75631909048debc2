import { largestChange, weigh } from '../../src/sim/cycle/period-map.ts';
import { Period } from '../../src/sim/cycle/period.ts';
import { buildSchedule } from '../../src/sim/cycle/schedule.ts';
import { stepMethod } from '../../src/sim/cycle/step-method.ts';
import { CycleSystem } from '../../src/sim/cycle/system.ts';
import { rpm } from '../../src/sim/units.ts';
import { measure } from '../measure.ts';
import { NOTHING } from '../row.ts';
import type { Row, Rows } from '../row.ts';
import { modelOf, solveAt } from '../studies/engines.ts';

const SPEED_RPM = 6000;

/**
 * The two innermost pieces at the periodic state of Lovage 7: the right-hand side, over the states of one period, and a step,
 * over the steps of its mesh. The step's error is what the whole period ends with, against every step cut into eight.
 */
export const step: Rows = async function* () {
  const model = modelOf('lovage-7');
  const point = { speed: SPEED_RPM * rpm, throttle: 1 };
  const { next } = solveAt(model, SPEED_RPM);
  const { method } = stepMethod(model, point);
  const system = new CycleSystem(model, point);
  const period = new Period(system, buildSchedule(model.geometry.cylinders, model.drive.turns), method);
  period.mesh = next.mesh;
  const steps = next.mesh.length - 1;

  const followed = (parts: number): Float64Array => {
    const y = next.state.slice();
    system.memory.values.set(next.memory);
    const end = period.follow(y, false, undefined, parts);
    if (!end.ok) throw new Error(end.reason);
    return y;
  };

  const angles: number[] = [];
  const states: Float64Array[] = [];
  system.memory.values.set(next.memory);
  period.follow(next.state.slice(), false, (theta) => {
    angles.push(theta);
    states.push(presentState(system));
  });

  const weights = new Float64Array(next.state.length + next.memory.length);
  const fine = followed(8);
  const coarse = followed(1);
  weigh(system, weights);

  const rates = new Float64Array(system.size);
  const each = async (work: string, run: () => void): Promise<Row> => {
    const { median, spread } = await measure(run, null, 9);
    return { ...NOTHING, work, median: `${((1e6 * median) / steps).toFixed(2)} us`, spread };
  };
  yield await each(`one right-hand side, ${method.name} at ${SPEED_RPM} rpm`, () => {
    for (let i = 0; i < states.length; i++) {
      system.instant.theta = angles[i];
      system.rates(states[i], rates, false);
    }
  });
  yield {
    ...(await each(`one step, ${method.name} at ${SPEED_RPM} rpm`, () => void followed(1))),
    steps,
    error: largestChange(coarse, fine, weights),
  };
};

/** The state that the gas was unpacked from: m_k = m x_k, U = m h - p V. */
function presentState({ gas, stateSize }: CycleSystem): Float64Array {
  const state = new Float64Array(stateSize);
  const n = gas.set.count;
  for (let node = 0; node < gas.dynamicCount; node++) {
    const at = node * gas.stride;
    for (let k = 0; k < n; k++) state[at + k] = gas.mass[node] * gas.fraction[node * n + k];
    state[at + n] = gas.mass[node] * gas.enthalpy[node] - gas.pressure[node] * gas.volume[node];
  }
  return state;
}
