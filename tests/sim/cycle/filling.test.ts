import { describe, expect, it } from 'vitest';
import { AIR } from '../../../src/sim/gas/air.ts';
import { enthalpy, entropy, internalEnergy } from '../../../src/sim/gas/polynomial.ts';
import { findRoot } from '../../../src/sim/numerics/find-root.ts';
import {
  AMBIENT_AIR as AMBIENT,
  EMPTYING,
  TURN_TIME,
  emptiedTo,
  emptying,
  filling,
  fillingFlow,
  vessel,
  watch,
} from '../../helpers/vessel.ts';

const R = AIR.gasConstant;

describe('Period of a vessel that fills', () => {
  const { gamma } = AMBIENT;
  const choked = fillingFlow();
  const moments = filling();

  it('gains mass in proportion to time behind a choked orifice, to 1e-9 of what entered', () => {
    const [first, last] = [moments[0], moments.at(-1)!];
    expect(last.time).toBeCloseTo(TURN_TIME, 12);
    expect(last.p).toBeLessThan(0.5 * AMBIENT.pressure);
    expect(last.p).toBeGreaterThan(0.2 * AMBIENT.pressure);
    for (const { time, m } of moments.slice(1))
      expect(Math.abs((m - first.m) / (choked * time) - 1)).toBeLessThan(1e-9);
  });

  it('has the temperature at which m u(T) = m₀ u(T₀) + Δm h(T₀), to 1e-6, at every moment', () => {
    const T0 = AMBIENT.temperature;
    const m0 = moments[0].m;
    for (const { m, T } of moments) {
      const u = (m0 * internalEnergy(AIR, T0) + (m - m0) * enthalpy(AIR, T0)) / m;
      const balance = findRoot((x) => internalEnergy(AIR, x) - u, 250, 600, 1e-9);
      expect(Math.abs(T / balance - 1)).toBeLessThan(1e-6);
    }
  });

  it('tends to γ T₀ as an evacuated vessel does: 410 K from 293.15 K, to 0.5 %', () => {
    const { T, m } = moments.at(-1)!;
    expect(moments[0].m / m).toBeLessThan(0.01);
    expect(Math.abs(T / (gamma * AMBIENT.temperature) - 1)).toBeLessThan(5e-3);
  });

  it('comes to rest at the pressure outside and stays there, to 1e-6, through a wide opening', () => {
    const wide = watch(vessel(2e-4), 0.5 * AMBIENT.pressure, AMBIENT.temperature);
    const { p, T } = wide.at(-1)!;
    expect(Math.abs(p / AMBIENT.pressure - 1)).toBeLessThan(1e-6);
    // Half its final gas was compressed, half was pushed in: hotter than outside, cooler than from nothing.
    expect(T).toBeGreaterThan(AMBIENT.temperature * 1.05);
    expect(T).toBeLessThan(AMBIENT.temperature * gamma);
  });
});

describe('Period of a vessel that empties', () => {
  const { pressure: p0, temperature: T0 } = EMPTYING;
  const moments = emptying();

  it('falls as (1 + (γ−1)/2 · t/τ)^(−2γ/(γ−1)) while choked, to 0.3 %, with γ held at its mean', () => {
    const last = moments.at(-1)!;
    expect(last.p).toBeGreaterThan(2 * EMPTYING.outside);
    expect(last.p).toBeLessThan(0.5 * p0);
    for (const { time, p } of moments)
      expect(Math.abs(p / p0 / emptiedTo(moments, time) - 1)).toBeLessThan(3e-3);
  });

  it('cools at constant entropy, as what stays behind does, to 1e-5 of R', () => {
    const s = (T: number, p: number) => entropy(AIR, T) - R * Math.log(p);
    for (const { T, p } of moments) expect(Math.abs(s(T, p) - s(T0, p0))).toBeLessThan(1e-5 * R);
  });
});
