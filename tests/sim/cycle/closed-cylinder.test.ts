import { describe, expect, it } from 'vitest';
import { entropy } from '../../../src/sim/gas/polynomial.ts';
import { AIR } from '../../../src/sim/gas/air.ts';
import { at } from '../../helpers/engines.ts';
import { rigOf, sealedEngine } from '../../helpers/sealed.ts';

/** One turn of a cylinder that nothing enters or leaves, from top dead centre full of expanded air. */
function turnOnce(tolerance: number, speed_rpm = 3000) {
  const rig = rigOf(sealedEngine(), at(speed_rpm));
  const { system, state } = rig;
  const { gas, model } = system;
  const node = model.network.at.cylinders[0];
  const begun = state.slice(node * gas.stride, (node + 1) * gas.stride);
  const seen: { theta: number; p: number; T: number; V: number; gamma: number }[] = [];
  rig.run(tolerance, (theta) =>
    seen.push({
      theta,
      p: gas.pressure[node],
      T: gas.temperature[node],
      V: gas.volume[node],
      gamma: gas.gamma[node],
    }),
  );
  const ended = state.slice(node * gas.stride, (node + 1) * gas.stride);
  const { pistonWork } = system;
  const thermal = gas.heatCapacity[node] * gas.temperature[node];
  return { begun, ended, seen, work: state[pistonWork.recordAt], thermal };
}

/** s(T, p) of air [J/(kg K)]. */
const entropyAt = (T: number, p: number) => entropy(AIR, T) - AIR.gasConstant * Math.log(p / 101_325);

describe('Period of a closed cylinder', () => {
  it('keeps every kilogram and returns to its energy within 1e-4 of m cv T at an error of 1e-6 a step', () => {
    const { begun, ended, thermal } = turnOnce(1e-6);
    for (let k = 0; k < 3; k++) expect(ended[k]).toBe(begun[k]);
    expect(Math.abs(ended[3] - begun[3])).toBeLessThan(1e-4 * thermal);
  });

  it('does the work that its internal energy gives up, to round-off, however coarse the steps', () => {
    for (const tolerance of [1e-2, 1e-4, 1e-6]) {
      const { begun, ended, work, thermal } = turnOnce(tolerance);
      expect(Math.abs(ended[3] - begun[3] + work)).toBeLessThan(1e-12 * thermal);
    }
  });

  it('keeps its entropy over a turn to 1e-4 of R at an error of 1e-6 a step: an isentrope with variable heat capacities', () => {
    const { seen } = turnOnce(1e-6);
    const s0 = entropyAt(seen[0].T, seen[0].p);
    const coldest = Math.min(...seen.map(({ T }) => T));
    expect(coldest).toBeLessThan(450);
    for (const { T, p } of seen) expect(Math.abs(entropyAt(T, p) - s0)).toBeLessThan(1e-4 * AIR.gasConstant);
  });

  it('follows p V^γ = const between neighbouring points with the γ between them, to 1e-4', () => {
    const { seen } = turnOnce(1e-6);
    for (let i = 1; i < seen.length; i++) {
      const [a, b] = [seen[i - 1], seen[i]];
      if (b.theta === a.theta) continue;
      const gamma = (a.gamma + b.gamma) / 2;
      expect(Math.abs((b.p / a.p) * (b.V / a.V) ** gamma - 1)).toBeLessThan(1e-4);
    }
  });

  it('comes nearer to its start as the error a step shrinks: fifty times from 1e-3 to 1e-6', () => {
    const miss = (tolerance: number) => {
      const { begun, ended } = turnOnce(tolerance);
      return Math.abs(ended[3] - begun[3]);
    };
    expect(miss(1e-6)).toBeLessThan(miss(1e-3) / 50);
  });

  it('does not care how fast it turns: the same lowest pressure at 150 and 20 000 rpm, to 1e-5', () => {
    const [slow, fast] = [150, 20_000].map((speed_rpm) =>
      Math.min(...turnOnce(1e-6, speed_rpm).seen.map(({ p }) => p)),
    );
    expect(Math.abs(fast / slow - 1)).toBeLessThan(1e-5);
  });
});
