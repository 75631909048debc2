import type { RotorGaps } from './clearances.ts';
import { ROTOR_MATERIALS } from './materials.ts';
import type { RotorMaterial } from './materials.ts';

/** Temperature at which drawings hold [K]. Source: ISO 1:2022. */
export const DRAWING_TEMPERATURE = 293.15;

export interface HeatedRotors {
  readonly tipDiameter: number;
  readonly length: number;
  readonly centreDistance: number;
  readonly material: RotorMaterial;
  readonly casingMaterial: RotorMaterial;
  /** [K] */
  readonly rotorTemperature: number;
  readonly casingTemperature: number;
}

/**
 * What heat takes from each gap: growth of the rotors less that of the casing which holds their axes.
 *
 *   tip   = D/2 (a_r dT_r - a_c dT_c),   mesh = C (a_r dT_r - a_c dT_c),   end = L (a_r dT_r - a_c dT_c)
 *
 * a expansion [1/K], dT above 293.15 K, r rotor, c casing; D, C, L [m]. Mesh: root and tip of the two rotors together grow as the
 * distance of the axes would. End: the whole, at the end away from the bearing that holds the rotor.
 *
 * @returns what the gaps lose, from cold to warm [m]; negative where they widen
 *
 * Valid: uniform temperatures. A casing hot on the discharge side alone also bends; bearings have play. An estimate.
 * Source: linear expansion.
 */
export function gapLoss(heated: HeatedRotors): RotorGaps {
  const rotor = ROTOR_MATERIALS[heated.material].expansion * (heated.rotorTemperature - DRAWING_TEMPERATURE);
  const casing =
    ROTOR_MATERIALS[heated.casingMaterial].expansion * (heated.casingTemperature - DRAWING_TEMPERATURE);
  const strain = rotor - casing;
  return {
    tip: (heated.tipDiameter / 2) * strain,
    mesh: heated.centreDistance * strain,
    end: heated.length * strain,
  };
}

/**
 * Temperatures of rotors and casing from what the model knows [K]: rotors have no way out for heat but the gas and run as hot as the
 * hottest of it, be it what they send on or what stands in the plenum behind the clearances; the casing stands half way between
 * that and the air around it.
 *
 * Valid: a rule for an estimate, typical; wet mixture keeps rotors cool, dry running and heat soaking in after a stop do not.
 */
export function blowerTemperatures(
  outletTemperature: number,
  plenumTemperature: number,
  ambientTemperature: number,
): { rotor: number; casing: number } {
  const rotor = Math.max(outletTemperature, plenumTemperature);
  return { rotor, casing: (rotor + ambientTemperature) / 2 };
}
