import { describe, expect, it } from 'vitest';
import { setValue } from '../../../src/design/set-value.ts';
import { toEngine } from '../../../src/design/to-engine.ts';
import { SpeedLine } from '../../../src/sim/blower/centrifugal/speed-line.ts';
import type { Engine } from '../../../src/sim/index.ts';
import { BlowerSide } from '../../../src/sim/study/supply/blower-side.ts';
import { preset, sound } from '../../design/designs.ts';
import { at, changed, modelOf, notFinite, solveAt, solved } from '../../helpers/engines.ts';

const lovageWith = (...settings: (readonly [path: string, text: string])[]): Engine =>
  toEngine(
    settings.reduce((design, [path, text]) => sound(setValue(design, path, text)), preset('lovage-7')),
  );
const centrifugal = lovageWith(
  ['blower.kind', 'centrifugal'],
  ['blower.count', '1'],
  ['blower.tipDiameter', '66mm'],
  ['blower.gears[0].driver', '96'],
  ['blower.gears[0].driven', '12'],
);
const internal = lovageWith(['blower.kind', 'internal compression'], ['blower.volumeRatio', '1.3']);

/** Nothing but a throttle that is hardly there and a blower that keeps its heat: air in steady flow. */
const bare = (engine: Engine): Engine =>
  changed(engine, {
    blower: { clearanceArea: 0, casingHeatShare: 0 },
    intake: { throttle: { bore: 0.2 }, boxWall: { area: 0 } },
    plenum: { wall: { area: 0 }, relief: null },
    charge: { lambda: 1e6, oilShare: 0 },
  });
const ambient = centrifugal.ambient.pressure;

describe('DisplacementBlower with internal compression', () => {
  it('heats as an isentropic compressor where the plenum has just the pressure that it reaches inside', () => {
    const side = new BlowerSide(modelOf(bare(internal)), at(6000));
    const { temperature, boxTemperature, boxPressure, pressure } = side.at(ambient * 1.3 ** 1.4)!;
    // Gamma of the moist air that is drawn in is 1.3995.
    expect(temperature / boxTemperature).toBeCloseTo((pressure / boxPressure) ** (0.4 / 1.4), 3);
  });

  it('takes less than a Roots blower at 9500 rpm, where it fits, and more at 3000 rpm, and says so', () => {
    const roots: Engine = { ...internal, blower: { ...internal.blower, kind: 'roots', volumeRatio: 1 } };
    const [fast, slow] = [9500, 3000].map((speed) =>
      [internal, roots].map((engine) => solved(solveAt(engine, speed))),
    );
    expect(fast[0].blower.shaftPower).toBeLessThan(0.95 * fast[1].blower.shaftPower);
    expect(fast[0].blower.isentropicEfficiency!).toBeGreaterThan(fast[1].blower.isentropicEfficiency!);
    expect(slow[0].blower.shaftPower).toBeGreaterThan(1.3 * slow[1].blower.shaftPower);
    expect(slow[0].notes.map(({ text }) => text).join()).toMatch(/compresses more than is needed/);
    expect(slow[1].notes.map(({ text }) => text).join()).not.toMatch(/compress/);
  });
});

describe('CentrifugalBlower', () => {
  it('sends on what its speed line says, heated by its work over specific heat, in steady flow', () => {
    // Its throat so wide that choking is out of sight.
    const engine = changed(bare(centrifugal), { blower: { impeller: { throatArea: 0.01 } } });
    const { blower } = engine;
    const side = new BlowerSide(modelOf(engine), at(9000));
    const rotor = 8 * 150; // turns a second
    const U = Math.PI * blower.tipDiameter * rotor;
    for (const ratio of [1.2, 1.35]) {
      const { displaced, boxPressure, boxTemperature, pressure, temperature } = side.at(ratio * ambient)!;
      const R = 287.06;
      const x = displaced / (boxPressure / (R * boxTemperature)) / (blower.displacement * rotor);
      const line = new SpeedLine(blower.impeller!, blower.displacement, blower.tipDiameter);
      const head = (3.5 * R * boxTemperature * ((pressure / boxPressure) ** (1 / 3.5) - 1)) / (U * U);
      expect(line.head(x) / head).toBeCloseTo(1, 2);
      expect(((temperature - boxTemperature) * 3.5 * R) / (line.work(x) * U * U)).toBeCloseTo(1, 2);
    }
  });

  it('passes no more than chokes its throat, here of a quarter of the area, and says so', () => {
    const throat = centrifugal.blower.impeller!.throatArea;
    const small = changed(centrifugal, { blower: { impeller: { throatArea: 0.25 * throat } } });
    const { blower, notes } = solved(solveAt(small, 9000));
    expect(blower.wheel!.ofChoke).toBeGreaterThan(0.95);
    expect(blower.wheel!.ofChoke).toBeLessThan(1);
    expect(notes.map(({ text }) => text).join()).toMatch(/chokes/);
  });

  it.each([500, 9000])('closes mass and energy at %d rpm, cranking included', (speed) => {
    const point = solved(solveAt(centrifugal, speed));
    expect(notFinite(point)).toEqual([]);
    expect(Math.max(point.residuals.mass, point.residuals.energy, point.residuals.species)).toBeLessThan(
      1e-12,
    );
    const { fuel, ...rest } = point.engine.balance;
    expect(Object.values(rest).reduce((sum, each) => sum + each, 0) / fuel).toBeCloseTo(1, 5);
    // Pressure goes with the square of speed: some 0.5 rho U^2.
    const U = point.blower.tipSpeed;
    expect(point.blower.pressureRise / (1.2 * U * U)).toBeGreaterThan(0.25);
    expect(point.blower.pressureRise / (1.2 * U * U)).toBeLessThan(0.65);
  });

  it('says that it surges where a restricted engine takes too little of what it could carry', () => {
    const [outlet] = centrifugal.collectors;
    const restricted = changed(centrifugal, {
      collectors: [changed(outlet, { outletArea: 0.15 * outlet.outletArea })],
    });
    const { blower, notes } = solved(solveAt(restricted, 6000));
    expect(blower.wheel!.flow).toBeLessThan(blower.wheel!.surge);
    expect(notes.map(({ text }) => text).join()).toMatch(/surges/);
  });
});
