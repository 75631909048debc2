import { describe, expect, it } from 'vitest';
import type { WallFigures } from '../../../src/sim/results/point-result.ts';
import { at, changed, modelOf, notFinite, presetEngine, solved } from '../../helpers/engines.ts';
import { solveToEnd } from '../../../src/sim/index.ts';

const SOLVES = { cylinderHeat: { solvesWalls: true } } as const;
const engine = changed(presetEngine('dill-3'), SOLVES);
const solution = solveToEnd(modelOf(engine), at(6000));
const point = solved(solution.result);
const walls = point.cylinders.map((cylinder) => cylinder.walls!);

describe('wall temperatures solved with the cycle', () => {
  it('settle with the period and keep mass and energy', () => {
    expect(point.residuals.change).toBeLessThan(1e-6);
    expect(point.residuals.energy).toBeLessThan(1e-9);
    expect(notFinite(walls)).toEqual([]);
  });

  it('lead away what the gas gave each surface, to 1e-6 of the heat, and by their paths to 1e-9', () => {
    point.cylinders.forEach(({ wallHeat }, j) => {
      const { residual, fromGas, headToAir, barrelToAir, crownToCase, bodyToCase } = walls[j]!;
      expect(residual).toBeLessThan(1e-6);
      expect(fromGas).toEqual(wallHeat);
      const whole = wallHeat.crown + wallHeat.head + wallHeat.liner;
      expect(Math.abs((headToAir + barrelToAir + crownToCase + bodyToCase) / whole - 1)).toBeLessThan(1e-9);
    });
  });

  it('make the gas side answer with conductance times difference, to a gas between the coldest and the hottest of the turn', () => {
    walls.forEach(({ gasSide, fromGas, crownSurface }, j) => {
      const { conductance, gasTemperature } = gasSide.crown;
      expect((conductance * (gasTemperature - crownSurface)) / fromGas.crown).toBeCloseTo(1, 5);
      const { temperature } = point.traces.cylinders[j]!;
      expect(gasTemperature).toBeGreaterThan(Math.min(...temperature));
      expect(gasTemperature).toBeLessThan(Math.max(...temperature));
    });
  });

  it('hold given temperatures that are those found: the same heat, power and period', () => {
    // Given temperatures are the same for all cylinders, so one that has one.
    const single = changed(presetEngine('caraway-1'), SOLVES);
    const free = solved(solveToEnd(modelOf(single), at(6000)).result);
    const { crownSurface, head, liner } = free.cylinders[0]!.walls as WallFigures;
    const held = changed(single, {
      cylinderHeat: {
        solvesWalls: false,
        crownTemperature: crownSurface,
        headTemperature: head,
        linerTemperature: liner,
      },
    });
    const given = solved(solveToEnd(modelOf(held), at(6000)).result);
    expect(given.cylinders[0]!.walls).toBeNull();
    expect(Math.abs(given.engine.wallHeat / free.engine.wallHeat - 1)).toBeLessThan(1e-3);
    expect(Math.abs(given.engine.imep / free.engine.imep - 1)).toBeLessThan(1e-3);
  });

  it('run hotter with the rear row in the wake, where there is one', () => {
    const fourteen = changed(presetEngine('angelica-14'), SOLVES);
    const { cylinders } = solved(solveToEnd(modelOf(fourteen), at(5000)).result);
    for (const front of cylinders.filter(({ row }) => row === 1)) {
      const behind = cylinders.find(({ row, number }) => row === 2 && number === front.number)!;
      expect(behind.walls!.liner).toBeGreaterThan(front.walls!.liner + 10);
      expect(behind.walls!.airTemperature).toBeGreaterThan(front.walls!.airTemperature + 1);
    }
  });

  it('are warned of where they pass what is set for them', () => {
    const strict = changed(engine, { cylinderHeat: { cooling: { limits: { crown: 400 } } } });
    const { notes } = solved(solveToEnd(modelOf(strict), at(6000), { start: solution.next }).result);
    expect(
      notes.some(({ kind, text }) => kind === 'caution' && /3 of 3 crowns come out hotter/.test(text)),
    ).toBe(true);
  });
});
