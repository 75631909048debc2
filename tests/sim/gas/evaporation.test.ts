import { describe, expect, it } from 'vitest';
import { AIR } from '../../../src/sim/gas/air.ts';
import { withOil } from '../../../src/sim/gas/blend.ts';
import { molarMassOf } from '../../../src/sim/gas/constituent.ts';
import { evaporateInto } from '../../../src/sim/gas/evaporation.ts';
import { liquidEnthalpy, stoichiometricAirFuelRatio } from '../../../src/sim/gas/fuel.ts';
import { FUELS } from '../../../src/sim/gas/fuels.ts';
import { enthalpy, specificHeat } from '../../../src/sim/gas/polynomial.ts';
import { saturationPressure } from '../../../src/sim/gas/saturation.ts';

const { petrol, methanol, ethanol } = FUELS;
const p = 101_325;

describe('evaporateInto', () => {
  it('leaves the air at its temperature when nothing evaporates', () => {
    const result = evaporateInto(petrol, 14.6, 293.15, p, 0);
    expect(result.temperature).toBe(293.15);
    expect(result.evaporatedShare).toBe(0);
    expect(result.saturated).toBe(false);
  });

  it('cools stoichiometric petrol, wholly evaporated in hot air, by 15 K to the upper bound of latent heat over the air alone (24 K)', () => {
    const afr = stoichiometricAirFuelRatio(petrol);
    const result = evaporateInto(petrol, afr, 330, p, 1);
    const bound = petrol.latentHeat / (afr * specificHeat(AIR, 320));
    expect(result.evaporatedShare).toBe(1);
    expect(330 - result.temperature).toBeGreaterThan(15);
    expect(330 - result.temperature).toBeLessThan(bound);
    expect(bound).toBeCloseTo(23.8, 1);
  });

  it('stops stoichiometric methanol at saturation: less than a quarter evaporates from air at 293 K, where 180 K would be the bound', () => {
    const afr = stoichiometricAirFuelRatio(methanol);
    const result = evaporateInto(methanol, afr, 293.15, p, 1);
    expect(result.saturated).toBe(true);
    expect(result.evaporatedShare).toBeLessThan(0.25);
    const moles = { air: afr / molarMassOf(AIR), vapour: result.evaporatedShare / methanol.molarMass };
    const share = moles.vapour / (moles.vapour + moles.air);
    expect(
      Math.abs((share * p) / saturationPressure(methanol.saturation, result.temperature) - 1),
    ).toBeLessThan(1e-9);
    expect(methanol.latentHeat / (afr * specificHeat(AIR, 290))).toBeGreaterThan(175);
  });

  it('conserves enthalpy with the heat still wanted from the walls, to 1e-9 of the latent heat', () => {
    for (const fuel of [petrol, methanol, ethanol, withOil(petrol, 0.04)])
      for (const wanted of [0.1, 0.5, 1])
        for (const T of [260, 293.15, 340]) {
          const { temperature, heatFromWalls } = evaporateInto(fuel, 12, T, p, wanted);
          const before = 12 * enthalpy(AIR, T) + liquidEnthalpy(fuel, T);
          const after = 12 * enthalpy(AIR, temperature) + enthalpy(fuel.vapour, temperature);
          expect(Math.abs(before + heatFromWalls - after)).toBeLessThan(1e-9 * 1e6);
        }
  });

  it('evaporates more, and cools more, the hotter the air and the lower the pressure', () => {
    const at = (T: number, pressure: number) => evaporateInto(methanol, 6, T, pressure, 1);
    expect(at(320, p).evaporatedShare).toBeGreaterThan(at(290, p).evaporatedShare);
    expect(at(290, p / 2).evaporatedShare).toBeGreaterThan(at(290, p).evaporatedShare);
    expect(at(290, p / 2).temperature).toBeLessThan(at(290, p).temperature);
  });

  it('never evaporates the oil', () => {
    const fuel = withOil(petrol, 0.1);
    expect(evaporateInto(fuel, 14, 400, p, 1).evaporatedShare).toBeCloseTo(1 - fuel.involatileShare, 12);
  });
});
