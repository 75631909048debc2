import { describe, expect, it } from 'vitest';
import { orificeMassFlow } from '../../../../src/sim/exchange/orifice.ts';
import { solveToEnd } from '../../../../src/sim/index.ts';
import { BlowerSide } from '../../../../src/sim/study/supply/blower-side.ts';
import { TURN } from '../../../../src/sim/units.ts';
import { at, changed, modelOf, presetEngine, solved } from '../../../helpers/engines.ts';

const lovage = presetEngine('lovage-7');
const p = lovage.ambient.pressure;
/** No heat to any wall, no loss to the casing, no relief. */
const adiabatic = changed(lovage, {
  plenum: { wall: { area: 0 }, relief: null },
  intake: { boxWall: { area: 0 } },
  blower: { casingHeatShare: 0 },
});

describe('BlowerSide', () => {
  it('delivers displacement × inlet density at zero pressure rise, clearances or not', () => {
    const model = modelOf(lovage);
    const side = new BlowerSide(model, at(5000));
    // The plenum held at what the box then has: find it by going there.
    let pressure = p;
    for (let i = 0; i < 60; i++) pressure = side.at(pressure)!.boxPressure;
    const supply = side.at(pressure)!;
    const { blower } = lovage;
    const perSecond = (blower.count * blower.displacement * model.drive.ratio * at(5000).speed) / TURN;
    const fuel = 1 / (1 + model.mixture.airFuelRatio);
    const R = (1 - fuel) * model.set.gasConstants[0] + fuel * model.set.gasConstants[1];
    const density = supply.boxPressure / (R * supply.boxTemperature);
    expect(Math.abs(supply.slip / supply.displaced)).toBeLessThan(1e-3);
    expect(supply.displaced / (perSecond * density)).toBeCloseTo(1, 9);
    expect(supply.massFlow / (perSecond * density)).toBeCloseTo(1, 3);
  });

  it('sends the orifice flow back through the clearances where the blower stands still', () => {
    const still = modelOf(changed(lovage, { blower: { displacement: 1e-12 } }));
    const supply = new BlowerSide(still, at(500)).at(1.4e5)!;
    const { clearanceArea, clearanceDischarge, count } = lovage.blower;
    const fuel = 1 / (1 + still.mixture.airFuelRatio);
    const R = (1 - fuel) * still.set.gasConstants[0] + fuel * still.set.gasConstants[1];
    const CdA = count * clearanceArea * clearanceDischarge;
    // gamma of the charge lies near 1.38; the orifice hardly knows the difference.
    const flow = orificeMassFlow(CdA, 1.4e5, supply.temperature, supply.boxPressure, 1.38, R);
    expect(supply.slip / flow).toBeCloseTo(1, 2);
    expect(supply.massFlow / -flow).toBeCloseTo(1, 2);
  });

  it('without leaks or heat loss raises the charge by its work: T2/T1 = 1 + (g - 1)/g (p2/p1 - 1)', () => {
    const tight = modelOf(changed(adiabatic, { blower: { clearanceArea: 0 } }));
    const supply = new BlowerSide(tight, at(5000)).at(1.5e5)!;
    const fuel = 1 / (1 + tight.mixture.airFuelRatio);
    const R = (1 - fuel) * tight.set.gasConstants[0] + fuel * tight.set.gasConstants[1];
    const perKilogram = supply.fluidPower / supply.displaced;
    expect(perKilogram / (R * supply.boxTemperature * (1.5e5 / supply.boxPressure - 1))).toBeCloseTo(1, 6);
    // cp of the charge between 1010 and 1080 J/(kg K) at these temperatures.
    const cp = perKilogram / (supply.temperature - supply.boxTemperature);
    expect(cp).toBeGreaterThan(1010);
    expect(cp).toBeLessThan(1080);
  });

  it('falls as the plenum is held higher, and heats it more', () => {
    const side = new BlowerSide(modelOf(lovage), at(5000));
    const rising = [1.0e5, 1.1e5, 1.2e5, 1.4e5, 1.6e5].map((pressure) => side.at(pressure)!);
    for (let i = 1; i < rising.length; i++) {
      expect(rising[i]!.airFlow).toBeLessThan(rising[i - 1]!.airFlow);
      expect(rising[i]!.temperature).toBeGreaterThan(rising[i - 1]!.temperature);
    }
  });

  it('passes at the cycle’s mean plenum pressure what the cycle passes, within 1 % at running speed', () => {
    for (const name of ['lovage-7', 'parsley-5'] as const) {
      const model = modelOf(presetEngine(name));
      const cycle = solved(solveToEnd(model, at(5000)).result);
      const supply = new BlowerSide(model, at(5000)).at(cycle.plenum.meanPressure)!;
      expect(supply.airFlow / cycle.engine.airFlow).toBeCloseTo(1, 2);
      expect(supply.fluidPower / cycle.blower.fluidPower).toBeCloseTo(1, 2);
    }
  });
});
