import { describe, expect, it } from 'vitest';
import {
  energyFlows,
  liquidDensity,
  outputColumns,
  outputDetail,
  outputSentence,
} from '../../../src/app/pages/output.ts';
import type { PointResult, SolvedPoint } from '../../../src/sim/index.ts';
import { gramPerKWh, kW, rpm } from '../../../src/sim/units.ts';
import { engine, lovage, metric, unsolvedPoint, workshop } from './solved.ts';

const read = (here: SolvedPoint, range: readonly PointResult[], units = metric): string =>
  outputSentence(here, range, units)
    .map(({ text }) => text)
    .join('');
const giving = (speed_rpm: number, power: number): SolvedPoint => ({
  ...lovage(),
  speed: speed_rpm * rpm,
  engine: {
    ...lovage().engine,
    brakePower: power,
    bsfc: power > 0 ? 600 * gramPerKWh : null,
    balance: { ...lovage().engine.balance, fuel: 100 * kW, brake: power },
  },
});

describe('energyFlows', () => {
  it('splits all of the fuel’s energy: what leaves adds up to what comes in, to a thousandth', () => {
    const { source, flows } = energyFlows(lovage().engine.balance, metric);
    const sum = flows.reduce((total, { value }) => total + value, 0);
    expect(sum / source.value).toBeCloseTo(1, 3);
  });
});

describe('outputColumns', () => {
  it('leaves a gap in g/kWh where there is no power, and keeps l/h', () => {
    const { bsfc, fuelFlow } = outputColumns([giving(500, -300)], engine.charge);
    expect(bsfc[0]).toBeNaN();
    expect(fuelFlow[0]).toBeGreaterThan(0);
  });

  it('leaves a gap at a speed without an answer', () => {
    expect(outputColumns([unsolvedPoint(3000 * rpm)], engine.charge).power[0]).toBeNaN();
  });

  it('weighs a blend: a litre of E85 without oil is 0.15 x 745 + 0.85 x 794 g', () => {
    const e85 = { ...engine.charge, blend: { fuel: 'ethanol', share: 0.85 }, oilShare: 0 };
    expect(liquidDensity(e85)).toBeCloseTo(786.65, 9);
  });

  it('counts 10 g/s of a fuel of 720 kg/m³ as 50 l/h', () => {
    const density = liquidDensity(engine.charge);
    const point = { ...lovage(), engine: { ...lovage().engine, fuelFlow: (10e-3 * density) / 720 } };
    const [flow] = outputColumns([point], engine.charge).fuelFlow;
    expect(metric.number('fuel flow', flow!)).toBeCloseTo(50, 9);
  });
});

describe('outputSentence', () => {
  it('gives power, fuel and the share that reaches the shaft: 20 of 100 kW is 20 %', () => {
    expect(read(giving(6000, 20 * kW), [])).toBe(
      '20.0\u00a0kW (26.8\u00a0hp) at 6000\u00a0rpm, for 600\u00a0g of fuel per kWh: 20\u202f% of its energy reaches the shaft.',
    );
  });

  it('speaks in the reader’s units: 20 kW and 600 g/kWh are 26.8 hp and 0.986 lb per hp h', () => {
    expect(read(giving(6000, 20 * kW), [], workshop)).toMatch(
      /^26\.8\u00a0hp \(20\.0\u00a0kW\) at 6000\u00a0rpm, for 0\.986\u00a0lb of fuel per hp\u00a0h: /,
    );
  });

  it('names the most of the speeds that were worked out, and passes over one without an answer', () => {
    const range = [giving(6000, 20 * kW), unsolvedPoint(7000 * rpm), giving(9000, 30 * kW)];
    expect(read(giving(6000, 20 * kW), range)).toContain('The most is 30.0\u00a0kW, at 9000\u00a0rpm.');
    expect(read(giving(9000, 30 * kW), range)).toContain('No other speed worked out gives more.');
  });

  it('says that an engine without power must be driven, and gives no consumption', () => {
    expect(read(giving(500, -300), [])).toBe(
      'At 500\u00a0rpm the engine gives nothing: it must be driven with 0.300\u00a0kW (0.402\u00a0hp).',
    );
  });
});

describe('outputDetail', () => {
  it('leaves out shares of a work that the gas does not do', () => {
    const motored = { ...lovage(), engine: { ...lovage().engine, imep: -1e4 } };
    expect(outputDetail(motored, engine.charge, metric)).toMatch(
      /^It burns or loses [\d.]+\u00a0l\/h of fuel\.$/,
    );
    expect(outputDetail(lovage(), engine.charge, metric)).toMatch(/friction takes [\d.]+\u202f%/);
  });
});
