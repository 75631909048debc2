import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveToEnd } from '../../../../../src/sim/index.ts';
import { backfire } from '../../../../../src/sim/study/checks/fire/backfire.ts';
import type { FireIn } from '../../../../../src/sim/study/checks/fire/backfire.ts';
import { ChargeFire } from '../../../../../src/sim/study/checks/fire/charge-fire.ts';
import { discDiameter, ventArea } from '../../../../../src/sim/study/checks/fire/vent-area.ts';
import { ventedPressure } from '../../../../../src/sim/study/checks/fire/vented.ts';
import { atm, bar, cc, litre, mm2 } from '../../../../../src/sim/units.ts';
import { at, changed, modelOf, presetEngine, solveAt, solved } from '../../../../helpers/engines.ts';

const engine = presetEngine('parsley-5');
const model = modelOf(engine);
const cycle = solved(solveToEnd(model, at(5000)).result);
const charge = new ChargeFire(model);

describe('ChargeFire', () => {
  it('burns shut in to the pressure at which the energy is the same: 43.4 MJ per kilogram of petrol warm the products', () => {
    // By hand, λ as in Parsley 5: heating value of vapour less energy left in CO and H2, over the mass of the charge, warms
    // products from 298.15 K at constant volume. p2/p1 = (R2/R1)(T2/T1).
    const { airFuelRatio, heatingValue, unburnedEnergy, fuel } = model.mixture;
    const T1 = 298.15;
    const { temperature, pressure } = charge.shutIn(atm, T1);
    // Lower heating values are at constant pressure: the moles that burning makes are a work of R T apart.
    const released =
      (heatingValue + fuel.latentHeat * (1 - fuel.involatileShare) - unburnedEnergy) / (1 + airFuelRatio) +
      (charge.burnedGasConstant - charge.freshGasConstant) * T1;
    const warmed = charge.burnedEnergy(temperature) - charge.burnedEnergy(T1);
    expect(warmed / released).toBeCloseTo(1, 2);
    expect(pressure / atm).toBeCloseTo(
      (charge.burnedGasConstant * temperature) / (charge.freshGasConstant * T1),
      9,
    );
  });

  it('stands 5 to 30 % above 8.5 to 9 times the start, what closed vessels of hydrocarbons in air have shown', () => {
    const ratio = charge.shutIn(atm, 298.15).pressure / atm;
    expect(ratio).toBeGreaterThan(8.5 * 1.05);
    expect(ratio).toBeLessThan(9 * 1.3);
  });

  it('compresses along p^((γ−1)/γ) where the rise is small, and back again', () => {
    const T = charge.compressed(atm, 300, 1.01 * atm);
    const gamma = 1 + charge.freshGasConstant / charge.freshHeat(300);
    expect(T / 300).toBeCloseTo(1.01 ** ((gamma - 1) / gamma), 6);
    expect(charge.compressed(1.01 * atm, T, atm)).toBeCloseTo(300, 4);
  });
});

describe('ventedPressure', () => {
  const venting = {
    volume: litre,
    pressure: 1.1 * bar,
    temperature: 320,
    area: 300 * mm2,
    cracking: 1.5 * bar,
    outside: atm,
    burnTime: 5e-3,
  };

  it('without a vent is what burning shut in gives, to 1e-4', () => {
    expect(
      ventedPressure(charge, { ...venting, area: 0 }) / charge.shutIn(1.1 * bar, 320).pressure,
    ).toBeCloseTo(1, 4);
  });

  it('depends on the vent, the burn and the volume only as A t/V', () => {
    const pressure = ventedPressure(charge, venting);
    expect(ventedPressure(charge, { ...venting, area: 600 * mm2, volume: 2 * litre })).toBeCloseTo(
      pressure,
      3,
    );
    expect(ventedPressure(charge, { ...venting, area: 600 * mm2, burnTime: 2.5e-3 })).toBeCloseTo(
      pressure,
      3,
    );
    expect(ventedPressure(charge, { ...venting, area: 600 * mm2 })).toBeLessThan(pressure);
  });

  it('holds a slow burn behind a wide vent at the pressure at which it opens', () => {
    expect(ventedPressure(charge, { ...venting, area: 0.01, burnTime: 0.1 }) / venting.cracking).toBeCloseTo(
      1,
      2,
    );
  });
});

describe('discDiameter', () => {
  it('of 1963.5 mm² is 50 mm', () => {
    expect(discDiameter(1963.4954e-6)).toBeCloseTo(0.05, 8);
  });
});

describe('ventArea', () => {
  const question = { volume: 1, start: atm, holds: atm + bar, opens: 0.1 * bar, index: 100 * bar };

  it('of a cubic metre of K_G 100 bar m/s, 1 bar held, 0.1 bar to open, is 0.1265 · 2 − 0.0567 = 0.1963 m²', () => {
    expect(ventArea(question)).toBeCloseTo(0.1963, 10);
  });

  it('adds 0.1754 · 0.4 where it opens at 0.5 bar, and grows with V^(2/3)', () => {
    expect(ventArea({ ...question, opens: 0.5 * bar })).toBeCloseTo(0.1963 + 0.07016, 10);
    expect(ventArea({ ...question, volume: 1e-3 })! / ventArea(question)!).toBeCloseTo(1e-2, 12);
  });

  it('asks for more the less is to be held, the faster it burns and the higher it starts', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 1.6, noNaN: true }),
        fc.double({ min: 60, max: 500, noNaN: true }),
        (held, index) => {
          const area = (changes: object) =>
            ventArea({ ...question, holds: atm + held * bar, index: index * bar, ...changes })!;
          expect(area({})).toBeGreaterThan(area({ holds: atm + (held + 0.1) * bar }));
          expect(area({ index: 1.1 * index * bar })).toBeGreaterThan(area({}));
          expect(area({ start: 1.05 * atm, holds: 1.05 * atm + held * bar })).toBeGreaterThan(area({}));
        },
      ),
      { numRuns: 30, seed: 5 },
    );
  });

  it('has no answer outside what it was measured for: 0.1 to 2 bar held, opening at 0.1 to 0.5 bar', () => {
    expect(ventArea({ ...question, holds: atm + 0.05 * bar })).toBeNull();
    expect(ventArea({ ...question, holds: atm + 2.1 * bar })).toBeNull();
    expect(ventArea({ ...question, opens: 0.6 * bar })).toBeNull();
  });
});

describe('backfire', () => {
  const fire = backfire(model, cycle, { crankcaseVolume: 700 * cc });
  const space = (name: FireIn['space']) => fire.spaces.find((each) => each.space === name)!;

  it('stores plenum, box and passages full of mixture, 43.4 MJ for every kilogram of petrol in it', () => {
    expect(space('plenum').mass / fire.tractMass).toBeCloseTo(900 / 1400, 1);
    expect(fire.tractMass).toBeCloseTo(
      space('plenum').mass + space('inlet box').mass + space('passages').mass,
      12,
    );
    const perKilogram = fire.energy / fire.tractMass;
    expect((perKilogram * (1 + model.mixture.airFuelRatio)) / 43.4e6).toBeCloseTo(1, 2);
  });

  it('counts 700 cc of crankcase as full of mixture at ambient state, apart from the tract', () => {
    const { pressure, temperature } = engine.ambient;
    expect(space('crankcase').mass).toBeCloseTo(
      (pressure * 700 * cc) / (charge.freshGasConstant * temperature),
      12,
    );
    expect(backfire(model, cycle).spaces.map(({ space: name }) => name)).toEqual([
      'inlet box',
      'plenum',
      'passages',
    ]);
  });

  it('burns 900 cc of plenum and 700 cc of crankcase together where they are one space: more gas, a slower burn, a larger vent', () => {
    const crankcase = {
      isPlenum: true,
      volume: 700 * cc,
      breather: { area: 0, dischargeCoefficient: 0.6 },
      blowBy: { area: 0, dischargeCoefficient: 0.6 },
      wall: engine.plenum.wall,
    };
    const one = backfire({ ...model, engine: { ...engine, crankcase } }, cycle);
    expect(one.spaces.find((each) => each.space === 'plenum')!.mass / space('plenum').mass).toBeCloseTo(
      16 / 9,
      12,
    );
    expect(one.burnTime / fire.burnTime).toBeCloseTo(Math.cbrt(16 / 9), 12);
    expect(one.reliefNeeded! / fire.reliefNeeded!).toBeCloseTo((16 / 9) ** (2 / 3), 12);
  });

  it('takes every space to its own shut-in pressure, and a packed passage far beyond: about the square of the ratio, cooled by its own heat', () => {
    for (const { closedPressure, pressure } of fire.spaces) {
      expect(closedPressure / pressure).toBeGreaterThan(8);
      expect(closedPressure / pressure).toBeLessThan(11);
    }
    const ratio = space('plenum').closedPressure / space('plenum').pressure;
    expect(fire.piledPressure! / space('plenum').pressure).toBeGreaterThan(4 * ratio);
    expect(fire.piledPressure! / space('plenum').pressure).toBeLessThan(ratio * ratio);
  });

  it('is relieved the more, the larger the valve and the slower the flame, and not at all by none', () => {
    const closed = space('plenum').closedPressure;
    expect(fire.relievedPressure!).toBeLessThan(closed);
    const { relief } = engine.plenum;
    const large = modelOf(changed(engine, { plenum: { relief: { ...relief!, area: 4 * relief!.area } } }));
    expect(backfire(large, cycle).relievedPressure!).toBeLessThan(fire.relievedPressure!);
    expect(backfire(model, cycle, { flameFactor: 1 }).relievedPressure!).toBeLessThan(fire.relievedPressure!);
    const none = modelOf(changed(engine, { plenum: { relief: null } }));
    expect(backfire(none, cycle).relievedPressure).toBeNull();
  });

  it('counts what stands between two stages, in the pipe and in the cooler', () => {
    const cooler = { effectiveness: 0.6, coolantTemperature: 290, area: 8e-4, lossFactor: 4, volume: 2e-4 };
    const staged = modelOf({
      ...engine,
      secondStage: {
        blower: { ...engine.blower, displacement: 0.7 * engine.blower.displacement },
        volume: 3e-4,
        cooler,
      },
    });
    const point = solved(solveAt(staged.engine, 5000));
    const { spaces, tractMass } = backfire(staged, point);
    const between = spaces.find((each) => each.space === 'between the stages')!;
    expect(between.volume).toBeCloseTo(5e-4, 12);
    expect(between.closedPressure / between.pressure).toBeGreaterThan(6);
    expect(spaces.reduce((sum, { mass }) => sum + mass, 0)).toBeCloseTo(tractMass, 12);
    expect(fire.spaces.map(({ space }) => space)).not.toContain('between the stages');
  });

  it('asks for more relief than a usual valve has, and for none it can state where 3 bar are to be held', () => {
    expect(fire.reliefNeeded!).toBeGreaterThan(4 * engine.plenum.relief!.area);
    expect(backfire(model, cycle, { heldAbove: 3 * bar }).reliefNeeded).toBeNull();
  });

  it('finds mixture only where fuel stands: in the passages behind their injectors, nowhere where it joins in the cylinders', () => {
    const spaces = (feed: 'passages' | 'cylinders') =>
      backfire(modelOf(changed(engine, { charge: { feed } })), cycle).spaces.map(({ space }) => space);
    expect(spaces('passages')).toEqual(['passages']);
    expect(spaces('cylinders')).toEqual([]);
  });
});
