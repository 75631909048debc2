import type { CycleSystem } from './system.ts';

/** Weight of an inertial flow's error beside that of masses: with 1 Lovage 7 takes twice the steps for the same figures, within 3e-4 [-]. */
const FLOW_SHARE = 0.25;
/** Weight of an error in a zone's volume share beside that of masses [-]. */
const ZONE_SHARE = 0.25;

/**
 * Error of a step relative to each node's mass and thermal energy, to what inertial flows are there for, and of zones’ shares of volume, largest of all; see RosenbrockW.e.
 *
 *   max( |dm_k| / m,  |dU - sum u_k dm_k| / (m c_v T) )
 */
export function stepError(
  { gas, inertia, zones }: Pick<CycleSystem, 'gas' | 'inertia' | 'zones'>,
  stages: readonly Float64Array[],
  weights: Float64Array,
): number {
  const n = gas.set.count;
  let largest = 0;
  for (let node = 0; node < gas.dynamicCount; node++) {
    const at = node * gas.stride;
    let thermal = 0;
    let mass = 0;
    for (let k = 0; k <= n; k++) {
      let error = 0;
      for (let i = 0; i < weights.length; i++) error += weights[i] * stages[i][at + k];
      if (k < n) {
        thermal -= error * gas.energyOf[node * n + k];
        mass = Math.max(mass, Math.abs(error));
      } else thermal += error;
    }
    const relative = Math.max(
      mass / gas.mass[node],
      Math.abs(thermal) / (gas.heatCapacity[node] * gas.temperature[node]),
    );
    if (!(relative <= largest)) largest = relative;
  }
  for (let j = 0; zones !== null && j < zones.count; j++) {
    let error = 0;
    for (let i = 0; i < weights.length; i++) error += weights[i] * stages[i][zones.stateAt + j];
    const relative = ZONE_SHARE * Math.abs(error);
    if (!(relative <= largest)) largest = relative;
  }
  for (let i = 0; inertia !== null && i < inertia.count; i++) {
    let error = 0;
    for (let j = 0; j < weights.length; j++) error += weights[j] * stages[j][inertia.stateAt + i];
    const relative = (FLOW_SHARE * Math.abs(error)) / inertia.scale[i];
    if (!(relative <= largest)) largest = relative;
  }
  return largest === largest ? largest : Infinity;
}
