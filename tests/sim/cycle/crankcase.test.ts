import { describe, expect, it } from 'vitest';
import type { Engine } from '../../../src/sim/index.ts';
import { buildModel } from '../../../src/sim/index.ts';
import type { SolvedPoint } from '../../../src/sim/results/point-result.ts';
import { at, presetEngine, solveAt, solved } from '../../helpers/engines.ts';
import { rigOf, sealedEngine } from '../../helpers/sealed.ts';

type Case = NonNullable<Engine['crankcase']>;

const SPEED_RPM = 6000;
/** Three swept volumes, breather of 12 mm, rings of 0.05 mm² for each cylinder. */
const withCrankcase = (engine: Engine, changes: Partial<Case> = {}): Engine => ({
  ...engine,
  crankcase: {
    isPlenum: false,
    volume: 3 * 51.5e-6 * engine.train.rows.reduce((count, { cylinders }) => count + cylinders.length, 0),
    breather: { area: 0.25 * Math.PI * 0.012 ** 2, dischargeCoefficient: 0.65 },
    blowBy: { area: 5e-8, dischargeCoefficient: 0.8 },
    wall: { area: 0.01, temperature: 350, hydraulicDiameter: 0.08, enhancement: 2 },
    ...changes,
  },
});
const caraway = presetEngine('caraway-1');
const one = solved(solveAt(withCrankcase(caraway), SPEED_RPM));
const seven = solved(solveAt(withCrankcase(presetEngine('lovage-7')), SPEED_RPM));
const scavenging = solved(solveAt(withCrankcase(caraway, { isPlenum: true }), SPEED_RPM));

const swing = ({ crankcase }: SolvedPoint) => crankcase!.maxPressure - crankcase!.minPressure;

describe('a crankcase as a volume', () => {
  it('pumps under a single cylinder, and hardly under seven: a tenth of an atmosphere and more against a hundredth, 50 W against 1', () => {
    expect(swing(one)).toBeGreaterThan(10_000);
    expect(swing(seven)).toBeLessThan(1_500);
    expect(one.crankcase!.pumpingPower).toBeGreaterThan(50);
    expect(seven.crankcase!.pumpingPower).toBeGreaterThan(0);
    expect(seven.crankcase!.pumpingPower).toBeLessThan(1);
  });

  it('breathes out what comes past the rings, some half a percent of the charge, to 1e-3', () => {
    for (const { crankcase, engine } of [one, seven]) {
      expect(crankcase!.blowBy / (engine.airFlow + engine.fuelFlow)).toBeGreaterThan(2e-3);
      expect(crankcase!.blowBy / (engine.airFlow + engine.fuelFlow)).toBeLessThan(1e-2);
      expect(Math.abs(crankcase!.breathed / crankcase!.blowBy - 1)).toBeLessThan(1e-3);
    }
  });

  it('leaves the energy balance closed to 1e-6 of the fuel, vented or as the plenum, and all else conserved to 1e-9', () => {
    for (const { engine, residuals } of [one, seven, scavenging]) {
      const { fuel, ...rest } = engine.balance;
      const spent = Object.values(rest).reduce((sum, each) => sum + each, 0);
      expect(Math.abs(spent / fuel - 1)).toBeLessThan(1e-6);
      expect(Math.max(residuals.mass, residuals.species, residuals.energy)).toBeLessThan(1e-9);
    }
  });

  it('takes its pumping off the brake power: indicated less friction, blower and pumping', () => {
    const { engine, blower, crankcase } = one;
    const indicated = (engine.imep * engine.sweptVolume * SPEED_RPM) / 60;
    const left = indicated - engine.balance.friction - blower.shaftPower - crankcase!.pumpingPower;
    expect(Math.abs(left / engine.brakePower - 1)).toBeLessThan(1e-9);
  });

  it('swings the plenum with the pistons where the two are one, and then the undersides work on the charge', () => {
    const { plenum, crankcase, traces } = scavenging;
    expect(crankcase!.maxPressure).toBe(plenum.maxPressure);
    expect(crankcase!.breathed).toBe(0);
    expect(crankcase!.pumpingPower).toBeGreaterThan(0);
    const swept = Math.max(...traces.crankcase!.volume) - Math.min(...traces.crankcase!.volume);
    expect(Math.abs(swept / scavenging.engine.sweptVolume - 1)).toBeLessThan(1e-3);
  });

  it('is compressed along p V^γ and costs nothing where it is shut, tight and cold: 1e-4 of the work on its way down', () => {
    const tight = { area: 0, dischargeCoefficient: 0.8 };
    const wall = { area: 0, temperature: 350, hydraulicDiameter: 0.08, enhancement: 2 };
    const rig = rigOf(withCrankcase(sealedEngine(), { breather: tight, blowBy: tight, wall }), at(SPEED_RPM));
    const { gas, model, undersideWork } = rig.system;
    const node = model.network.at.crankcase;
    const seen: { p: number; V: number; gamma: number }[] = [];
    rig.run(1e-6, () => seen.push({ p: gas.pressure[node], V: gas.volume[node], gamma: gas.gamma[node] }));
    const [widest, narrowest] = [seen[0], seen.reduce((a, b) => (b.V < a.V ? b : a))];
    const gamma = (widest.gamma + narrowest.gamma) / 2;
    expect(widest.V / narrowest.V).toBeCloseTo(1.4, 1);
    expect(Math.abs((narrowest.p / widest.p) * (narrowest.V / widest.V) ** gamma - 1)).toBeLessThan(1e-4);
    const compression = widest.p * (widest.V - narrowest.V);
    expect(Math.abs(rig.state[undersideWork!.recordAt])).toBeLessThan(1e-4 * compression);
  });

  it('is refused where the pistons would fill it, with the least volume that is allowed', () => {
    const outcome = buildModel(withCrankcase(caraway, { volume: 20e-6 }));
    expect(outcome.ok ? [] : outcome.faults).toEqual([
      {
        path: 'crankcase.volume',
        message: expect.stringMatching(/25\.\d+ cc of its 20 cc .* at least 27\.\d+ cc/),
      },
    ]);
  });
});
