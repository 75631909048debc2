import { describe, expect, it } from 'vitest';
import type { Charge } from '../../../src/sim/engine.ts';
import { ELEMENTS } from '../../../src/sim/gas/elements.ts';
import { liquidEnthalpy } from '../../../src/sim/gas/fuel.ts';
import type { DesignMixture } from '../../../src/sim/gas/mixture.ts';
import { designMixture } from '../../../src/sim/gas/mixture.ts';
import { enthalpy } from '../../../src/sim/gas/polynomial.ts';

const ambient = { pressure: 101_325, temperature: 293.15, humidity: 0 };
const tropics = { pressure: 100_000, temperature: 308.15, humidity: 0.8 };
const petrolCharge: Charge = {
  fuel: 'petrol',
  blend: null,
  lambda: 0.9,
  lambdaOverSpeed: null,
  jet: null,
  oilShare: 0.02,
  feed: 'carburettor',
  evaporatedShare: 0.5,
  liquidGoesOn: false,
  dropDiameter: 30e-6,
  injection: { delay: 0, duration: 0.5 },
};

function solved(changes: Partial<Charge>, air = ambient): DesignMixture {
  const outcome = designMixture({ ...petrolCharge, ...changes }, air);
  if (!outcome.ok) throw new Error(outcome.faults.map((f) => f.message).join('; '));
  return outcome.value;
}
const cases: Partial<Charge>[] = [
  {},
  { lambda: 0.7 },
  { lambda: 1 },
  { lambda: 1.3, oilShare: 0 },
  { fuel: 'methanol', lambda: 0.8, oilShare: 0.05 },
  { fuel: 'ethanol', lambda: 1.1 },
  { fuel: 'isooctane', oilShare: 0 },
  { blend: { fuel: 'ethanol', share: 0.85 } },
  { fuel: 'methanol', blend: { fuel: 'isooctane', share: 0.3 }, lambda: 1.2, oilShare: 0 },
];
const inBothAirs = cases.flatMap((change) => [ambient, tropics].map((air) => [change, air] as const));

describe('designMixture', () => {
  it('conserves every element when air and fuel vapour become products, rich and lean, in dry air and in moist', () => {
    for (const [change, surroundings] of inBothAirs) {
      const { constituents, airFuelRatio } = solved(change, surroundings);
      const [air, fuel, products] = constituents;
      for (const element of ELEMENTS) {
        const before = airFuelRatio * air.elements[element] + fuel.elements[element];
        const after = (airFuelRatio + 1) * products.elements[element];
        expect(Math.abs(after - before)).toBeLessThan(1e-10 * (airFuelRatio + 1) * 40);
      }
    }
  });

  it('releases the heating value less what the CO and H2 keep, at 298.15 K to 1e-9, water or not', () => {
    for (const [change, surroundings] of inBothAirs) {
      const { constituents, fuel, airFuelRatio, heatingValue, unburnedEnergy } = solved(change, surroundings);
      const [air, , products] = constituents;
      const released =
        airFuelRatio * enthalpy(air, 298.15) +
        liquidEnthalpy(fuel, 298.15) -
        (airFuelRatio + 1) * enthalpy(products, 298.15);
      expect(Math.abs(released / (heatingValue - unburnedEnergy) - 1)).toBeLessThan(1e-9);
    }
  });

  it('leaves 22 % of isooctane in CO and H2 at an equivalence ratio of 1.2 and none when lean', () => {
    // From the water-gas root: 2.91 CO x 283.0 + 1.26 H2 x 241.8 kJ over 5100 kJ per mole of vapour.
    const rich = solved({ fuel: 'isooctane', lambda: 1 / 1.2, oilShare: 0 });
    expect(rich.unburnedEnergy / (rich.heatingValue + rich.fuel.latentHeat)).toBeCloseTo(0.221, 2);
    expect(solved({ lambda: 1.1 }).unburnedEnergy).toBe(0);
  });

  it('puts lambda times the stoichiometric ratio of air to each kilogram of fuel', () => {
    const { airFuelRatio, stoichiometricAirFuelRatio } = solved({ lambda: 0.85 });
    expect(airFuelRatio).toBeCloseTo(0.85 * stoichiometricAirFuelRatio, 12);
  });

  it('counts λ by dry air: 14.6 kg of it burn a kilogram of petrol, whatever water it brings along', () => {
    const moist = solved({ lambda: 1, oilShare: 0 }, tropics);
    const dry = solved({ lambda: 1, oilShare: 0 });
    expect(moist.airFuelRatio * moist.dryShare).toBeCloseTo(dry.airFuelRatio, 10);
    expect(moist.dryShare).toBeLessThan(0.98);
  });

  it('names every wrong field with its value and what is allowed', () => {
    const outcome = designMixture(
      {
        ...petrolCharge,
        fuel: 'coal',
        blend: { fuel: 'tar', share: 2 },
        oilShare: -0.1,
        evaporatedShare: NaN,
      },
      ambient,
    );
    expect(outcome.ok ? [] : outcome.faults).toEqual([
      { path: 'charge.fuel', message: 'fuel is coal; allowed: petrol, isooctane, methanol, ethanol' },
      {
        path: 'charge.blend.fuel',
        message: 'blend.fuel is tar; allowed: petrol, isooctane, methanol, ethanol',
      },
      { path: 'charge.blend.share', message: 'blend.share is 2; allowed: 0 to 1' },
      { path: 'charge.oilShare', message: 'oilShare is -0.1; allowed: 0 to below 1' },
      { path: 'charge.evaporatedShare', message: 'evaporatedShare is NaN; allowed: 0 to 1' },
    ]);
  });

  it('refuses a table of λ with such a mixture in it', () => {
    const outcome = designMixture(
      { ...petrolCharge, lambdaOverSpeed: { speeds: [100, 200], lambdas: [0.9, 0.3] } },
      ambient,
    );
    expect(outcome.ok ? '' : outcome.faults[0].message).toMatch(
      /^lambdaOverSpeed.lambdas is 0.3; allowed: above 0\.34/,
    );
  });

  it('refuses a mixture that would leave soot, and one without an end', () => {
    for (const lambda of [0.2, NaN, Infinity]) {
      const outcome = designMixture({ ...petrolCharge, lambda }, ambient);
      expect(outcome.ok ? '' : outcome.faults[0].message).toMatch(/^lambda is .*; allowed: above 0\.34/);
    }
  });
});
