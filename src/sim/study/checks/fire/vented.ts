import { orificeMassFlow } from '../../../exchange/orifice.ts';
import type { ChargeFire } from './charge-fire.ts';

/** Steps over the burn: twice as many change the vented pressure by less than a thousandth. */
const STEPS = 4000;

export interface Venting {
  readonly volume: number;
  readonly pressure: number;
  readonly temperature: number;
  /** Of the vent, coefficient counted [m^2]; it is wide open above `cracking` [Pa]. */
  readonly area: number;
  readonly cracking: number;
  readonly outside: number;
  /** Time in which the flame crosses the volume [s]. */
  readonly burnTime: number;
}

/**
 * Highest pressure of one well-mixed volume that burns and vents [Pa].
 *
 *   burned share (t / t_b)^3 of a ball from its middle;   dm = -mdot dt,   dU = -mdot h dt,   mdot as through an orifice
 *
 * Valid: what leaves is a sample of all that is there, fresh and burned. A lid's inertia is not counted, so the figure is on the low
 * side. Numerics: explicit steps, temperature by Newton.
 * Source: first law; cubic growth of a flame ball.
 */
export function ventedPressure(fire: ChargeFire, venting: Venting): number {
  const { volume, area, cracking, outside, burnTime } = venting;
  let T = venting.temperature;
  let mass = (venting.pressure * volume) / (fire.freshGasConstant * T);
  let energy = mass * fire.freshEnergy(T);
  let highest = 0;
  const step = burnTime / STEPS;
  for (let i = 0; i <= STEPS; i++) {
    const burned = (i / STEPS) ** 3;
    const u = () => burned * fire.burnedEnergy(T) + (1 - burned) * fire.freshEnergy(T);
    const cv = () => burned * fire.burnedHeat(T) + (1 - burned) * fire.freshHeat(T);
    for (let k = 0; k < 5; k++) T += (energy / mass - u()) / cv();
    const R = burned * fire.burnedGasConstant + (1 - burned) * fire.freshGasConstant;
    const p = (mass * R * T) / volume;
    highest = Math.max(highest, p);
    if (p <= cracking) continue;
    const out = step * orificeMassFlow(area, p, T, outside, 1 + R / cv(), R);
    energy -= out * (u() + R * T);
    mass -= out;
  }
  return highest;
}
