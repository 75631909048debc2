import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AIR } from '../../../src/sim/gas/air.ts';
import {
  boreFor,
  fuelThroughJet,
  jetFor,
  jetLambda,
  throatSpeed,
  venturiDepression,
} from '../../../src/sim/exchange/jet.ts';
import type { Venturi } from '../../../src/sim/exchange/jet.ts';

const before = { pressure: 101325, temperature: 293.15 };
const venturi: Venturi = {
  bore: 0.024,
  airDischarge: 0.9,
  jet: 1.2e-3,
  jetDischarge: 0.75,
  lift: 0,
  fuelDensity: 745,
};
const area = (Math.PI / 4) * 0.024 ** 2;
const density = before.pressure / (AIR.gasConstant * before.temperature);

describe('venturiDepression', () => {
  it('tends to Bernoulli’s mdot²/(2 rho (Cd A)²) for a small flow: within 0.1 % at 0.5 g/s', () => {
    const flow = 0.5e-3;
    const bernoulli = flow ** 2 / (2 * density * (0.9 * area) ** 2);
    expect(venturiDepression(flow, venturi, before)! / bernoulli).toBeCloseTo(1, 3);
  });

  it('has no answer from 96.1 g/s on: choked, 241.24 kg/s per m² at 101 325 Pa and 288.15 K, less by the root of temperatures', () => {
    const choked = 241.24 * 0.9 * area * Math.sqrt(288.15 / 293.15);
    expect(venturiDepression(0.998 * choked, venturi, before)).toBeGreaterThan(0.4 * before.pressure);
    expect(venturiDepression(1.002 * choked, venturi, before)).toBeNull();
  });
});

describe('throatSpeed', () => {
  it('is sqrt(2 Δp / rho) for a small depression: 12.9 m/s at 100 Pa', () => {
    expect(throatSpeed(100, before)).toBeCloseTo(Math.sqrt(200 / density), 1);
  });
});

describe('fuelThroughJet', () => {
  it('draws nothing until the depression lifts the fuel: 5 mm of petrol are 36.5 Pa', () => {
    const lifted = { ...venturi, lift: 5e-3 };
    expect(fuelThroughJet(36.4, lifted)).toBe(0);
    expect(fuelThroughJet(36.7, lifted)).toBeGreaterThan(0);
  });

  it('passes Cd A sqrt(2 rho Δp): 1.464 g/s through 1.2 mm at 2 kPa', () => {
    // 0.75 * 1.13097e-6 m² * sqrt(2 * 745 * 2000) = 1.4643e-3
    expect(fuelThroughJet(2000, venturi)).toBeCloseTo(1.4643e-3, 7);
  });
});

describe('jetLambda', () => {
  it('without lift is nearly the same at small flows and richens with flow, as an elementary carburettor does', () => {
    const [low, middle, high] = [2e-3, 20e-3, 60e-3].map((flow) => jetLambda(flow, venturi, before, 14.6)!);
    // Incompressible: lambda = Cd A sqrt(rho_a) / (Cd_j A_j sqrt(rho_f)) / s.
    const flat =
      (0.9 * area * Math.sqrt(density)) / (0.75 * (Math.PI / 4) * 1.2e-3 ** 2 * Math.sqrt(745)) / 14.6;
    expect(low! / flat).toBeCloseTo(1, 3);
    expect(middle).toBeLessThan(low!);
    expect(high).toBeLessThan(middle!);
  });
});

describe('jetFor and boreFor', () => {
  it('give back the mixture and the depression that they were asked for', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2e-3, max: 50e-3, noNaN: true }),
        fc.double({ min: 0.7, max: 1.3, noNaN: true }),
        fc.double({ min: 0, max: 0.01, noNaN: true }),
        (flow, lambda, lift) => {
          const lifted = { ...venturi, lift };
          const jet = jetFor(lambda, flow, lifted, before, 14.6);
          if (jet === null) {
            expect(venturiDepression(flow, lifted, before)!).toBeLessThanOrEqual(745 * 9.80665 * lift);
            return;
          }
          expect(jetLambda(flow, { ...lifted, jet }, before, 14.6)).toBeCloseTo(lambda, 9);
        },
      ),
      { seed: 5, numRuns: 100 },
    );
    const bore = boreFor(2500, 30e-3, 0.9, before)!;
    expect(venturiDepression(30e-3, { ...venturi, bore }, before)).toBeCloseTo(2500, 2);
    expect(boreFor(0.6 * before.pressure, 30e-3, 0.9, before)).toBeNull();
  });
});
