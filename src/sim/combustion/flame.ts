import type { Charge } from '../engine.ts';
import { fuelParts } from '../gas/charge-fuel.ts';
import type { FlameSpeedLaw } from './flame-speed.ts';
import { FLAME_SPEED_LAWS, laminarFlameSpeed } from './flame-speed.ts';

/** The flame of a fuel or of a blend: the law of each part, and its share of the heat that they give. */
export type Flame = readonly { readonly law: FlameSpeedLaw; readonly energyShare: number }[];

/** Flame of a charge's fuel, oil apart; shares by lower heating value. */
export function flameOf(charge: Pick<Charge, 'fuel' | 'blend'>): Flame {
  const laws: Readonly<Record<string, FlameSpeedLaw>> = FLAME_SPEED_LAWS;
  const parts = fuelParts(charge).map(({ key, fuel, volume }) => ({
    law: laws[key]!,
    energy: volume * fuel.liquidDensity * fuel.lowerHeatingValue,
  }));
  const whole = parts.reduce((sum, { energy }) => sum + energy, 0);
  return parts.map(({ law, energy }) => ({ law, energyShare: energy / whole }));
}

/**
 * Laminar flame speed of a blend [m/s]: Le Chatelier's rule over shares of energy.
 *
 *   1 / S = sum alpha_i / S_i        alpha_i: share of the heating value; S_i: of the part alone, see laminarFlameSpeed
 *
 * @param flame - see flameOf; one part alone keeps its law
 *
 * Valid: hydrocarbons with ethanol or methanol, within the few percent that the parts' own laws are good for. Chemistry between
 * the fuels is left out.
 * Source: Sileghem et al., Energy & Fuels 26:4721, 2012.
 */
export function flameSpeed(
  flame: Flame,
  temperature: number,
  pressure: number,
  lambda: number,
  burnedMoleFraction: number,
): number {
  if (flame.length === 1)
    return laminarFlameSpeed(flame[0]!.law, temperature, pressure, lambda, burnedMoleFraction);
  let slowness = 0;
  for (const { law, energyShare } of flame)
    slowness += energyShare / laminarFlameSpeed(law, temperature, pressure, lambda, burnedMoleFraction);
  return 1 / slowness;
}
