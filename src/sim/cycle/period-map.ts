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
 * Makes a possible start of a period of an extrapolated one. A start is only a guess: nothing reported depends on it.
 *
 * Bold: goes from what the last period ended with only as far towards the proposal as no mass and no memory falls below
 * zero. Where that is hardly any way, and when not bold, a node with a negative mass goes back to what the last period
 * ended with, and a negative memory too. In either case a node that departs by more than half goes back.
 */
export function keepFeasible(
  system: CycleSystem,
  proposal: Float64Array,
  gx: Float64Array,
  weights: Float64Array,
  bold: boolean,
): void {
  const { stateSize, gas } = system;
  const { stride } = gas;
  const mustBePositive = (i: number) => i >= stateSize || i % stride !== stride - 1;
  let way = 1;
  for (let i = 0; i < proposal.length; i++) {
    if (mustBePositive(i) && proposal[i] < 0) way = Math.min(way, (0.95 * gx[i]) / (gx[i] - proposal[i]));
  }
  if (bold && way >= 0.1) {
    for (let i = 0; i < proposal.length; i++) proposal[i] = gx[i] + way * (proposal[i] - gx[i]);
  }
  for (let at = 0; at < stateSize; at += stride) {
    let feasible = true;
    for (let i = at; i < at + stride; i++) {
      if (mustBePositive(i) && proposal[i] < 0) feasible = false;
      if (!(Math.abs(proposal[i] - gx[i]) * weights[i] < 0.5)) feasible = false;
    }
    if (!feasible) proposal.set(gx.subarray(at, at + stride), at);
  }
  for (let i = stateSize; i < proposal.length; i++) if (!(proposal[i] >= 0)) proposal[i] = gx[i];
}
