import type { CycleSystem } from './system.ts';

/**
 * Scales of the unknowns of the period map, the whole state followed by the cylinders' memory: one over a node's mass for its
 * constituents, over its thermal energy m c_v T for its energy, over what inertial flows are there for, zones' shares as they are; see Memory for the rest. From the gas now unpacked.
 */
export function weigh(system: CycleSystem, weights: Float64Array): void {
  const { gas, memory } = system;
  const n = gas.set.count;
  for (let node = 0; node < gas.dynamicCount; node++) {
    const at = node * gas.stride;
    for (let k = 0; k < n; k++) weights[at + k] = 1 / gas.mass[node];
    weights[at + n] = 1 / (gas.heatCapacity[node] * gas.temperature[node]);
  }
  const { inertia, zones } = system;
  if (zones) weights.fill(1, zones.stateAt, zones.stateAt + zones.count);
  if (inertia) for (let i = 0; i < inertia.count; i++) weights[inertia.stateAt + i] = 1 / inertia.scale[i];
  memory.weigh(weights.subarray(system.stateSize));
}

/** Weight of memory in guessing; 0.01 to 0.1 do as well, 1 costs a period or two [-]. */
const MEMORY_SHARE = 0.05;

/**
 * Scales of the unknowns for guessing the next start: what settles last are masses and energies on their way through the large
 * volumes, so a node counts by the root of what it holds; memory, inertial flows and zones follow from the state, so they count little.
 *
 * @param weights - of `weigh`, from the gas now unpacked
 */
export function emphasise(system: CycleSystem, weights: Float64Array, emphasis: Float64Array): void {
  const { gas } = system;
  let total = 0;
  for (let node = 0; node < gas.dynamicCount; node++) total += gas.mass[node];
  for (let node = 0; node < gas.dynamicCount; node++) {
    const share = Math.sqrt((gas.mass[node] * gas.dynamicCount) / total);
    for (let k = node * gas.stride; k < (node + 1) * gas.stride; k++) emphasis[k] = weights[k] * share;
  }
  for (let i = gas.dynamicCount * gas.stride; i < weights.length; i++)
    emphasis[i] = MEMORY_SHARE * weights[i];
}

/** Largest weighted change of any unknown; NaN where one is not a number. */
export function largestChange(x: Float64Array, gx: Float64Array, weights: Float64Array): number {
  let largest = 0;
  for (let i = 0; i < x.length; i++) {
    const change = Math.abs(gx[i] - x[i]) * weights[i];
    if (!(change <= largest)) largest = change;
  }
  return largest;
}

/**
 * What becomes of an extrapolated start where a mass or a memory falls below zero: `constituents` take that mass, and the
 * energy that belongs to it, from what the last period ended with; `nodes` take the whole node from there.
 */
export type Repair = 'constituents' | 'nodes';

/**
 * Makes a possible start of a period of an extrapolated one. Besides negative masses, a node that departs by more than half
 * goes back to what the last period ended with. A start is only a guess: nothing reported depends on it.
 */
export function keepFeasible(
  system: CycleSystem,
  proposal: Float64Array,
  gx: Float64Array,
  weights: Float64Array,
  repair: Repair,
): void {
  const { stateSize, gas } = system;
  const { stride, set } = gas;
  for (let node = 0; node < gas.dynamicCount; node++) {
    const at = node * stride;
    let feasible = true;
    for (let k = 0; k < stride; k++) {
      if (k < set.count && proposal[at + k] < 0) {
        if (repair === 'nodes') feasible = false;
        const missing = gx[at + k] - proposal[at + k];
        proposal[at + set.count] += missing * gas.energyOf[node * set.count + k];
        proposal[at + k] = gx[at + k];
      }
      if (!(Math.abs(proposal[at + k] - gx[at + k]) * weights[at + k] < 0.5)) feasible = false;
    }
    if (!feasible) proposal.set(gx.subarray(at, at + stride), at);
  }
  for (let i = stateSize; i < proposal.length; i++) if (!(proposal[i] >= 0)) proposal[i] = gx[i];
}
