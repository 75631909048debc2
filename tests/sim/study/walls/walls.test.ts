import { describe, expect, it } from 'vitest';
import { finishStudy } from '../../../../src/sim/index.ts';
import { airNeeded, LEAST_AIR } from '../../../../src/sim/study/walls/air-needed.ts';
import { coatingEffect } from '../../../../src/sim/study/walls/coating-effect.ts';
import { coolingChanged } from '../../../../src/sim/study/walls/solved-with.ts';
import { warmUp } from '../../../../src/sim/study/walls/warm-up.ts';
import { mm } from '../../../../src/sim/units.ts';
import { sound } from '../../../design/designs.ts';
import { at, modelOf, presetEngine, solveAt, solved } from '../../../helpers/engines.ts';

const caraway = presetEngine('caraway-1');
const model = modelOf(caraway);
const engine = coolingChanged(caraway, {});
const walls = solved(solveAt(engine, 6000)).cylinders[0]!.walls!;

describe('airNeeded', () => {
  it('finds the speed whose own solution has the head at its limit, to 0.1 K', () => {
    const found = sound(finishStudy(airNeeded(model, at(6000), 'head', walls.head)));
    expect(Math.abs(found.airSpeed! - engine.cylinderHeat.cooling.airSpeed)).toBeLessThan(0.05);
    expect(found.atLeast).toBeGreaterThan(walls.head);
    expect(found.atMost).toBeLessThan(walls.head);
  });

  it('says so where no air is enough, and where nearly none is', () => {
    expect(sound(finishStudy(airNeeded(model, at(6000), 'crown', 320))).airSpeed).toBeNull();
    expect(sound(finishStudy(airNeeded(model, at(6000), 'crown', 1500))).airSpeed).toBe(LEAST_AIR);
  });
});

describe('coatingEffect', () => {
  it('cools the metal, heats the face by Q t/(k A) over it, and lets less heat into the crown', () => {
    const { thickness, without, coated } = sound(finishStudy(coatingEffect(model, at(6000))));
    expect(thickness).toBe(0.2 * mm);
    expect(without.crownSurface).toBe(without.crown);
    expect(coated.crown).toBeLessThan(without.crown);
    expect(coated.crownHeat).toBeLessThan(without.crownHeat);
    const area = caraway.cylinderHeat.crownAreaRatio * 0.25 * Math.PI * caraway.cylinder.bore ** 2;
    const drop = (coated.crownHeat * thickness) / area;
    expect(Math.abs((coated.crownSurface - coated.crown) / drop - 1)).toBeLessThan(1e-6);
  });
});

describe('warmUp', () => {
  const course = warmUp(engine, walls);

  it('begins at the surroundings and ends near the settled walls: within 3 % of their rise after four times the slowest mode', () => {
    const rise = walls.head - caraway.ambient.temperature;
    expect(course.warming.head[0]).toBeCloseTo(caraway.ambient.temperature, 6);
    expect(Math.abs(course.warming.head.at(-1)! - walls.head)).toBeLessThan(0.03 * rise);
  });

  it('lets the crown outrun the head, and minutes pass before a stopped engine is cool', () => {
    const half = (of: readonly number[], end: number) =>
      course.warming.time[of.findIndex((T) => T > (end + caraway.ambient.temperature) / 2)]!;
    expect(half(course.warming.crown, walls.crown)).toBeLessThan(half(course.warming.head, walls.head));
    expect(course.standingTime).toBeGreaterThan(3 * course.warmingTime);
  });

  it('lets heat soak from the crown into the liner after the stop', () => {
    expect(course.linerPeak.temperature).toBeGreaterThanOrEqual(walls.liner);
    expect(course.standing.crown.at(-1)!).toBeLessThan(walls.crown);
  });
});
