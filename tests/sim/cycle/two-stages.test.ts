import { describe, expect, it } from 'vitest';
import { setValue } from '../../../src/design/set-value.ts';
import { toEngine } from '../../../src/design/to-engine.ts';
import type { Engine } from '../../../src/sim/index.ts';
import { pulses } from '../../../src/sim/study/pulses/pulses.ts';
import { BlowerSide } from '../../../src/sim/study/supply/blower-side.ts';
import { preset, sound } from '../../design/designs.ts';
import { at, changed, modelOf, notFinite, solveAt, solved } from '../../helpers/engines.ts';

/** Caraway 1 behind two stages, the second of two thirds of the first. */
const withSecond = (...settings: (readonly [path: string, text: string])[]): Engine =>
  toEngine(
    (
      [['blower.displacement_cc', '90'], ['blower.secondStage.displacement_cc', '50'], ...settings] as const
    ).reduce((design, [path, text]) => sound(setValue(design, path, text)), preset('caraway-1')),
  );
const plain = withSecond();
const cooled = withSecond(['blower.secondStage.cooler.effectiveness', '0.7']);
const wheel = withSecond(
  ['blower.secondStage.kind', 'centrifugal'],
  ['blower.secondStage.tipDiameter', '50mm'],
  ['blower.secondStage.gears[0].driver', '120'],
  ['blower.secondStage.gears[0].driven', '12'],
  ['blower.secondStage.maxSpeed', '150000'],
);
const points = {
  'two Roots stages': solved(solveAt(plain, 6000)),
  'with a cooler between them': solved(solveAt(cooled, 6000)),
  'a wheel behind Roots rotors': solved(solveAt(wheel, 6000)),
  'cooled, at cranking speed': solved(solveAt(cooled, 500)),
};

describe('a second stage', () => {
  it.each(Object.entries(points))('%s closes mass, species, energy and the fuel’s balance', (_, point) => {
    expect(notFinite(point)).toEqual([]);
    const { mass, energy, species } = point.residuals;
    expect(Math.max(mass, energy, species)).toBeLessThan(1e-12);
    // What a period still changes its volumes by, 1e-6, is a share of the turn's heat.
    const { fuel, ...rest } = point.engine.balance;
    expect(Math.abs(Object.values(rest).reduce((sum, each) => sum + each, 0) / fuel - 1)).toBeLessThan(5e-5);
    const { first, second } = point.stages!;
    expect(point.blower.shaftPower).toBe(first.shaftPower + second.shaftPower);
  });

  it('turns what the cooler takes into heat to walls, a colder charge and more of it', () => {
    const [hot, cold] = [points['two Roots stages'], points['with a cooler between them']];
    const { stages } = cold;
    const { heat, pressureLoss } = stages!.cooler!;
    expect(hot.stages!.cooler).toBeNull();
    expect(pressureLoss).toBeGreaterThan(0);
    // Effectiveness of the means: 0.7 of what the first stage left above the air, within what pulses shift.
    const reached = stages!.interstage.meanTemperature - stages!.beforeSecond.meanTemperature;
    expect(reached / (stages!.interstage.meanTemperature - cooled.ambient.temperature)).toBeCloseTo(0.7, 1);
    // Air with a fourteenth of petrol vapour: 1050 J/(kg K).
    expect(heat / (cold.blower.massFlow * 1050 * reached)).toBeCloseTo(1, 1);
    expect(cold.plenum.meanTemperature).toBeLessThan(hot.plenum.meanTemperature - 5);
    expect(cold.engine.deliveryRatio).toBeGreaterThan(hot.engine.deliveryRatio);
    // The colder charge takes some of it back from the warm walls of plenum and passages.
    const more = cold.engine.balance.otherWalls - hot.engine.balance.otherWalls;
    expect(more / heat).toBeGreaterThan(0.6);
    expect(more / heat).toBeLessThan(1);
  });

  it('asks its own torque of the crank beside the first, and the first’s shaft feels only the first', () => {
    const point = points['two Roots stages'];
    const { torque, blowerDrive } = pulses(modelOf(plain), point);
    const omega = point.speed;
    const { first } = point.stages!;
    expect((torque.mean.blower * omega) / point.blower.shaftPower).toBeCloseTo(1, 9);
    expect((torque.firstStage.mean * omega) / first.shaftPower).toBeCloseTo(1, 9);
    const { efficiency, ratio } = modelOf(plain).drive;
    expect(blowerDrive.torque.mean / ((first.shaftPower * efficiency) / (omega * ratio))).toBeCloseTo(1, 9);
  });

  it('lengthens the period to what both gear trains ask for, and averages its ripple where that is too long', () => {
    const drive = (driver: string, driven: string) =>
      modelOf(
        withSecond(
          ['blower.gears[0].driver', '36'],
          ['blower.gears[0].driven', '24'],
          ['blower.secondStage.gears[0].driver', driver],
          ['blower.secondStage.gears[0].driven', driven],
        ),
      ).drive;
    // Six pulses a rotor turn: 3/2 repeats after one turn, 37/24 after four, 37/20 after ten.
    expect(drive('37', '24')).toMatchObject({
      turns: 4,
      phaseAveraged: false,
      second: { phaseAveraged: false },
    });
    expect(drive('37', '20')).toMatchObject({
      turns: 1,
      phaseAveraged: false,
      second: { phaseAveraged: true },
    });
  });

  it('finds the same interstage pressure in steady flow whatever the first guess: displaced volumes alone fix it', () => {
    const still = { clearanceArea: 0, casingHeatShare: 0 };
    const engine = changed(plain, {
      blower: still,
      secondStage: { blower: still },
      intake: { throttle: { bore: 0.2 }, boxWall: { area: 0 } },
      plenum: { wall: { area: 0 }, relief: null },
      charge: { lambda: 1e6, oilShare: 0 },
    });
    const model = modelOf(engine);
    const supply = new BlowerSide(model, at(6000)).at(2.5 * engine.ambient.pressure)!;
    const { fluidPower, displaced, boxTemperature, temperature } = supply;
    // No heat leaves: the work is the rise of enthalpy.
    expect(fluidPower / (displaced * 1012 * (temperature - boxTemperature))).toBeCloseTo(1, 2);
  });
});
