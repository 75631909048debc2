import { AIR_INDEX, FUEL_INDEX, LIQUID_INDEX } from '../gas/mixture.ts';
import type { GasStates } from './gas-states.ts';

/** What stood in a cylinder when all its windows had shut. */
export interface Trapped {
  mass: number;
  air: number;
  fuel: number;
  purity: number;
  /** Unburned share of the old gas, see Windows. */
  stale: number;
  pressure: number;
  temperature: number;
}

export const nothingTrapped = (): Trapped => ({
  mass: 0,
  air: 0,
  fuel: 0,
  purity: 0,
  stale: 0,
  pressure: 0,
  temperature: 0,
});

/**
 * Takes down what stands in a cylinder, from the gas now unpacked.
 *
 * @param purity - of it
 * @param stale  - see Trapped
 */
export function noteTrapped(
  into: Trapped,
  gas: GasStates,
  node: number,
  purity: number,
  stale: number,
): void {
  const base = node * gas.set.count;
  const mass = gas.mass[node];
  into.mass = mass;
  into.air = mass * gas.fraction[base + AIR_INDEX];
  into.fuel = mass * gas.fraction[base + FUEL_INDEX];
  if (gas.set.count > LIQUID_INDEX) into.fuel += mass * gas.fraction[base + LIQUID_INDEX];
  into.purity = purity;
  into.stale = stale;
  into.pressure = gas.pressure[node];
  into.temperature = gas.temperature[node];
}
