import { describe, expect, it } from 'vitest';
import { orificeMassFlow } from '../../../src/sim/exchange/orifice.ts';
import { SmoothOrifice, smoothingPressure } from '../../../src/sim/exchange/smooth-orifice.ts';
import { findRoot } from '../../../src/sim/numerics/find-root.ts';
import { readReference } from '../../helpers/read-reference.ts';

const AIR = { R: 287.05, gamma: 1.4, p0: 101_325, T0: 293.15 };

function flow(
  p1: number,
  eps: number,
  { CdA = 1, p0 = AIR.p0, T0 = AIR.T0, R = AIR.R, gamma = AIR.gamma } = {},
) {
  const orifice = new SmoothOrifice();
  Object.assign(orifice, { CdA, p0, T0, R, gamma, p1, eps });
  orifice.evaluate();
  return { flow: orifice.flow, up: orifice.slopeUp, down: orifice.slopeDown };
}

describe('SmoothOrifice', () => {
  it('gives the reference table to 1e-8 of each value with a smoothing pressure of 0.05 Pa', () => {
    for (const row of readReference('orifice.csv')) {
      const [p0, T0, R, gamma, p1] = ['p_up_Pa', 'T_up_K', 'R_J_per_kgK', 'gamma', 'p_down_Pa'].map((key) =>
        Number(row[key]),
      );
      const wanted = Number(row.mass_flux_kg_per_s_m2);
      // The table has six digits after the point; (eps / dp)^2 / 4 is below 3e-9 from 500 Pa on.
      expect(Math.abs(flow(p1, 0.05, { p0, T0, R, gamma }).flow / wanted - 1)).toBeLessThan(2e-8);
    }
  });

  it('equals the plain orifice to (eps/dp)²/4 at every pressure ratio, for three gases', () => {
    const eps = 20;
    for (const gamma of [1.24, 1.33, 1.4])
      for (let ratio = 0.02; ratio < 1; ratio += 0.01) {
        const p1 = ratio * AIR.p0;
        const plain = orificeMassFlow(1, AIR.p0, AIR.T0, p1, gamma, AIR.R);
        const allowed = (eps / (AIR.p0 - p1)) ** 2 / 4 + 1e-12;
        expect(Math.abs(flow(p1, eps, { gamma }).flow / plain - 1)).toBeLessThanOrEqual(allowed);
      }
  });

  it('chokes exactly at the critical ratio 0.5283 of gamma 1.4: constant below, less above', () => {
    const critical = (2 / 2.4) ** 3.5 * AIR.p0;
    const choked = flow(0.2 * AIR.p0, 1);
    expect(flow(critical * 0.9999, 1).flow).toBe(choked.flow);
    expect(flow(critical * 1.001, 1).flow).toBeLessThan(choked.flow);
    expect(choked.down).toBe(0);
    expect(choked.up).toBeCloseTo(choked.flow / AIR.p0, 12);
    // Proportional to the pressure upstream, whatever stands downstream.
    expect(flow(0, 1, { p0: 2 * AIR.p0 }).flow).toBeCloseTo(2 * choked.flow, 9);
  });

  it('is continuous to 1e-6 of the choked flow at all its branches, from 1e-9 Pa to choking', () => {
    const eps = 3;
    const choked = flow(0, eps).flow;
    let before = flow(AIR.p0 - 1e-9, eps).flow;
    for (let power = -9; power < Math.log10(AIR.p0); power += 1e-3) {
      const now = flow(AIR.p0 - 10 ** power, eps).flow;
      expect(now).toBeGreaterThanOrEqual(before * (1 - 1e-12));
      expect(now - before).toBeLessThan(1.2e-3 * choked);
      before = now;
    }
    const critical = AIR.p0 * (2 / 2.4) ** 3.5;
    for (const p1 of [critical, AIR.p0 * (1 - 1e-6), AIR.p0 - eps * 1e-3, AIR.p0 - eps * 1e4]) {
      const [left, right] = [p1 * (1 - 1e-12), p1 * (1 + 1e-12)].map((p) => flow(p, eps).flow);
      expect(Math.abs(left - right)).toBeLessThan(1e-6 * choked);
    }
  });

  it('runs through zero in a straight line, with the stated slope: CdA sqrt(2 ρ/eps) per pascal', () => {
    const eps = 50;
    const line = Math.sqrt((2 * (AIR.p0 / (AIR.R * AIR.T0))) / eps);
    for (const dp of [1e-6, 1e-4, 1e-3, 0.1]) {
      const { flow: mdot, up, down } = flow(AIR.p0 - dp, eps);
      expect(Math.abs(mdot / (line * dp) - 1)).toBeLessThan(1e-5);
      expect(Math.abs(up / line - 1)).toBeLessThan(1e-5);
      expect(Math.abs(down / up + 1)).toBeLessThan(1e-5);
    }
    expect(flow(AIR.p0, eps).flow).toBe(0);
  });

  it('moves the pressure difference that carries a tenth of the design flow by 0.5 %, below the 1 % allowed', () => {
    const density = AIR.p0 / (AIR.R * AIR.T0);
    for (const [CdA, designFlow] of [
      [1e-4, 0.004],
      [1e-4, 0.02],
      [5e-6, 1e-4],
      [1e-3, 0.15],
    ]) {
      const eps = smoothingPressure(designFlow, CdA, density);
      const needed = (mdot: (dp: number) => number) =>
        findRoot((dp) => mdot(dp) - 0.1 * designFlow, 1e-9, 0.4 * AIR.p0, 1e-9);
      const smooth = needed((dp) => flow(AIR.p0 - dp, eps, { CdA }).flow);
      const plain = needed((dp) => orificeMassFlow(CdA, AIR.p0, AIR.T0, AIR.p0 - dp, AIR.gamma, AIR.R));
      expect(smooth / plain - 1).toBeGreaterThan(0);
      expect(smooth / plain - 1).toBeLessThan(0.01);
      expect(smooth / plain - 1).toBeCloseTo(0.005, 3);
    }
  });

  it('passes nothing through no area and grows in proportion to it', () => {
    expect(flow(5e4, 10, { CdA: 0 }).flow).toBe(0);
    expect(flow(9e4, 10, { CdA: 3e-4 }).flow).toBeCloseTo(3e-4 * flow(9e4, 10).flow, 12);
  });

  it('has slopes of the right sign, never less steep than the flow itself', () => {
    const eps = 40;
    for (const p1 of [0.3, 0.6, 0.9, 0.999, 0.99999].map((ratio) => ratio * AIR.p0)) {
      const { flow: mdot, up, down } = flow(p1, eps);
      const step = 1e-3;
      const trueDown = (flow(p1 + step, eps).flow - flow(p1 - step, eps).flow) / (2 * step);
      expect(mdot).toBeGreaterThan(0);
      expect(up).toBeGreaterThan(0);
      expect(down).toBeLessThanOrEqual(0);
      expect(down).toBeLessThanOrEqual(trueDown + 1e-9);
    }
  });
});

describe('SmoothOrifice for the implicit step', () => {
  it('tells slopes that do not jump at choking, where the flow stops to answer to the pressure downstream', () => {
    const critical = AIR.p0 * (2 / 2.4) ** 3.5;
    const [choked, open] = [critical * (1 - 1e-7), critical * (1 + 1e-7)].map((p1) => flow(p1, 1));
    expect(choked.down).toBe(0);
    expect(Math.abs(open.down)).toBeLessThan(1e-6 * open.up);
    expect(Math.abs(open.up / choked.up - 1)).toBeLessThan(1e-6);
  });

  it('tells a slope that does not jump where the straight line through zero begins', () => {
    const eps = 3;
    const [inside, outside] = [0.999e-3, 1.001e-3].map((share) => flow(AIR.p0 - share * eps, eps));
    expect(Math.abs(outside.up / inside.up - 1)).toBeLessThan(1e-5);
    expect(Math.abs(outside.down / inside.down - 1)).toBeLessThan(1e-5);
  });

  it('tells twice the slope of the square root at a small pressure difference, 10 Pa with 0.1 Pa of smoothing', () => {
    const { flow: mdot, up, down } = flow(AIR.p0 - 10, 0.1);
    expect(Math.abs((up * 10) / mdot - 1)).toBeLessThan(1e-3);
    expect(Math.abs((-down * 10) / mdot - 1)).toBeLessThan(1e-3);
  });
});

describe('smoothingPressure', () => {
  it('is a tenth of the difference that carries a tenth of the design flow, ½ (G/ρ)² ρ', () => {
    // 0.024 kg/s through 1 cm² at 1.2 kg/m³: a tenth of it is 20 m/s, 240 Pa.
    expect(smoothingPressure(0.024, 1e-4, 1.2)).toBeCloseTo(24, 10);
  });

  it('stays above nothing where the design flow is nothing', () => {
    expect(smoothingPressure(0, 1e-4, 1.2)).toBeGreaterThan(0);
  });
});
