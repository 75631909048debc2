import { describe, expect, it } from 'vitest';
import { solveToEnd } from '../../../../src/sim/index.ts';
import { airFigures, referenceAirFlow } from '../../../../src/sim/study/air/air-figures.ts';
import { airLimit, judge, lift } from '../../../../src/sim/study/air/air-limit.ts';
import { airSentence } from '../../../../src/sim/study/air/air-sentence.ts';
import { boostKept } from '../../../../src/sim/study/air/boost-kept.ts';
import { feedFigures, otherFeed, withFeed } from '../../../../src/sim/study/air/fuel-feed.ts';
import { oneMoreTooth } from '../../../../src/sim/study/air/one-more-tooth.ts';
import { pressureToSwallow } from '../../../../src/sim/study/supply/pressure-to-swallow.ts';
import { solveHeld, withHeldPlenum } from '../../../../src/sim/study/supply/held-plenum.ts';
import { finishStudy } from '../../../../src/sim/study/study-step.ts';
import { rpm } from '../../../../src/sim/units.ts';
import { sound } from '../../../design/designs.ts';
import { at, changed, modelOf, presetEngine, solved } from '../../../helpers/engines.ts';

const engine = presetEngine('caraway-1');
const model = modelOf(engine);
const { result, next } = solveToEnd(model, at(5000));
const cycle = solved(result);

describe('airFigures', () => {
  it('finds 5 to 7 g/s wanted by 50 cc at 6000 rpm: swept volume × ambient density × turns a second', () => {
    const per50cc = (referenceAirFlow(model, 6000 * rpm) * 50e-6) / model.geometry.sweptVolume;
    expect(per50cc * 1e3).toBeGreaterThan(5);
    expect(per50cc * 1e3).toBeLessThan(7);
  });

  it('keeps air flow, delivery ratio and pressures together', () => {
    const figures = airFigures(model, cycle);
    expect(figures.airFlow / (figures.deliveryRatio * referenceAirFlow(model, 5000 * rpm))).toBeCloseTo(1, 4);
    expect(figures.plenumPressure - figures.plenumGauge).toBeCloseTo(engine.ambient.pressure, 6);
    expect(figures.inletDepression).toBeGreaterThan(0);
    expect(figures.plenumRipple).toBeGreaterThan(0);
    expect(figures.blowerShare! * figures.brakePower).toBeCloseTo(figures.blowerPower, 9);
    expect(figures.tipSpeed).toBeCloseTo((figures.rotorSpeed * engine.blower.tipDiameter) / 2, 9);
  });
});

describe('airLimit', () => {
  it('says displacement where nothing lifted alone brings what is wanted', () => {
    const much = modelOf(changed(engine, { wanted: { deliveryRatio: 2.5 } }));
    const limit = finishStudy(airLimit(much, at(5000), cycle, next));
    expect(limit.by).toBe('displacement');
    expect(limit.shortBy).toBeCloseTo(2.5 / cycle.engine.deliveryRatio, 9);
    // Without slip the blower delivers what it displaces, less what the throttle thins it.
    expect(limit.lifted.slip!).toBeGreaterThan(cycle.engine.deliveryRatio);
  });

  it('says the throttle where it starves the blower, and slip where the gaps are wide', () => {
    const tight = modelOf(
      changed(engine, { intake: { throttle: { bore: engine.intake.throttle.bore / 3 } } }),
    );
    const starved = solveToEnd(tight, at(5000));
    expect(solved(starved.result).engine.deliveryRatio).toBeLessThan(1);
    expect(finishStudy(airLimit(tight, at(5000), solved(starved.result), starved.next)).by).toBe('throttle');
    const loose = modelOf(changed(engine, { blower: { clearanceArea: 4 * engine.blower.clearanceArea } }));
    const leaky = solveToEnd(loose, at(5000));
    expect(solved(leaky.result).engine.deliveryRatio).toBeLessThan(1);
    expect(finishStudy(airLimit(loose, at(5000), solved(leaky.result), leaky.next)).by).toBe('slip');
  });

  it('judges by the largest gain that suffices, and names what comes next where enough is delivered', () => {
    const lifted = { slip: 1.02, throttle: 1.1, windows: null, exhaust: 0.9 };
    expect(judge(lifted, 0.8, 1)).toBe('throttle');
    expect(judge(lifted, 0.8, 1.2)).toBe('displacement');
    expect(judge(lifted, 1.05, 1)).toBe('throttle');
    expect(judge(lifted, 1.2, 1)).toBe('displacement');
  });

  it('lifts one thing and leaves the rest', () => {
    expect(lift(engine, 'slip').blower.clearanceArea).toBe(0);
    const wide = lift(engine, 'exhaust');
    expect(wide.collectors[0]!.outletDischarge.forward).toBe(
      2 * engine.collectors[0]!.outletDischarge.forward,
    );
    expect(wide.windows.transferDischarge).toBe(engine.windows.transferDischarge);
  });
});

describe('oneMoreTooth', () => {
  it('brings about as much more air as it turns the rotors faster, at a price in blower power', () => {
    const gain = finishStudy(oneMoreTooth(model, at(5000), null))!;
    const faster = gain.nextRatio / gain.ratio - 1;
    expect(faster).toBeCloseTo(1 / engine.blower.gears[0]!.driverTeeth, 9);
    expect(gain.deliveryRatio / cycle.engine.deliveryRatio).toBeGreaterThan(0.6 * faster);
    expect(gain.deliveryRatio / cycle.engine.deliveryRatio).toBeLessThan(1.3 * faster);
  });

  it('is nothing without gears', () => {
    const direct = modelOf(changed(engine, { blower: { gears: [] } }));
    expect(finishStudy(oneMoreTooth(direct, at(5000)))).toBeNull();
  });
});

describe('boostKept', () => {
  it('loses fuel as air is lost, and keeps the mixture', () => {
    const kept = boostKept(model, cycle);
    expect(kept.fuelLost / cycle.engine.fuelFlow).toBeCloseTo(kept.fuelLostShare, 12);
    expect(kept.fuelLostShare).toBeCloseTo(1 - cycle.engine.trappingEfficiency, 12);
    expect(kept.trappedLambda).toBeCloseTo(engine.charge.lambda, 6);
    expect(kept.fuelLostVolume * model.mixture.fuel.liquidDensity).toBeCloseTo(kept.fuelLost, 12);
  });

  it('compares the pressure when the windows have shut with plenum and collector', () => {
    const [first] = boostKept(model, cycle).cylinders;
    expect(first!.pressure).toBe(cycle.cylinders[0]!.pressureAtExhaustClosing);
    expect(first!.overPlenum).toBeCloseTo(first!.pressure - cycle.plenum.meanPressure, 6);
    expect(first!.overCollector).toBeCloseTo(first!.pressure - cycle.collectors[0]!.meanPressure, 6);
  });
});

describe('withFeed', () => {
  const injected = sound(finishStudy(withFeed(model, at(5000), otherFeed(engine.charge.feed))));
  const own = feedFigures(model, cycle);

  it('sets injection into the cylinders beside a carburettor: no fuel lost, and as much fed as that engine shuts in air for', () => {
    expect(injected.feed).toBe('cylinders');
    expect(injected.fuelLost).toBe(0);
    // Its air that stays, over the same λ: δ CE with the air it breathes, by hand.
    const air = injected.chargingEfficiency * referenceAirFlow(model, 5000 * rpm);
    // Some fuel is left of the last turn, which the injector counts.
    expect(injected.fuelFlow / (air / model.mixture.airFuelRatio)).toBeGreaterThan(0.95);
    expect(injected.fuelFlow / (air / model.mixture.airFuelRatio)).toBeLessThan(1.01);
  });

  it('tells what that costs: a warmer charge and a little less air and work, for the fuel that is no longer lost', () => {
    expect(injected.chargeTemperature).toBeGreaterThan(own.chargeTemperature + 3);
    expect(injected.chargingEfficiency).toBeLessThan(own.chargingEfficiency);
    expect(injected.fuelFlow).toBeLessThan(own.fuelFlow - 0.9 * own.fuelLost);
    expect(injected.brakePower / own.brakePower).toBeGreaterThan(0.85);
  });
});

describe('pressureToSwallow', () => {
  it('is where the held cylinders take that delivery ratio', () => {
    const pressure = finishStudy(pressureToSwallow(model, at(5000), cycle, 1.5))!;
    const plenum = { pressure, temperature: cycle.plenum.meanTemperature, purity: 1 };
    const { result: held } = finishStudy(solveHeld(withHeldPlenum(model), at(5000), plenum, null));
    expect(solved(held).engine.deliveryRatio).toBeCloseTo(1.5, 2);
    expect(pressure).toBeGreaterThan(cycle.plenum.meanPressure);
  });
});

describe('airSentence', () => {
  const figures = airFigures(model, cycle);
  const limit = { by: 'slip', lifted: { slip: 1, throttle: 1, windows: 1, exhaust: 1 }, shortBy: 1 } as const;

  it('gives the verdict, flow beside pressure, the gauge in bar and psi with its swing, and what limits', () => {
    const wanted = { deliveryRatio: 1.6, crankingSpeed: 500 * rpm };
    const text = airSentence([cycle], wanted, { ...figures, wantedAirFlow: 0.0083 }, limit, 1.35e5);
    expect(text).toMatch(/^The blower is not big enough at 5000 rpm/);
    expect(text).toContain(
      '8.30 g/s are wanted; the cylinders would swallow that with 0.337 bar in the plenum',
    );
    expect(text).toMatch(/A gauge on the plenum shows 0\.1\d\d bar \(1\.\d\d psi\), swinging by \d\d mbar\./);
    expect(text).toMatch(/What limits it there: slip/);
  });

  it('claims no displacement of a centrifugal blower', () => {
    const most = { ...limit, by: 'displacement' } as const;
    const of = (deliveryRatio: number) =>
      airSentence([cycle], { deliveryRatio, crankingSpeed: 500 * rpm }, figures, most, null, true);
    expect(of(1.6)).toMatch(/What limits it there: the blower’s wheel, its size or its speed/);
    expect(of(0.2)).toMatch(/Only a larger or faster wheel would bring more\.$/);
    expect(`${of(1.6)} ${of(0.2)}`).not.toMatch(/displace/);
  });

  it('says no more than the verdict where no point has an answer', () => {
    expect(airSentence([], { deliveryRatio: 1, crankingSpeed: 50 }, null, null, null)).toBe(
      'No speed was worked out.',
    );
  });
});
