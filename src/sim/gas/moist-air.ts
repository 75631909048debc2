import type { Ambient } from '../engine.ts';
import { ZERO_CELSIUS } from '../units.ts';
import { AIR } from './air.ts';
import type { Constituent } from './constituent.ts';
import { molarMassOf } from './constituent.ts';
import { mixConstituents } from './mix-constituents.ts';
import { SPECIES, speciesConstituent } from './species.ts';

const STEAM = speciesConstituent(SPECIES.H2O);

/**
 * Pressure of water vapour in air [Pa].
 *
 *   p_w = phi 611.2 exp(17.62 t / (243.12 + t))       t [degrees Celsius]
 *
 * @param humidity    - phi, relative, 0 to 1 [-]
 * @param temperature - [K]
 *
 * Valid: -45 to 60 degrees Celsius, within 0.6 %. Source: Magnus form of Sonntag, Z. Meteorol. 70, 1990.
 */
export function vapourPressure(humidity: number, temperature: number): number {
  const t = temperature - ZERO_CELSIUS;
  return humidity * 611.2 * Math.exp((17.62 * t) / (243.12 + t));
}

/** Air as it is breathed. */
export interface BreathedAir {
  /** Dry air with its water vapour, as one gas. */
  readonly gas: Constituent;
  /** Water vapour over dry air, by amount [mol/mol]. */
  readonly waterPerAir: number;
  /** Share of dry air by mass [-]. */
  readonly dryShare: number;
}

/**
 * Ambient air with the water vapour that its humidity means.
 *
 *   n_w / n_dry = p_w / (p - p_w),   dry share = 1 / (1 + (n_w / n_dry) M_w / M_dry)
 *
 * Valid: as `vapourPressure`; ideal gases, p well above p_w. The vapour stays vapour: drops that form where moist air is chilled by
 * evaporating fuel are left out. Dry air is returned as it is. Source: Dalton's law.
 */
export function breathedAir({ pressure, temperature, humidity }: Ambient): BreathedAir {
  const steam = vapourPressure(humidity, temperature);
  if (steam === 0) return { gas: AIR, waterPerAir: 0, dryShare: 1 };
  const waterPerAir = steam / (pressure - steam);
  return {
    gas: mixConstituents('moist air', [
      { moles: 1, gas: AIR },
      { moles: waterPerAir, gas: STEAM },
    ]),
    waterPerAir,
    dryShare: 1 / (1 + (waterPerAir * molarMassOf(STEAM)) / molarMassOf(AIR)),
  };
}
