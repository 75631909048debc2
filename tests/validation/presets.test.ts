import { describe, expect, it } from 'vitest';
import type { OperatingPoint, Solution, SolvedStart } from '../../src/sim/index.ts';
import { solveToEnd } from '../../src/sim/index.ts';
import type { SolvedPoint } from '../../src/sim/results/point-result.ts';
import type { PresetName } from '../helpers/engines.ts';
import {
  PRESET_NAMES,
  at,
  modelOf,
  notFinite,
  presetEngine,
  solved,
  spreadOfSpeeds,
} from '../helpers/engines.ts';

const models = new Map(PRESET_NAMES.map((name) => [name, modelOf(presetEngine(name))]));

const CASES = PRESET_NAMES.flatMap((name) => {
  const [, middle, top] = spreadOfSpeeds(presetEngine(name));
  return [250, middle, top].map((speed_rpm) => ({ name, speed_rpm }));
});

const answers = new Map<string, Solution>();
function answer(name: PresetName, speed_rpm: number): { result: SolvedPoint; next: SolvedStart } {
  const key = `${name} ${speed_rpm}`;
  if (!answers.has(key)) answers.set(key, solveToEnd(models.get(name)!, at(speed_rpm)));
  const { result, next } = answers.get(key)!;
  return { result: solved(result), next: next! };
}

/** The same point from where it settled. */
const again = (
  name: PresetName,
  point: OperatingPoint,
  start: SolvedStart,
  options: { parts?: number; change?: number },
): SolvedPoint => solved(solveToEnd(models.get(name)!, point, { start, ...options }).result);

describe('solveToEnd', () => {
  it.each(CASES)('solves $name at $speed_rpm rpm with finite figures only', ({ name, speed_rpm }) => {
    expect(notFinite(answer(name, speed_rpm).result)).toEqual([]);
  });

  it.each(PRESET_NAMES)('solves %s at every quarter of its range, cranking included', (name) => {
    const model = models.get(name)!;
    const { crankingSpeed, minSpeed, maxSpeed } = model.engine.wanted;
    const speeds = [
      crankingSpeed,
      ...Array.from({ length: 5 }, (_, i) => minSpeed + (i * (maxSpeed - minSpeed)) / 4),
    ];
    let start: SolvedStart | null = null;
    for (const speed of speeds) {
      const solution: Solution = solveToEnd(model, { speed, throttle: 1 }, { start });
      expect(notFinite(solved(solution.result).engine)).toEqual([]);
      start = solution.next;
    }
  });

  it.each(CASES)(
    'loses less than 1e-9 of mass, species and energy over a period of $name at $speed_rpm rpm, and repeats it to 1e-6',
    ({ name, speed_rpm }) => {
      const { mass, species, energy, change } = answer(name, speed_rpm).result.residuals;
      expect(mass).toBeLessThan(1e-9);
      expect(species).toBeLessThan(1e-9);
      expect(energy).toBeLessThan(1e-9);
      expect(change).toBeLessThan(1e-6);
    },
  );

  it.each(CASES)(
    'changes IMEP, plenum pressure and delivery ratio of $name at $speed_rpm rpm by less than 0.1 % when every step is halved',
    ({ name, speed_rpm }) => {
      const { result, next } = answer(name, speed_rpm);
      const halved = again(name, at(speed_rpm), next, { parts: 2 });
      const ratio = (of: (point: SolvedPoint) => number) => Math.abs(of(halved) / of(result) - 1);
      expect(ratio(({ engine }) => engine.imep)).toBeLessThan(1e-3);
      expect(ratio(({ plenum }) => plenum.meanPressure)).toBeLessThan(1e-3);
      expect(ratio(({ engine }) => engine.deliveryRatio)).toBeLessThan(1e-3);
    },
  );
});

describe('energyBalance', () => {
  it.each(CASES)(
    'finds where all the fuel energy of $name at $speed_rpm rpm goes, to 1e-6, once the period repeats to 1e-9',
    ({ name, speed_rpm }) => {
      // What a volume still gains over a period is missing from the balance, so the period must repeat well.
      const { balance } = again(name, at(speed_rpm), answer(name, speed_rpm).next, { change: 1e-9 }).engine;
      const { fuel, brake, friction, blower, cylinderWalls, otherWalls, exhaustSensible, unburned } = balance;
      const spent = brake + friction + blower + cylinderWalls + otherWalls + exhaustSensible + unburned;
      expect(fuel).toBeGreaterThan(0);
      expect(Math.abs(spent / fuel - 1)).toBeLessThan(1e-6);
    },
  );
});

describe('SolvedPoint', () => {
  it.each(CASES)(
    'has shares and temperatures of $name at $speed_rpm rpm within their bounds',
    ({ name, speed_rpm }) => {
      const { engine, cylinders, blower, plenum } = answer(name, speed_rpm).result;
      for (const share of [engine.scavengingEfficiency, engine.trappingEfficiency, blower.slipFraction]) {
        expect(share).toBeGreaterThan(0);
        expect(share).toBeLessThan(1);
      }
      // Fuel cannot do more work than it holds; what is retained cannot exceed what was delivered.
      expect(engine.balance.brake + engine.balance.friction).toBeLessThan(0.5 * engine.balance.fuel);
      expect(engine.chargingEfficiency).toBeLessThan(engine.deliveryRatio);
      expect(
        Math.abs(engine.chargingEfficiency / (engine.deliveryRatio * engine.trappingEfficiency) - 1),
      ).toBeLessThan(1e-12);
      expect(plenum.minPressure).toBeLessThanOrEqual(plenum.meanPressure);
      expect(plenum.maxPressure).toBeGreaterThanOrEqual(plenum.meanPressure);
      for (const cylinder of cylinders) {
        expect(cylinder.purity).toBeGreaterThan(0);
        expect(cylinder.purity).toBeLessThan(1);
        expect(cylinder.trappedAir).toBeLessThan(cylinder.trappedMass);
        expect(cylinder.peakTemperature).toBeLessThan(3500);
        expect(cylinder.peakPressure).toBeGreaterThan(cylinder.pressureAtExhaustClosing);
        expect(cylinder.exhaustTemperature).toBeLessThan(cylinder.peakTemperature);
      }
    },
  );

  it.each(CASES)(
    'passes as much air through throttle as through the transfer windows of $name at $speed_rpm rpm, but for relief',
    ({ name, speed_rpm }) => {
      const { result } = answer(name, speed_rpm);
      const model = models.get(name)!;
      const { pressure, temperature } = model.engine.ambient;
      const density = pressure / (model.set.gasConstants[0] * temperature);
      const throughWindows =
        (result.engine.deliveryRatio * density * result.engine.sweptVolume * result.speed) / (2 * Math.PI);
      const { relief } = model.engine.plenum;
      const shut = !relief || result.plenum.maxPressure - pressure < relief.crackingPressure;
      if (shut) expect(Math.abs(throughWindows / result.engine.airFlow - 1)).toBeLessThan(1e-4);
      else expect(throughWindows).toBeLessThan(result.engine.airFlow);
      expect(result.engine.fuelFlow * model.mixture.airFuelRatio).toBeCloseTo(result.engine.airFlow, 10);
    },
  );
});
