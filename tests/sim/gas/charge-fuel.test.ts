import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chargeFuel, fuelName, fuelParts } from '../../../src/sim/gas/charge-fuel.ts';
import { stoichiometricAirFuelRatio } from '../../../src/sim/gas/fuel.ts';
import { FUELS } from '../../../src/sim/gas/fuels.ts';

const fed = (fuel: string, second: string, share: number, oilShare = 0) =>
  chargeFuel({ fuel, blend: { fuel: second, share }, oilShare });
const e10 = fed('petrol', 'ethanol', 0.1);
const e85 = fed('petrol', 'ethanol', 0.85);

describe('chargeFuel', () => {
  it('needs 14.01 kg of air for a kilogram of E10, and 9.80 kg for one of E85', () => {
    // By hand. CH1.87: 1.4675 O2 to 13.896 g; C2H6O: 3 O2 to 46.069 g; air 28.965 g/mol with 20.946 % O2: 14.603 and 9.005.
    // Masses of a litre, 0.9 x 745 and 0.1 x 794 g: 10.588 % ethanol; 0.15 x 745 and 0.85 x 794 g: 85.795 %.
    expect(stoichiometricAirFuelRatio(e10)).toBeCloseTo(0.89412 * 14.603 + 0.10588 * 9.005, 2);
    expect(stoichiometricAirFuelRatio(e85)).toBeCloseTo(0.14205 * 14.603 + 0.85795 * 9.005, 2);
  });

  it('counts octane by mole: 22.0 % of the molecules of E10 are ethanol, RON 97.9', () => {
    // 670.5 g / 110 g/mol and 79.4 g / 46.069 g/mol: 6.0955 and 1.7235 mol.
    expect(e10.ron).toBeCloseTo(95 + (1.7235 / 7.819) * 13, 2);
    expect(e10.mon).toBeCloseTo(85 + (1.7235 / 7.819) * 7, 2);
  });

  it('evaporates a kilogram of E85 with what 142 g of petrol and 858 g of ethanol take', () => {
    expect(e85.latentHeat / 1e3).toBeCloseTo(0.14205 * 350 + 0.85795 * 921, 1);
  });

  it('puts oil in the place of blend by volume: 3 % of E85 weigh 0.97 x 786.65 + 0.03 x 880 kg/m^3', () => {
    expect(fed('petrol', 'ethanol', 0.85, 0.03).liquidDensity).toBeCloseTo(0.97 * 786.65 + 26.4, 10);
  });

  it('is the same fuel whichever of the two is named first', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (share) => {
        const one = fed('methanol', 'isooctane', share);
        const other = fed('isooctane', 'methanol', 1 - share);
        for (const key of ['molarMass', 'lowerHeatingValue', 'ron', 'latentHeat'] as const)
          expect(Math.abs(one[key] / other[key] - 1)).toBeLessThan(1e-12);
      }),
      { seed: 20, numRuns: 50 },
    );
  });

  it('is the one fuel where none of the other is there', () => {
    expect(fed('petrol', 'ethanol', 0)).toBe(FUELS['petrol']);
    expect(fed('petrol', 'ethanol', 1)).toBe(FUELS['ethanol']);
    expect(chargeFuel({ fuel: 'methanol', blend: null, oilShare: 0 })).toBe(FUELS['methanol']);
  });
});

describe('fuelName', () => {
  it('says what is in it', () => {
    expect(fuelName({ fuel: 'petrol', blend: { fuel: 'ethanol', share: 0.1 } })).toBe(
      'petrol with 10 % ethanol',
    );
    expect(fuelName({ fuel: 'petrol', blend: { fuel: 'ethanol', share: 1 } })).toBe('ethanol');
  });
});

describe('fuelParts', () => {
  it('share the volume, none of them with nothing', () => {
    const volumes = (share: number) =>
      fuelParts({ fuel: 'petrol', blend: { fuel: 'ethanol', share } }).map(({ volume }) => volume);
    expect(volumes(0.25)).toEqual([0.75, 0.25]);
    expect(volumes(1)).toEqual([1]);
  });
});
