import { describe, expect, it } from 'vitest';
import { orificeMassFlow } from '../../../src/sim/exchange/orifice.ts';
import type { Engine } from '../../../src/sim/index.ts';
import { BlowerSide } from '../../../src/sim/study/supply/blower-side.ts';
import { mbar } from '../../../src/sim/units.ts';
import { at, changed, modelOf, notFinite, presetEngine, solveAt, solved } from '../../helpers/engines.ts';

const caraway = presetEngine('caraway-1');
type Bypass = NonNullable<Engine['plenum']['bypass']>;
const round: Bypass = { into: 'inlet box', area: 5e-5, dischargeCoefficient: 0.65, control: null };
const out: Bypass = { ...round, into: 'air' };
const byPressure = { opensAt: 100 * mbar, range: 50 * mbar };
const withBypass = (bypass: Bypass | null): Engine => changed(caraway, { plenum: { bypass } });

const without = solved(solveAt(withBypass(null), 6000));
const points = {
  'always open into the inlet box': solved(solveAt(withBypass(round), 6000)),
  'always open into the air': solved(solveAt(withBypass(out), 6000)),
  'by pressure into the inlet box': solved(solveAt(withBypass({ ...round, control: byPressure }), 6000)),
  'by pressure into the air': solved(solveAt(withBypass({ ...out, control: byPressure }), 6000)),
};

describe('Bypass', () => {
  it.each(Object.entries(points))('%s closes mass, species, energy and the fuel’s balance', (_, point) => {
    expect(notFinite(point)).toEqual([]);
    const { mass, energy, species } = point.residuals;
    expect(Math.max(mass, energy, species)).toBeLessThan(1e-12);
    const { fuel, ...rest } = point.engine.balance;
    expect(Object.values(rest).reduce((sum, each) => sum + each, 0) / fuel).toBeCloseTo(1, 5);
    expect(point.bypass!.massFlow).toBeGreaterThan(0);
    expect(point.plenum.meanPressure).toBeLessThan(without.plenum.meanPressure);
  });

  it('is not there where the design has none', () => {
    expect(without.bypass).toBeNull();
  });

  it('warms the inlet box by what it brings back, into the air by far less', () => {
    const [back, lost] = [points['always open into the inlet box'], points['always open into the air']];
    const rise = back.inletBox.meanTemperature - without.inletBox.meanTemperature;
    // What it brings above ambient, spread over all that then goes through the box.
    const through = back.engine.airFlow + back.engine.fuelFlow + back.bypass!.massFlow;
    expect(rise / (back.bypass!.heat / (through * 1010))).toBeGreaterThan(0.7);
    expect(rise / (back.bypass!.heat / (through * 1010))).toBeLessThan(1.3);
    expect(lost.inletBox.meanTemperature - without.inletBox.meanTemperature).toBeLessThan(rise / 3);
    expect(lost.notes.map(({ text }) => text).join(' ')).toMatch(
      /bypass lets .* out into the air, fuel with it/,
    );
  });

  it('passes in steady flow what an orifice of half its area does where pressure has opened it half', () => {
    const still = { casingHeatShare: 0, rippleDepth: 0 };
    const engine = changed(withBypass({ ...out, control: byPressure }), {
      blower: still,
      charge: { lambda: 1e6, oilShare: 0 },
    });
    const { pressure: outside } = engine.ambient;
    const supply = new BlowerSide(modelOf(engine), at(6000)).at(outside + 125 * mbar)!;
    const half = orificeMassFlow(
      0.5 * 0.65 * 5e-5,
      supply.pressure,
      supply.temperature,
      outside,
      1.399,
      287.1,
    );
    expect(supply.bypass / half).toBeCloseTo(1, 3);
    expect(supply.massFlow + supply.bypass + supply.slip).toBeCloseTo(supply.displaced, 12);
    const shut = new BlowerSide(modelOf(engine), at(6000)).at(outside + 90 * mbar)!;
    expect(shut.bypass).toBe(0);
  });

  it('going round heats steady supply more than going out', () => {
    const supply = (bypass: Bypass) =>
      new BlowerSide(modelOf(withBypass(bypass)), at(6000)).at(caraway.ambient.pressure + 120 * mbar)!;
    expect(supply(round).boxTemperature).toBeGreaterThan(supply(out).boxTemperature + 3);
  });
});
