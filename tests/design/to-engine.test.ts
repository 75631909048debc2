import { describe, expect, it } from 'vitest';
import { setValues } from '../../src/design/set-value.ts';
import { toEngine } from '../../src/design/to-engine.ts';
import type { Design } from '../../src/design/schema/design.ts';
import { buildGeometry } from '../../src/sim/geometry/build-geometry.ts';
import { deg } from '../../src/sim/units.ts';
import { validate } from '../../src/design/validate.ts';
import { PRESETS, faultPaths, preset, sound } from './designs.ts';

const changed = (name: string, changes: Record<string, string>) =>
  sound(
    setValues(
      preset(name),
      Object.entries(changes).map(([path, text]) => ({ path, text })),
    ),
  );

describe('toEngine', () => {
  it('takes the pressure of the standard atmosphere where an altitude is typed, 89.87 kPa at 1000 m, and refuses both', () => {
    const high = changed('caraway-1', { altitude: '1000 m' });
    expect(toEngine(high).ambient.pressure / 1e3).toBeCloseTo(89.87, 1);
    const typed = sound(setValues(high, [{ path: 'surroundings.pressure', text: '95 kPa' }]));
    expect(typed.surroundings.altitude_m).toBeUndefined();
    expect(toEngine(typed).ambient.pressure).toBeCloseTo(95e3, 6);
    const both = { ...typed, surroundings: { ...typed.surroundings, altitude_m: 0 } };
    expect(faultPaths(validate(both))).toEqual(['surroundings']);
  });

  it('turns every kind of unit into base SI', () => {
    const engine = toEngine(preset('lovage-7'));
    expect(engine.cylinder.bore).toBeCloseTo(0.04, 12);
    expect(engine.train.crankRadius).toBeCloseTo(0.0205, 12);
    expect(engine.ambient).toEqual({ pressure: 101325, temperature: 293.15, humidity: 0 });
    expect(engine.passages.entryArea).toBeCloseTo(480e-6, 12);
    expect(engine.plenum.volume).toBeCloseTo(1.1e-3, 12);
    expect(engine.plenum.relief!.crackingPressure).toBeCloseTo(70000, 6);
    expect(engine.wanted.speed).toBeCloseTo(200 * Math.PI, 9);
    expect(engine.train.rows[0]!.cylinders[0]!.sparkAdvance).toBeCloseTo(24 * deg, 12);
    expect(engine.friction.pistonSpeedFactor).toBeCloseTo(2000, 9);
    expect(engine.cylinderHeat.annandC).toBe(4.3e-9);
    expect(engine.cylinderHeat.crownTemperature).toBeCloseTo(523.15, 9);
    const squared = toEngine(changed('lovage-7', { speedSquaredFactor: '0.001' }));
    const topSpeed = 1000 * Math.PI; // 30 000 rpm
    expect(squared.friction.speedSquaredFactor * topSpeed ** 2).toBeCloseTo(0.001 * 30000 ** 2, 6);
  });

  it('leaves no number undefined or infinite in any preset', () => {
    const walk = (value: unknown, path: string): void => {
      expect(value, path).not.toBeUndefined();
      if (typeof value === 'number') expect(Number.isFinite(value), path).toBe(true);
      if (value !== null && typeof value === 'object') {
        for (const [key, inner] of Object.entries(value)) walk(inner, `${path}.${key}`);
      }
    };
    for (const name of PRESETS) walk(toEngine(preset(name.replace('.json', ''))), name);
  });

  it('derives rods, knuckles and even axes where none are given', () => {
    const row = toEngine(preset('lovage-7')).train.rows[0]!;
    expect(row.cylinders.map(({ axisAngle }) => axisAngle / deg)[3]).toBeCloseTo((3 * 360) / 7, 9);
    expect(row.cylinders[3]!.knuckleAngle).toBeCloseTo(row.cylinders[3]!.axisAngle, 12);
    expect(row.cylinders[3]!.rodLength).toBeCloseTo(0.063, 12);
  });

  it('derives displacement, ripple and clearance area from the rotors, unless they are typed', () => {
    const { blower } = toEngine(
      changed('dill-3', {
        tipDiameter: '60',
        rotorLength: '80',
        lobes: '2',
        meshGap: '0.1',
        tipGap: '0.1',
        endGap: '0.1',
      }),
    );
    expect(blower.displacement).toBeCloseTo((Math.PI / 4) * 0.06 ** 2 * 0.08, 12); // two cycloidal lobes fill half
    expect(blower.rippleDepth).toBeCloseTo(1 / 9, 12);
    expect(blower.clearanceArea).toBeCloseTo(36e-6, 12);
    const typed = toEngine(
      changed('dill-3', { displacement_cc: '250', ripple: '0.2', clearanceArea: '40' }),
    ).blower;
    expect(typed.displacement).toBeCloseTo(250e-6, 12);
    expect(typed.rippleDepth).toBe(0.2);
    expect(typed.clearanceArea).toBeCloseTo(40e-6, 12);
  });

  it('derives them from the stated profile and axes: arcs displace more and ripple more, lands less', () => {
    const plain = toEngine(preset('lovage-7')).blower;
    const arcs = toEngine(changed('lovage-7', { 'blower.profile': 'circular arc' })).blower;
    expect(arcs.displacement / plain.displacement).toBeGreaterThan(1.1);
    expect(arcs.rippleDepth).toBeGreaterThan(plain.rippleDepth);
    const apart = toEngine(changed('lovage-7', { 'blower.centreDistance': '44 mm' })).blower;
    expect(apart.displacement).toBeLessThan(plain.displacement);
    expect(apart.rotors.centreDistance).toBeCloseTo(0.044, 12);
    // The default axes leave the mesh gap between full cycloids: (57 + 0.06) / (4/3).
    expect(plain.rotors.centreDistance).toBeCloseTo(0.05706 * 0.75, 9);
  });

  it('is spared axes at which rotors cannot mesh, unless the displacement is typed', () => {
    const set = (...texts: [string, string][]) =>
      setValues(
        preset('lovage-7'),
        texts.map(([path, text]) => ({ path, text })),
      );
    const close = set(['blower.centreDistance', '40 mm']);
    expect(close).toMatchObject({ ok: false, faults: [{ path: 'blower.centreDistance_mm' }] });
    expect(set(['blower.centreDistance', '40 mm'], ['blower.displacement', '100 cc']).ok).toBe(true);
  });

  it('applies corrections to the cylinder they name and to no other', () => {
    const engine = toEngine(
      changed('angelica-14', {
        'corrections[B3].barrel': '0.4mm',
        'corrections[B3].spark': '20',
        'corrections[B3].collector': '1',
      }),
    );
    const corrected = engine.train.rows
      .flatMap(({ cylinders }) => cylinders)
      .map(({ barrelOffset }) => barrelOffset);
    expect(corrected.filter((offset) => offset !== 0)).toEqual([0.0004]);
    expect(engine.train.rows[1]!.cylinders[2]).toMatchObject({ collector: 0 });
    expect(engine.train.rows[1]!.cylinders[1]).toMatchObject({ collector: 1 });
    expect(engine.train.rows[1]!.cylinders[2]!.sparkAdvance).toBeCloseTo(20 * deg, 12);
  });

  it('gives the same strokes when the master rod is moved round the row by one cylinder', () => {
    const first = sound(buildGeometry(toEngine(preset('lovage-7'))));
    const second = sound(buildGeometry(toEngine(changed('lovage-7', { 'rows[0].master': '2' }))));
    for (let j = 0; j < 7; j++) {
      expect(second.cylinders[(j + 1) % 7]!.stroke).toBeCloseTo(first.cylinders[j]!.stroke, 10);
    }
  });

  it('interleaves Angelica 14 to intervals of 25.7° give or take the 6° of articulated rods, and fires rows in pairs, less than 6° apart, at a throw of 180°', () => {
    const least = (design: Design) => {
      const { cylinders } = sound(buildGeometry(toEngine(design)));
      const tdcs = cylinders.map(({ tdc }) => tdc / deg).sort((a, b) => a - b);
      return Math.min(...tdcs.map((tdc, i) => (i === 0 ? tdc + 360 - tdcs.at(-1)! : tdc - tdcs[i - 1]!)));
    };
    expect(least(preset('angelica-14'))).toBeGreaterThan(360 / 14 - 6);
    expect(least(changed('angelica-14', { 'rows[1].throw': '180' }))).toBeLessThan(6);
  });
});

describe('presets', () => {
  it('keep rotors within their own limits of tip speed and turning speed up to the highest speed', () => {
    for (const name of PRESETS) {
      const { blower, wanted } = toEngine(preset(name.replace('.json', '')));
      const ratio = blower.gears.reduce(
        (product, { driverTeeth, drivenTeeth }) => (product * driverTeeth) / drivenTeeth,
        1,
      );
      const speed = ratio * wanted.maxSpeed;
      expect(speed, name).toBeLessThanOrEqual(blower.maxSpeed * (1 + 1e-12));
      expect((speed * blower.tipDiameter) / 2, name).toBeLessThan(blower.maxTipSpeed);
    }
  });
});
