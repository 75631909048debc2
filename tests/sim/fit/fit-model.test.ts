import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toEngine } from '../../../src/design/to-engine.ts';
import { validate } from '../../../src/design/validate.ts';
import type { Engine } from '../../../src/sim/engine.ts';
import { FitModel } from '../../../src/sim/fit/fit-model.ts';
import type { FitKind } from '../../../src/sim/fit/fit-check.ts';
import { geometryOf } from '../../../src/sim/geometry/geometry-of.ts';
import { rodPoints } from '../../../src/sim/geometry/rod-points.ts';
import { deg, mm } from '../../../src/sim/units.ts';
import { sound } from '../../design/designs.ts';
import { PRESET_NAMES, changed, presetEngine } from '../../helpers/engines.ts';

const fitOf = (engine: Engine): FitModel => new FitModel(engine, sound(geometryOf(engine)));
const checkOf = (model: FitModel, kind: FitKind) => model.report.checks.find((each) => each.kind === kind)!;

const lovage = presetEngine('lovage-7');
const lovageFit = fitOf(lovage);
const geometry = sound(geometryOf(lovage));

/** A row of equal cylinders, evenly spaced, with articulated rods. */
const rowOf = (cylinders: number): Engine =>
  toEngine(
    sound(
      validate({
        version: 1,
        crank: { stroke_mm: 41, masterRod_mm: 86, knuckleRadius_mm: 23, rows: [{ cylinders }] },
        windows: { exhaust: [{ opens_degATDC: 98 }], transfer: [{ opens_degATDC: 116 }] },
      }),
    ),
  );

describe('FitModel', () => {
  it.each(PRESET_NAMES)('finds %s clear in every check, by more than its tolerances', (name) => {
    const { checks } = fitOf(presetEngine(name)).report;
    expect(checks.filter(({ verdict }) => verdict !== 'clear')).toEqual([]);
    expect(checks.length).toBeGreaterThanOrEqual(6);
  });

  it.each([3, 5, 7, 9])('lets the flanges of %i barrels touch at a base of w / (2 tan(π/N))', (cylinders) => {
    const engine = rowOf(cylinders);
    const { flange } = engine.dimensions.barrel;
    const base = flange / 2 / Math.tan(Math.PI / cylinders);
    const { clearance } = checkOf(fitOf(changed(engine, { dimensions: { barrel: { base } } })), 'flanges');
    expect(Math.abs(clearance)).toBeLessThan(1e-12);
  });

  it('leaves 2 k sin(π/N) − d between equal knuckle eyes, and that less a pin as wall between pins', () => {
    const { knuckleEye } = lovage.dimensions.rods;
    const chord = 2 * lovage.train.knuckleRadius * Math.sin(Math.PI / 7);
    expect(checkOf(lovageFit, 'eyes').clearance).toBeCloseTo(chord - knuckleEye, 12);
    const pin = changed(lovage, {
      dimensions: { rods: { knucklePin: 0.9 * chord, bigEnd: 1, bigEndBore: 0.001 } },
    });
    expect(checkOf(fitOf(pin), 'knuckleWalls').clearance).toBeCloseTo(0.1 * chord, 12);
  });

  it('tells crown clearances as deck clearance and what each piston stays below the master’s at its highest', () => {
    const highest = geometry.cylinders.map(({ motion }) => {
      let most = 0;
      for (let k = 0; k < 12000; k++) {
        const { gudgeonPin } = rodPoints(motion.rods, k * 0.03 * deg);
        most = Math.max(most, Math.hypot(gudgeonPin.x, gudgeonPin.y));
      }
      return most;
    });
    const engine = changed(lovage, { dimensions: { barrel: { headGap: 0.4 * mm } } });
    const { each } = checkOf(fitOf(engine), 'crowns');
    expect(each).toHaveLength(7);
    each.forEach(({ clearance }, i) => {
      const expected = lovage.cylinder.deckClearance + highest[0]! - highest[i]! + 0.4 * mm;
      expect(clearance).toBeCloseTo(expected, 8);
    });
  });

  it('has a plain piston cover full-stroke windows by its length less the stroke, and name the opening otherwise', () => {
    const caraway = presetEngine('caraway-1');
    const { length } = caraway.dimensions.piston;
    const covers = checkOf(fitOf(caraway), 'covers');
    expect(covers.clearance).toBeCloseTo(length - 2 * caraway.train.crankRadius, 9);
    const short = changed(caraway, { dimensions: { piston: { length: 40 * mm } } });
    expect(checkOf(fitOf(short), 'covers')).toMatchObject({
      verdict: 'collides',
      parts: ['skirt 1', 'window floor 1'],
    });
  });

  it('finds no smaller clearance between two skirts at any of 3600 angles than the one it tells', () => {
    const { clearance, parts } = checkOf(lovageFit, 'skirts');
    expect(parts[0]).toMatch(/^skirt \d$/);
    const { pinToCrown, length } = lovage.dimensions.piston;
    const half = lovage.cylinder.bore / 2;
    let least = Infinity;
    // Neighbouring skirts come nearest at the inner lower corner of one: its distance from the other's flank or end.
    for (let i = 0; i < 7; i++) {
      const [one, other] = [geometry.cylinders[i]!, geometry.cylinders[(i + 1) % 7]!];
      for (let k = 0; k < 3600; k++) {
        const [a, b] = [one, other].map(({ motion, pinOffset }) => {
          const { gudgeonPin } = rodPoints(motion.rods, k * 0.1 * deg + pinOffset);
          return Math.hypot(gudgeonPin.x, gudgeonPin.y) + pinToCrown - length;
        }) as [number, number];
        const turn = (2 * Math.PI) / 7;
        const corner = (low: number, high: number): number => {
          const along = low * Math.cos(turn) + half * Math.sin(turn);
          const across = low * Math.sin(turn) - half * Math.cos(turn);
          return along >= high ? across - half : Math.hypot(high - along, Math.max(0, across - half));
        };
        least = Math.min(least, corner(a, b), corner(b, a));
      }
    }
    expect(clearance).toBeLessThanOrEqual(least + 1e-12);
    expect(clearance).toBeCloseTo(least, 7);
  });

  it('scales every clearance with the engine', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.4, max: 3, noNaN: true }), (s) => {
        const { checks, diameter } = fitOf(scaled(lovage, s)).report;
        expect(diameter / s).toBeCloseTo(lovageFit.report.diameter, 12);
        checks.forEach((check, i) => {
          const before = lovageFit.report.checks[i]!;
          expect(check.kind).toBe(before.kind);
          expect(check.clearance / s, check.kind).toBeCloseTo(before.clearance, 8);
        });
      }),
      { seed: 7, numRuns: 2 },
    );
  });

  it('names skirts that meet near bottom dead centre, and shows where at that angle alone', () => {
    const long = fitOf(changed(lovage, { dimensions: { piston: { length: 50 * mm } } }));
    const skirts = checkOf(long, 'skirts');
    expect(skirts.verdict).toBe('collides');
    const { collisions, nearest } = long.contactsAt(skirts.angle!, skirts);
    expect(nearest!.gap).toBeCloseTo(skirts.clearance, 9);
    expect(collisions.some(({ gap }) => Math.abs(gap - skirts.clearance) < 1e-9)).toBe(true);
    // Where the first of the two stands at its top dead centre they are well apart.
    const first = geometry.cylinders[Number(skirts.parts[0].slice(-1)) - 1]!;
    expect(long.contactsAt(first.tdc, skirts).nearest!.gap).toBeGreaterThan(0);
  });

  it('shows the crown at its top dead centre as far below the head as the check tells, and lower by travel elsewhere', () => {
    const crowns = checkOf(lovageFit, 'crowns');
    const first = geometry.cylinders[0]!;
    expect(lovageFit.contactsAt(first.tdc, crowns).nearest!.gap).toBeCloseTo(crowns.clearance, 9);
    const below = lovageFit.contactsAt(first.bdc, crowns).nearest!;
    expect(below.gap).toBeCloseTo(crowns.clearance + first.stroke, 9);
    expect(below.b.x - below.a.x).toBeCloseTo(below.gap, 9);
    expect(lovageFit.contactsAt(first.tdc, null)).toEqual({ collisions: [], nearest: null });
  });

  it('says may touch where all tolerances together eat the clearance', () => {
    const tight = fitOf(changed(lovage, { dimensions: { barrel: { headGap: -0.7 * mm } } }));
    const crowns = checkOf(tight, 'crowns');
    expect(crowns.clearance).toBeCloseTo(0.3 * mm, 9);
    // Three centres of 0.03, an outline of 0.1, two heights of 0.1, a play of 0.06.
    expect(crowns.tolerance).toBeCloseTo(0.45 * mm, 12);
    expect(crowns.verdict).toBe('may touch');
  });

  it('names fins of two rows that stand too near, and measures the engine against a given space', () => {
    const angelica = presetEngine('angelica-14');
    const near = fitOf(changed(angelica, { masses: { rowSpacing: 60 * mm } }));
    expect(checkOf(near, 'fins')).toMatchObject({ verdict: 'collides', parts: ['fins A1', 'fins B1'] });
    const room = changed(angelica, { dimensions: { space: { diameter: 0.3, length: 0.5 } } });
    const { checks, diameter, length } = fitOf(room).report;
    const of = (kind: FitKind) => checks.find((each) => each.kind === kind)!;
    expect(of('diameter')).toMatchObject({ clearance: 0.3 - diameter, verdict: 'collides' });
    expect(of('length')).toMatchObject({ clearance: 0.5 - length, verdict: 'clear' });
    const { bore } = angelica.cylinder;
    // Crank radius, master rod, pin to crown, deck clearance, head; one step between rows, fins, ends.
    expect(diameter / 2).toBeCloseTo(20.5 * mm + 86 * mm + 0.6 * bore + 1 * mm + 0.9 * bore, 9);
    expect(length).toBeCloseTo(68 * mm + 1.9 * bore + 4 * bore, 9);
  });
});

/** Every length of the engine times s; the gas and the masses are left as they are. */
function scaled(engine: Engine, s: number): Engine {
  const lengths = <T>(value: T): T =>
    (typeof value === 'number'
      ? value * s
      : value !== null && typeof value === 'object'
        ? Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, lengths(inner)]))
        : value) as T;
  const { train, windows, cylinder } = engine;
  const group = (one: Engine['windows']['exhaust'][number]) => ({
    ...one,
    width: one.width * s,
    bridgeWidth: one.bridgeWidth * s,
    cornerRadius: one.cornerRadius * s,
  });
  return {
    ...engine,
    dimensions: lengths(engine.dimensions),
    cylinder: { ...cylinder, bore: cylinder.bore * s, deckClearance: cylinder.deckClearance * s },
    windows: { ...windows, exhaust: windows.exhaust.map(group), transfer: windows.transfer.map(group) },
    masses: { ...engine.masses, rowSpacing: engine.masses.rowSpacing * s },
    train: {
      crankRadius: train.crankRadius * s,
      masterRodLength: train.masterRodLength * s,
      knuckleRadius: train.knuckleRadius * s,
      sparkFrom: train.sparkFrom,
      rows: train.rows.map((row) => ({
        ...row,
        cylinders: row.cylinders.map((each) => ({ ...each, rodLength: each.rodLength * s })),
      })),
    },
  };
}
