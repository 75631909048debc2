import type { CycleSystem } from './system.ts';

/**
 * Scales of the unknowns of the period map, the whole state followed by the cylinders' memory: one over a node's mass for its
 * constituents, over its thermal energy m c_v T for its energy; see Memory for the rest. From the gas now unpacked.
 */
export function weigh(system: CycleSystem, weights: Float64Array): void {
  const { gas, memory } = system;
  const n = gas.set.count;
  for (let node = 0; node < gas.dynamicCount; node++) {
    const at = node * gas.stride;
    for (let k = 0; k < n; k++) weights[at + k] = 1 / gas.mass[node];
    weights[at + n] = 1 / (gas.heatCapacity[node] * gas.temperature[node]);
  }
  memory.weigh(weights.subarray(system.stateSize));
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
 * Makes a possible state of an extrapolated start of a period. A constituent that came out below zero takes what the last
 * period ended with, and the energy that belongs to it; a node that departs by more than half goes back altogether, and so does the memory of a cylinder where a number is negative. A start is only a guess: nothing reported depends
 * on it.
 */
export function keepFeasible(
  system: CycleSystem,
  proposal: Float64Array,
  gx: Float64Array,
  weights: Float64Array,
): void {
  const { gas, memory, stateSize } = system;
  const { stride, set } = gas;
  for (let node = 0; node < gas.dynamicCount; node++) {
    const at = node * stride;
    let departure = 0;
    for (let k = 0; k < stride; k++) {
      if (k < set.count && proposal[at + k] < 0) {
        proposal[at + set.count] += (gx[at + k] - proposal[at + k]) * gas.energyOf[node * set.count + k];
        proposal[at + k] = gx[at + k];
      }
      departure = Math.max(departure, Math.abs(proposal[at + k] - gx[at + k]) * weights[at + k]);
    }
    if (!(departure < 0.5)) proposal.set(gx.subarray(at, at + stride), at);
  }
  const perCylinder = memory.values.length / memory.cylinders;
  for (let at = stateSize; at < proposal.length; at += perCylinder) {
    for (let k = 0; k < perCylinder; k++) {
      if (proposal[at + k] >= 0) continue;
      proposal.set(gx.subarray(at, at + perCylinder), at);
      break;
    }
  }
}
