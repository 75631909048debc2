import { describe, expect, it } from 'vitest';
import { CycleSystem } from '../../../../src/sim/cycle/system.ts';
import { atRest } from '../../../../src/sim/cycle/start.ts';
import { woschniCoefficient, woschniVelocity } from '../../../../src/sim/heat-transfer/woschni.ts';
import type { Engine } from '../../../../src/sim/index.ts';
import { TURN, bar, deg } from '../../../../src/sim/units.ts';
import { at, changed, modelOf, presetEngine, solveAt, solved } from '../../../helpers/engines.ts';

const caraway = presetEngine('caraway-1');
const withLaw = (law: Engine['cylinderHeat']['law'], annandA = 0.26): Engine =>
  changed(caraway, { cylinderHeat: { law, annandA } });

/** The coefficient at one crank angle after top dead centre, the cylinder holding air of 20 bar and 900 K. */
function coefficientAt(angle: number, spark: { pressure: number; T: number } | null) {
  const system = new CycleSystem(modelOf(withLaw('Woschni')), at(6000));
  const state = new Float64Array(system.size);
  state.set(atRest(system).state);
  const node = system.model.network.at.cylinders[0];
  const shape = system.model.geometry.cylinders[0];
  system.pistons.moveTo(shape.tdc + angle);
  system.gas.pack(state, node, 20 * bar, 900, [1, 0, 0]);
  if (spark) system.memory.setSpark(0, spark.pressure, spark.T, shape.clearanceVolume);
  system.instant.theta = shape.tdc + angle;
  system.rates(state, new Float64Array(system.size), false);
  const speed = (4 * system.model.engine.train.crankRadius * system.omega) / TURN;
  return { h: system.cylinderWalls.coefficient[0], speed, volume: system.gas.volume[node], shape };
}

describe('WoschniFilm', () => {
  const bore = caraway.cylinder.bore;

  it('moves the gas with 2.28 c_m while shut and not yet sparked, with 6.18 c_m while the windows stand open', () => {
    const shut = coefficientAt(-60 * deg, null);
    expect(shut.h / woschniCoefficient(1, bore, 20 * bar, 900, 2.28 * shut.speed)).toBeCloseTo(1, 5);
    const open = coefficientAt(170 * deg, { pressure: 8 * bar, T: 600 });
    expect(open.h / woschniCoefficient(1, bore, 20 * bar, 900, 6.18 * open.speed)).toBeCloseTo(1, 5);
  });

  it('adds what burning does over the motored pressure p_s (V_s/V)^1.32 after the spark', () => {
    const { h, speed, volume, shape } = coefficientAt(30 * deg, { pressure: 8 * bar, T: 600 });
    const motored = 8 * bar * (shape.clearanceVolume / volume) ** 1.32;
    const share = 600 / (8 * bar * shape.clearanceVolume);
    const w = woschniVelocity(2.28, 3.24e-3, speed, shape.sweptVolume, share, 20 * bar, motored);
    expect(w).toBeGreaterThan(1.05 * 2.28 * speed);
    expect(h / woschniCoefficient(1, bore, 20 * bar, 900, w)).toBeCloseTo(1, 5);
  });
});

describe('laws of the coefficient in the cycle', () => {
  const points = (
    [
      ['Annand, two-stroke', withLaw('Annand')],
      ['Annand, four-stroke', withLaw('Annand', 0.49)],
      ['Woschni', withLaw('Woschni')],
      ['Hohenberg', withLaw('Hohenberg')],
    ] as const
  ).map(([name, engine]) => [name, solved(solveAt(engine, 6000))] as const);

  it.each(points)('%s: repeats the period and keeps the energy', (_, point) => {
    expect(point.residuals.change).toBeLessThan(1e-6);
    expect(point.residuals.energy).toBeLessThan(1e-9);
  });

  it('put between 5 and 30 % of the fuel into the walls, threefold apart at the most', () => {
    const shares = points.map(([, { engine }]) => engine.wallHeat / engine.balance.fuel);
    expect(Math.min(...shares)).toBeGreaterThan(0.05);
    expect(Math.max(...shares)).toBeLessThan(0.3);
    expect(Math.max(...shares) / Math.min(...shares)).toBeLessThan(3);
  });
});
