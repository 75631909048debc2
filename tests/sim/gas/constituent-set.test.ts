import { describe, expect, it } from 'vitest';
import { AIR } from '../../../src/sim/gas/air.ts';
import { blend } from '../../../src/sim/gas/blend.ts';
import { ConstituentSet } from '../../../src/sim/gas/constituent-set.ts';
import { FUELS } from '../../../src/sim/gas/fuels.ts';
import { internalEnergy, specificHeat } from '../../../src/sim/gas/polynomial.ts';
import { productMoles, productsConstituent } from '../../../src/sim/gas/products.ts';

const e30 = blend('petrol with 30 % ethanol', [
  { volume: 0.7, fuel: FUELS.petrol },
  { volume: 0.3, fuel: FUELS.ethanol },
]);
const products = productsConstituent('products', productMoles(e30.atoms, 0.85));
const gases = [AIR, e30.vapour, products, FUELS.isooctane.vapour, FUELS.methanol.vapour];
const set = new ConstituentSet(gases);

describe('ConstituentSet', () => {
  it('agrees with the single-gas functions to 1e-12 on every piece, at and beside every break', () => {
    expect(e30.vapour.breaks).toEqual([1000, 1396]);
    const u = new Float64Array(set.count);
    const cv = new Float64Array(set.count);
    for (const T of [150, 298.15, 999.999, 1000, 1000.001, 1200, 1396, 1396.001, 2500, 3600]) {
      set.evaluate(T, u, cv, 0);
      gases.forEach((gas, i) => {
        const scale = Math.abs(internalEnergy(gas, T)) + gas.gasConstant * T;
        expect(Math.abs(u[i] - internalEnergy(gas, T)) / scale).toBeLessThan(1e-12);
        expect(Math.abs(cv[i] / (specificHeat(gas, T) - gas.gasConstant) - 1)).toBeLessThan(1e-12);
      });
    }
  });

  it('writes only count numbers, from the offset given', () => {
    const u = new Float64Array(set.count + 4).fill(7);
    const cv = new Float64Array(set.count + 4).fill(7);
    set.evaluate(500, u, cv, 2);
    for (const buffer of [u, cv]) expect([buffer[0], buffer[1], buffer[7], buffer[8]]).toEqual([7, 7, 7, 7]);
  });

  it('has u rising and cv positive from 150 to 3600 K, across every break', () => {
    const [uNow, uNext, cv] = [0, 0, 0].map(() => new Float64Array(set.count));
    for (let T = 150; T < 3600; T += 5) {
      set.evaluate(T, uNow, cv, 0);
      set.evaluate(T + 5, uNext, cv, 0);
      for (let i = 0; i < set.count; i++) {
        expect(uNext[i]).toBeGreaterThan(uNow[i]);
        expect(cv[i]).toBeGreaterThan(0);
      }
    }
  });
});
