import { describe, expect, it } from 'vitest';
import type { Charge, Engine } from '../../../src/sim/engine.ts';
import { dropEvaporationRate } from '../../../src/sim/gas/drop-evaporation.ts';
import { FUEL_INDEX, LIQUID_INDEX } from '../../../src/sim/gas/mixture.ts';
import { saturationPressure } from '../../../src/sim/gas/saturation.ts';
import type { SolvedPoint } from '../../../src/sim/index.ts';
import { TURN, rpm } from '../../../src/sim/units.ts';
import { at, changed, modelOf, presetEngine, solveAt, solved } from '../../helpers/engines.ts';
import { rigOf, sealedEngine } from '../../helpers/sealed.ts';

const SPEED = 5000;
const lean: Engine = changed(presetEngine('caraway-1'), {
  charge: { lambda: 1.1, oilShare: 0, dropDiameter: 4e-6 },
  combustion: { completeness: 1 },
});
const fed = (charge: Partial<Charge>): SolvedPoint =>
  solved(solveAt(changed(lean, { charge }), SPEED, { change: 2e-9 }));

const feeds = {
  carburettor: fed({}),
  'carburettor, liquid going on': fed({ liquidGoesOn: true }),
  passages: fed({ feed: 'passages' }),
  cylinders: fed({ feed: 'cylinders' }),
};
const { airFuelRatio } = modelOf(lean).mixture;

describe('fuel fed', () => {
  it.each(Object.entries(feeds))('by %s keeps mass, species and energy to round-off', (_, { residuals }) => {
    expect(residuals.mass).toBeLessThan(1e-12);
    expect(residuals.species).toBeLessThan(1e-12);
    expect(residuals.energy).toBeLessThan(1e-12);
  });

  it.each(Object.entries(feeds))('by %s closes the energy balance to 1e-6', (_, { engine: { balance } }) => {
    const { fuel, ...where } = balance;
    const sum = Object.values(where).reduce((total, each) => total + each, 0);
    expect(Math.abs(sum / fuel - 1)).toBeLessThan(1e-6);
  });

  it('by a carburettor is in the design’s proportion to the net air, to round-off', () => {
    for (const { engine } of [feeds.carburettor, feeds['carburettor, liquid going on']])
      expect(engine.airFlow / engine.fuelFlow / airFuelRatio).toBeCloseTo(1, 12);
  });

  it('into the passages is so within 0.2 %, and within a quarter of that and less with a quarter of the step', () => {
    const excess = ({ engine: { airFlow, fuelFlow } }: SolvedPoint) =>
      Math.abs((fuelFlow * airFuelRatio) / airFlow - 1);
    const finer = solved(
      solveAt(changed(lean, { charge: { feed: 'passages' } }), SPEED, { change: 2e-9, parts: 4 }),
    );
    expect(excess(feeds.passages)).toBeLessThan(2e-3);
    expect(excess(finer)).toBeLessThan(excess(feeds.passages) / 4);
  });

  it('into the cylinder is what is shut in: nothing is lost, where premixed charge loses what its air loses', () => {
    const { engine, cylinders } = feeds.cylinders;
    const trapped = (cylinders[0]!.trappedAir / airFuelRatio) * ((SPEED * rpm) / TURN);
    expect(engine.fuelFlow / trapped).toBeCloseTo(1, 3);
    expect(engine.balance.unburned / engine.balance.fuel).toBeLessThan(2e-3);
    const premixed = feeds.carburettor.engine;
    expect(premixed.balance.unburned / premixed.balance.fuel).toBeCloseTo(1 - premixed.trappingEfficiency, 2);
  });

  it('as liquid cools the air where it evaporates: the plenum least behind injectors, most behind a carburettor', () => {
    const plenum = (key: keyof typeof feeds) => feeds[key].plenum.meanTemperature;
    expect(plenum('cylinders')).toBeGreaterThan(plenum('carburettor') + 5);
    expect(plenum('passages')).toBeGreaterThan(plenum('carburettor') + 5);
  });

  it('in coarse drops is partly liquid at the spark, which the notes say and the work shows', () => {
    const coarse = fed({ feed: 'cylinders', dropDiameter: 40e-6 });
    expect(coarse.engine.imep).toBeLessThan(0.8 * feeds.cylinders.engine.imep);
    expect(coarse.notes.some(({ text }) => /still liquid/.test(text))).toBe(true);
    expect(feeds.cylinders.notes.some(({ text }) => /still liquid/.test(text))).toBe(false);
  });
});

describe('Evaporating', () => {
  const DROP = 20e-6;
  /** A shut passage of air with a share of liquid petrol, watched over a turn at 1000 rpm. */
  function vessel(T: number, share: number) {
    const engine = changed(sealedEngine(), {
      charge: { liquidGoesOn: true, oilShare: 0, dropDiameter: DROP },
    });
    const rig = rigOf(engine, at(1000));
    const { gas, model, omega } = rig.system;
    const node = model.network.at.passages[0]!;
    gas.pack(rig.state, node, 1e5, T, [1 - share, 0, 0, share]);
    const stored = rig.state.slice(node * gas.stride, (node + 1) * gas.stride);
    const moments: { time: number; liquid: number; vapour: number; T: number }[] = [];
    rig.run(1e-5, (theta) =>
      moments.push({
        time: theta / omega,
        liquid: gas.mass[node]! * gas.fraction[node * gas.set.count + LIQUID_INDEX]!,
        vapour: gas.mass[node]! * gas.fraction[node * gas.set.count + FUEL_INDEX]!,
        T: gas.temperature[node]!,
      }),
    );
    const energy = rig.state[(node + 1) * gas.stride - 1]!;
    return { moments, stored, energy, volume: gas.volume[node]!, fuel: model.mixture.fuel };
  }

  it('lets a trace of liquid fade as exp(-k t) in hot air', () => {
    const { moments, fuel } = vessel(600, 1e-5);
    const k = dropEvaporationRate(fuel, DROP);
    const first = moments[0]!.liquid;
    for (const { time, liquid } of moments.filter((each) => k * each.time < 4))
      expect(liquid / first / Math.exp(-k * time)).toBeCloseTo(1, 2);
  });

  it('ends at saturation where there is more liquid than the air can hold, its energy unchanged, cooler by the latent heat', () => {
    const { moments, stored, energy, volume, fuel } = vessel(290, 0.6);
    const end = moments.at(-1)!;
    const pressure = (end.vapour * fuel.vapour.gasConstant * end.T) / volume;
    expect(pressure / saturationPressure(fuel.saturation, end.T)).toBeCloseTo(1, 2);
    expect(end.liquid).toBeGreaterThan(0);
    expect(energy / stored.at(-1)!).toBeCloseTo(1, 12);
    expect(end.T).toBeLessThan(285);
  });
});
