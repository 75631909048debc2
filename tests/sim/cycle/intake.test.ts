import { describe, expect, it } from 'vitest';
import { atRest } from '../../../src/sim/cycle/start.ts';
import { CycleSystem } from '../../../src/sim/cycle/system.ts';
import type { Engine } from '../../../src/sim/index.ts';
import { at, changed, modelOf, presetEngine } from '../../helpers/engines.ts';

const lovage = presetEngine('lovage-7');
const { pressure: p0, temperature: T0 } = lovage.ambient;
const circle = (bore: number) => 0.25 * Math.PI * bore ** 2;

/** Air and fuel through the intake with the inlet box at a share of ambient pressure [kg/s], and air per kilogram of it. */
function drawn(intake: Partial<Engine['intake']>, share: number) {
  const model = modelOf(changed(lovage, { intake }));
  const system = new CycleSystem(model, at(6000));
  const { box } = model.network.at;
  const state = new Float64Array(system.size);
  state.set(atRest(system).state);
  const air = model.set.constituents.map((_, k) => (k === 0 ? 1 : 0));
  system.gas.pack(state, box, share * p0, T0, air);
  system.rates(state, new Float64Array(system.size), false);
  const edge = model.network.through.throttle;
  const { massFlow, carried, stride } = system.edges;
  return {
    flow: massFlow[edge],
    airShare: carried[edge * stride],
    R: system.gas.gasConstant[box],
    gamma: system.gas.gamma[model.network.at.ambient],
  };
}

describe('Carburettor with openings in line', () => {
  const wide = { throttle: { ...lovage.intake.throttle, bore: 0.3 } };

  it('draws air through a choked restrictor of 10 mm at Cd A p0/√(R T0) γ^½ (2/(γ+1))^((γ+1)/(2(γ−1))), to 1e-4', () => {
    const restrictor = { bore: 0.01, dischargeCoefficient: 0.95, recovered: 0 };
    const { flow, airShare, R, gamma } = drawn({ ...wide, restrictor }, 0.4);
    const psi = Math.sqrt(gamma) * (2 / (gamma + 1)) ** ((gamma + 1) / (2 * (gamma - 1)));
    const choked = (0.95 * circle(0.01) * p0 * psi) / Math.sqrt(R * T0);
    expect(Math.abs((flow * airShare) / choked - 1)).toBeLessThan(1e-4);
    expect(drawn({ ...wide, restrictor }, 0.3).flow).toBe(flow);
  });

  it('takes K ρ w²/2 for a flame arrester, w over its whole face, to 1 % at a loss of half a percent of ambient pressure', () => {
    const arrester = { area: 2e-3, lossFactor: 8 };
    const { flow, airShare, R } = drawn({ ...wide, arrester }, 0.995);
    const density = p0 / (R * T0);
    const speed = (flow * airShare) / (density * arrester.area);
    expect(Math.abs((8 * density * speed ** 2) / 2 / (0.005 * p0) - 1)).toBeLessThan(0.01);
  });

  it('draws more behind a venturi that wins back some of its drop, and less than through the throttle alone', () => {
    const venturi = { bore: 0.02, dischargeCoefficient: 0.9, recovered: 0 };
    const [none, some, alone] = [
      drawn({ venturi }, 0.95),
      drawn({ venturi: { ...venturi, recovered: 0.6 } }, 0.95),
      drawn({}, 0.95),
    ].map(({ flow }) => flow);
    expect(some).toBeGreaterThan(1.1 * none);
    expect(some).toBeLessThan(alone);
  });
});
