import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AIR } from '../../../src/sim/gas/air.ts';
import { molarMassOf } from '../../../src/sim/gas/constituent.ts';
import { elements } from '../../../src/sim/gas/elements.ts';
import { FUELS } from '../../../src/sim/gas/fuels.ts';
import { oxygenDemand, productMoles, sootLimit } from '../../../src/sim/gas/products.ts';
import { SPECIES } from '../../../src/sim/gas/species.ts';
import { readReference } from '../../helpers/read-reference.ts';

describe('productMoles', () => {
  it('gives the reference table for isooctane, lambda 0.7 to 1.3, to its digits', () => {
    const rows = readReference('products.csv');
    expect(rows).toHaveLength(6);
    for (const row of rows) {
      const moles = productMoles(SPECIES.isooctane.atoms, Number(row.lambda));
      for (const [key, value] of Object.entries(moles))
        expect(Math.abs(value - Number(row[key]))).toBeLessThan(6e-7);
    }
  });

  it('conserves every element and keeps every amount positive for any C, H, O fuel above its soot limit', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 20, noNaN: true }),
        fc.double({ min: 1, max: 4, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0.001, max: 3, noNaN: true }),
        fc.double({ min: 3, max: 4, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (C, ratio, oxygenShare, above, K, water) => {
          const fuel = elements({ C, H: ratio * C, O: oxygenShare * C });
          const lambda = Math.max(0, sootLimit(fuel)) + above;
          const n = productMoles(fuel, lambda, water, K);
          const oxygen = 2 * lambda * oxygenDemand(fuel) + fuel.O + water;
          expect(n.CO2 + n.CO).toBeCloseTo(C, 9);
          expect(2 * n.H2O + 2 * n.H2).toBeCloseTo(fuel.H + 2 * water, 9);
          expect(2 * n.CO2 + n.H2O + n.CO + 2 * n.O2).toBeCloseTo(oxygen, 9);
          for (const amount of Object.values(n)) expect(amount).toBeGreaterThanOrEqual(-1e-12);
          if (lambda < 1) expect((n.H2O * n.CO) / (n.CO2 * n.H2) / K).toBeCloseTo(1, 8);
        },
      ),
    );
  });

  it('meets the lean side at lambda 1 without a step', () => {
    const rich = productMoles(SPECIES.isooctane.atoms, 1 - 1e-9);
    const lean = productMoles(SPECIES.isooctane.atoms, 1);
    expect(rich.CO).toBeLessThan(1e-7);
    expect(rich.CO2).toBeCloseTo(lean.CO2, 7);
  });

  it('needs no special case at a water-gas constant of 1', () => {
    const n = productMoles(SPECIES.isooctane.atoms, 0.8, 0, 1);
    expect((n.H2O * n.CO) / (n.CO2 * n.H2)).toBeCloseTo(1, 12);
  });
});

describe('sootLimit', () => {
  it('leaves isooctane with CO and H2 alone at lambda 0.32', () => {
    const limit = sootLimit(SPECIES.isooctane.atoms);
    expect(limit).toBeCloseTo(0.32, 12);
    const n = productMoles(SPECIES.isooctane.atoms, limit);
    expect(n.CO2).toBeCloseTo(0, 9);
    expect(n.H2O).toBeCloseTo(0, 9);
  });

  it('is zero for methanol, whose oxygen makes all its carbon CO', () => {
    expect(sootLimit(FUELS.methanol.atoms)).toBe(0);
  });
});

describe('AIR', () => {
  it('weighs 28.96 g/mol', () => {
    expect(molarMassOf(AIR) * 1e3).toBeCloseTo(28.964, 3);
  });
});
