import { describe, expect, it } from 'vitest';
import type { Engine } from '../../../src/sim/index.ts';
import { orificeMassFlow } from '../../../src/sim/exchange/orifice.ts';
import { AIR } from '../../../src/sim/gas/air.ts';
import { enthalpy, entropy, internalEnergy, specificHeat } from '../../../src/sim/gas/polynomial.ts';
import { findRoot } from '../../../src/sim/numerics/find-root.ts';
import { at, changed } from '../../helpers/engines.ts';
import { rigOf, sealedEngine } from '../../helpers/sealed.ts';

const SPEED_RPM = 1000;
const TURN_TIME = 60 / SPEED_RPM;
const AMBIENT = { pressure: 101_325, temperature: 293.15 };
const VOLUME = 1e-3;
const R = AIR.gasConstant;

/** A vessel of one litre behind an orifice, to or from still air: the collector of an engine whose windows are shut. */
function vessel(CdA: number, surroundings = AMBIENT): Engine {
  const engine = sealedEngine();
  const [first] = engine.collectors;
  return changed(engine, {
    ambient: surroundings,
    collectors: [
      changed(first, {
        volume: VOLUME,
        outletArea: CdA / 0.8,
        outletDischarge: { forward: 0.8, backward: 0.8 },
      }),
    ],
  });
}

interface Moment {
  readonly time: number;
  readonly m: number;
  readonly p: number;
  readonly T: number;
}

function watch(engine: Engine, p: number, T: number): Moment[] {
  const rig = rigOf(engine, at(SPEED_RPM));
  const { gas, model, omega } = rig.system;
  const node = model.network.at.collectors[0];
  gas.pack(rig.state, node, p, T, [1, 0, 0]);
  const moments: Moment[] = [];
  rig.run(1e-6, (theta) =>
    moments.push({
      time: theta / omega,
      m: gas.mass[node],
      p: gas.pressure[node],
      T: gas.temperature[node],
    }),
  );
  return moments;
}

describe('Period of a vessel that fills', () => {
  // The heat capacity ratio of the air outside, which sets the choked flow.
  const cp = specificHeat(AIR, AMBIENT.temperature);
  const gamma = cp / (cp - R);
  const p0 = 0.002 * AMBIENT.pressure;
  // Choked all the way: at most 0.45 of ambient at the end, 1.4 times as hot as outside.
  const CdA = 2.5e-5;
  const choked = orificeMassFlow(CdA, AMBIENT.pressure, AMBIENT.temperature, 0, gamma, R);
  const moments = watch(vessel(CdA), p0, AMBIENT.temperature);

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
  const low = { pressure: 50_000, temperature: 293.15 };
  const CdA = 5e-5;
  const [p0, T0] = [10 * low.pressure, 400];
  const moments = watch(vessel(CdA, low), p0, T0);

  it('falls as (1 + (γ−1)/2 · t/τ)^(−2γ/(γ−1)) while choked, to 0.3 %, with γ held at its mean', () => {
    const gammaAt = (T: number) => specificHeat(AIR, T) / (specificHeat(AIR, T) - R);
    const last = moments.at(-1)!;
    expect(last.p).toBeGreaterThan(2 * low.pressure);
    expect(last.p).toBeLessThan(0.5 * p0);
    const gamma = 0.5 * (gammaAt(T0) + gammaAt(last.T));
    const flow = orificeMassFlow(CdA, p0, T0, 0, gamma, R);
    const tau = moments[0].m / flow;
    for (const { time, p } of moments) {
      const closed = (1 + (((gamma - 1) / 2) * time) / tau) ** ((-2 * gamma) / (gamma - 1));
      expect(Math.abs(p / p0 / closed - 1)).toBeLessThan(3e-3);
    }
  });

  it('cools at constant entropy, as what stays behind does, to 1e-5 of R', () => {
    const s = (T: number, p: number) => entropy(AIR, T) - R * Math.log(p);
    for (const { T, p } of moments) expect(Math.abs(s(T, p) - s(T0, p0))).toBeLessThan(1e-5 * R);
  });
});
