import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Engine } from '../../../../src/sim/index.ts';
import { solveToEnd } from '../../../../src/sim/index.ts';
import {
  intakeTract,
  mixturePassesCrankcase,
  oilFlow,
} from '../../../../src/sim/study/checks/intake-tract.ts';
import { clearanceFromTest, heldPressure } from '../../../../src/sim/study/checks/leak-check.ts';
import { snappedThrottle } from '../../../../src/sim/study/checks/snapped-throttle.ts';
import { finishStudy } from '../../../../src/sim/study/study-step.ts';
import { airDensity, powerCorrection } from '../../../../src/sim/study/checks/standard-air.ts';
import { atm, bar, cc, mm2, rpm } from '../../../../src/sim/units.ts';
import { sound } from '../../../design/designs.ts';
import { at, changed, modelOf, presetEngine, solved } from '../../../helpers/engines.ts';

const engine = presetEngine('parsley-5');
const model = modelOf(engine);
const cycle = solved(solveToEnd(model, at(5000)).result);

describe('clearanceFromTest', () => {
  const reading = {
    displacement: 118 * cc,
    rotorSpeed: 1500 * rpm,
    heldPressure: atm + 0.1 * bar,
    inletPressure: atm,
    inletTemperature: 293.15,
    gasTemperature: 293.15,
  };

  it('finds 22.96 mm² (Cd A) where 118 cc at 1500 rpm hold 0.1 bar', () => {
    // By hand: 2.95e-3 m³/s at 1.204 kg/m³ are 3.552e-3 kg/s. sqrt(2 · 1.323 kg/m³ · 1e4 Pa) = 162.7 kg/(s m²) without
    // compressibility; expansion to 0.9102 of the pressure leaves 0.9506 of that: 154.7, and 22.96 mm².
    expect(sound(clearanceFromTest(reading)) / mm2 / 22.96).toBeCloseTo(1, 2);
  });

  it('undoes what heldPressure does, for any clearance and speed', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 200, noNaN: true }),
        fc.double({ min: 300, max: 6000, noNaN: true }),
        (area_mm2, speed_rpm) => {
          const test = { ...reading, rotorSpeed: speed_rpm * rpm };
          const held = heldPressure(area_mm2 * mm2, test);
          const found = clearanceFromTest({ ...test, heldPressure: held });
          // Below a pascal of rise the pressure is found too coarsely to be turned back.
          if (held - atm > 10) expect(sound(found) / mm2 / area_mm2).toBeCloseTo(1, 3);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('finds less area where the same blower holds more, more where it is hot or turned faster', () => {
    const area = (changes: Partial<typeof reading>) => sound(clearanceFromTest({ ...reading, ...changes }));
    expect(area({ heldPressure: atm + 0.2 * bar })).toBeLessThan(area({}));
    expect(area({ gasTemperature: 353.15 })).toBeGreaterThan(area({}));
    expect(area({ rotorSpeed: 3000 * rpm }) / area({})).toBeCloseTo(2, 12);
  });

  it.each([
    [{ heldPressure: atm }, 'heldPressure'],
    [{ rotorSpeed: 0 }, 'rotorSpeed'],
    [{ gasTemperature: NaN }, 'gasTemperature'],
  ])('refuses %o and names what is wrong', (changes, path) => {
    const found = clearanceFromTest({ ...reading, ...changes });
    expect(found).toMatchObject({ ok: false, faults: [{ path }] });
  });
});

const crankcase = (isPlenum: boolean): Engine['crankcase'] => ({
  isPlenum,
  volume: 2000 * cc,
  breather: { area: 100 * mm2, dischargeCoefficient: 0.6 },
  blowBy: { area: 0, dischargeCoefficient: 0.6 },
  wall: engine.plenum.wall,
});

describe('mixturePassesCrankcase', () => {
  it('is so for a carburettor and a crankcase that is part of the plenum alone', () => {
    const { charge } = engine;
    expect(mixturePassesCrankcase({ charge, crankcase: crankcase(true) })).toBe(true);
    expect(mixturePassesCrankcase({ charge, crankcase: crankcase(false) })).toBe(false);
    expect(mixturePassesCrankcase({ charge, crankcase: null })).toBe(false);
    const injected = { ...charge, feed: 'passages' as const };
    expect(mixturePassesCrankcase({ charge: injected, crankcase: crankcase(true) })).toBe(false);
  });
});

describe('intakeTract', () => {
  it('has throat speeds of Bernoulli for a small depression: sqrt(2 dp / rho)', () => {
    const { depression, throatSpeed, greatestDepression, boreSpeed } = intakeTract(model, cycle);
    const density = atm / (287.05 * engine.ambient.temperature);
    expect(throatSpeed / Math.sqrt((2 * depression) / density)).toBeCloseTo(1, 2);
    expect(greatestDepression).toBeGreaterThanOrEqual(depression);
    // The whole bore carries the flow more slowly than its open, contracted part.
    expect(boreSpeed).toBeLessThan(throatSpeed);
  });

  it('wets 900 + 350 + 5 × 30 cc in Parsley 5', () => {
    expect(intakeTract(model, cycle).wettedVolume / cc).toBeCloseTo(1400, 9);
  });

  it('wets 2000 cc of crankcase besides where that is part of the plenum, and none where it is vented', () => {
    const wetted = (isPlenum: boolean) =>
      intakeTract({ ...model, engine: { ...engine, crankcase: crankcase(isPlenum) } }, cycle).wettedVolume /
      cc;
    expect(wetted(true)).toBeCloseTo(3400, 9);
    expect(wetted(false)).toBeCloseTo(1400, 9);
  });
});

describe('oilFlow', () => {
  it('is the oil’s share by volume of the fuel’s flow, none without oil', () => {
    const fuel = cycle.engine.fuelFlow / model.mixture.fuel.liquidDensity;
    expect(oilFlow(model, cycle) / fuel).toBeCloseTo(engine.charge.oilShare, 12);
    expect(oilFlow(modelOf(changed(engine, { charge: { oilShare: 0 } })), cycle)).toBe(0);
  });
});

describe('airDensity', () => {
  it('is 1.2041 kg/m³ dry at 20 °C, 1.1936 saturated: lighter by 0.378 of the vapour’s pressure (CIPM-2007 within 0.05 %)', () => {
    expect(airDensity(atm, 293.15, 0).whole / 1.2041).toBeCloseTo(1, 3);
    expect(airDensity(atm, 293.15, 1).whole / 1.1936).toBeCloseTo(1, 3);
    expect(airDensity(atm, 293.15, 1).dry).toBeLessThan(airDensity(atm, 293.15, 1).whole);
  });
});

describe('snappedThrottle', () => {
  it('draws the box down turn by turn, never below what an ideal blower could empty it to', () => {
    const dill = modelOf(presetEngine('dill-3'));
    const found = finishStudy(snappedThrottle(dill, at(3000)));
    if (!found.ok) throw new Error('dill-3 must solve');
    const { turns, boxDepression, plenumDepression } = found.value;
    const { blower, intake, ambient } = dill.engine;
    const displaced = blower.count * blower.displacement * dill.drive.ratio;
    const before = solved(solveToEnd(dill, at(3000)).result);
    expect(turns[1]!.box).toBeLessThan(turns[0]!.box);
    expect(turns.at(-1)!.box).toBeLessThan(0.9 * before.inletBox.meanPressure);
    turns.forEach(({ box }, i) => {
      // From a closed box an ideal blower takes d(mass)/mass = dV/V; isentropic, with the exponent of air.
      const ideal = before.inletBox.minPressure * Math.exp((-1.4 * displaced * (i + 1)) / intake.boxVolume);
      expect(box).toBeGreaterThan(0.999 * ideal);
    });
    expect(boxDepression).toBeCloseTo(ambient.pressure - Math.min(...turns.map(({ box }) => box)), 6);
    expect(plenumDepression).toBeLessThan(boxDepression);
  });
});

describe('powerCorrection', () => {
  it('is 1 in dry air of 990 mbar and 298 K, above it where air is thin, hot or moist', () => {
    expect(powerCorrection(99e3, 298, 0)).toBeCloseTo(1, 12);
    expect(powerCorrection(90e3, 298, 0)).toBeCloseTo(1.18 * 1.1 - 0.18, 12);
    expect(powerCorrection(99e3, 308, 0)).toBeGreaterThan(1);
    expect(powerCorrection(99e3, 298, 0.8)).toBeGreaterThan(1);
  });
});
