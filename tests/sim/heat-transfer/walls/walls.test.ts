import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rowAir } from '../../../../src/sim/heat-transfer/walls/row-air.ts';
import type { WallConductances } from '../../../../src/sim/heat-transfer/walls/wall-conductances.ts';
import { wallConductances } from '../../../../src/sim/heat-transfer/walls/wall-conductances.ts';
import type { GasSides, WallState } from '../../../../src/sim/heat-transfer/walls/wall-network.ts';
import { networkOf, steadyWalls } from '../../../../src/sim/heat-transfer/walls/wall-network.ts';
import { wallTransient } from '../../../../src/sim/heat-transfer/walls/wall-transient.ts';
import { mm } from '../../../../src/sim/units.ts';
import { changed, presetEngine } from '../../../helpers/engines.ts';

const { cylinderHeat, cylinder } = presetEngine('lovage-7');
const { cooling } = cylinderHeat;
const crownArea = 1.05 * 0.25 * Math.PI * cylinder.bore ** 2;
const at = (airSpeed: number, change = {}): WallConductances =>
  wallConductances(cylinder.bore, crownArea, changed(cooling, change), airSpeed);

const given = (crown: number, head: number, liner: number): GasSides => ({
  crown: { heat: crown, conductance: 0, at: 0 },
  head: { heat: head, conductance: 0, at: 0 },
  liner: { heat: liner, conductance: 0, at: 0 },
});
const from = (T: number): GasSides => ({
  crown: { heat: 0, conductance: 0.5, at: T },
  head: { heat: 0, conductance: 0.6, at: T },
  liner: { heat: 0, conductance: 0.4, at: T },
});
const around = { air: 293, crankcase: 353 };
const out = ({ headToAir, barrelToAir, crownToCase, bodyToCase }: WallState): number =>
  headToAir + barrelToAir + crownToCase + bodyToCase;
const into = ({ fromGas }: WallState): number => fromGas.crown + fromGas.head + fromGas.liner;

describe('steadyWalls', () => {
  it('leads away by its paths what the gas gives, to 1e-9, with any conductances', () => {
    const G = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
    const heat = fc.double({ min: -200, max: 2000, noNaN: true });
    fc.assert(
      fc.property(fc.array(G, { minLength: 8, maxLength: 8 }), heat, heat, heat, (g, crown, head, liner) => {
        const c: WallConductances = {
          coatingResistance: g[0] / 1e3,
          crownToBody: g[1],
          bodyToLiner: g[2],
          crownToCase: g[3],
          bodyToCase: g[4],
          headToLiner: g[5],
          headToAir: g[6],
          linerToAir: g[7],
          barrelWall: 1e4,
          barrelFins: g[7],
        };
        const state = steadyWalls(c, given(crown, head, liner), around);
        const sum = crown + head + liner;
        // Round-off of the differences that are left of temperatures.
        const scale = Math.abs(crown) + Math.abs(head) + Math.abs(liner) + Math.max(...g);
        expect(Math.abs(out(state) - sum)).toBeLessThan(1e-9 * scale);
        expect(Math.abs(crown - state.crownToCase - state.bodyToCase - state.throughRings)).toBeLessThan(
          1e-9 * scale,
        );
      }),
      { seed: 6, numRuns: 200 },
    );
  });

  it('takes from a gas of given temperature and coefficient what it leads away', () => {
    const state = steadyWalls(at(20), from(1100), around);
    expect(Math.abs(into(state) / out(state) - 1)).toBeLessThan(1e-12);
    expect(state.fromGas.head).toBeCloseTo(0.6 * (1100 - state.head), 9);
  });

  it('comes to the gas temperature where no way leads heat out: an adiabatic wall', () => {
    const shut = { ...at(20), headToAir: 0, linerToAir: 0, crownToCase: 0, bodyToCase: 0 };
    const state = steadyWalls(shut, from(1100), around);
    for (const T of [state.crownSurface, state.head, state.liner]) expect(T).toBeCloseTo(1100, 6);
    expect(Math.abs(into(state))).toBeLessThan(1e-6);
  });

  it('brings the roots of the fins to the air as the air speed grows without limit', () => {
    const heat = given(400, 500, 300);
    const roots = [20, 1e3, 1e7].map((speed) => steadyWalls(at(speed), heat, around).finRoot - around.air);
    expect(roots[0]).toBeGreaterThan(100);
    expect(roots[1]).toBeLessThan(0.3 * roots[0]);
    expect(roots[2]).toBeLessThan(1);
  });

  it('puts q t/k between the crown and its coating: 150 K at 0.5 MW/m² across 0.3 mm of 1 W/(m K)', () => {
    const coated = at(20, { coating: { thickness: 0.3 * mm, conductivity: 1 } });
    const state = steadyWalls(coated, given(0.5e6 * crownArea, 0, 0), around);
    expect(state.crownSurface - state.crown).toBeCloseTo(150, 9);
    const bare = steadyWalls(at(20), given(0.5e6 * crownArea, 0, 0), around);
    expect(bare.crownSurface).toBe(bare.crown);
    expect(bare.crown).toBeCloseTo(state.crown, 9);
  });

  it('cools the metal under a coating and heats its face where the gas answers to the wall', () => {
    const bare = steadyWalls(at(20), from(1100), around);
    const coated = steadyWalls(
      at(20, { coating: { thickness: 0.3 * mm, conductivity: 1 } }),
      from(1100),
      around,
    );
    expect(coated.crown).toBeLessThan(bare.crown);
    expect(coated.crownSurface).toBeGreaterThan(bare.crown);
  });
});

describe('wallConductances', () => {
  it('cools the crown from below with under a tenth of what the rings lead, in a dry crankcase', () => {
    const { crownToCase, bodyToCase, bodyToLiner } = at(20);
    expect(crownToCase + bodyToCase).toBeLessThan(0.1 * bodyToLiner);
  });

  it('holds the mean of an evenly heated disc q a²/(8 k t) above its rim', () => {
    // 500 W on a crown of 40 mm bore, 4 mm thick, 134 W/(m K): 500 / (8 pi 134 0.004) = 37.1 K.
    expect(500 / at(20).crownToBody).toBeCloseTo(37.12, 2);
  });
});

describe('rowAir', () => {
  it('leaves a second row less speed and warmer air: 800 W into 20 m/s over a cylinder of 92 by 69 mm warm it by 5.3 K', () => {
    const first = rowAir(cooling, cylinder.bore, 0, 0);
    expect(first).toEqual({ speed: 20, warmer: 0 });
    const second = rowAir(cooling, cylinder.bore, 1, 800);
    expect(second.speed).toBeCloseTo(14, 12);
    const area = 0.092 * (0.041 + 0.028);
    expect(second.warmer).toBeCloseTo(800 / (1.18 * Math.hypot(20, 1) * area * 1006), 9);
  });
});

describe('wallTransient', () => {
  it('warms one mass as T_0 + ΔT (1 - e^(-t/τ)), τ = C/G, whatever it is divided into', () => {
    // 500 J/K through 5 W/K: τ 100 s, 400 W: 80 K above the air. The same in two halves that nothing parts.
    const one = wallTransient([Float64Array.of(5)], [5 * 293 + 400], [500], [293]);
    expect(one.timeConstants[0]).toBeCloseTo(100, 9);
    const halves = [Float64Array.of(2.5, 0), Float64Array.of(0, 2.5)];
    const two = wallTransient(halves, [2.5 * 293 + 200, 2.5 * 293 + 200], [250, 250], [293, 293]);
    for (const time of [0, 30, 100, 1000]) {
      const expected = 293 + 80 * (1 - Math.exp(-time / 100));
      expect(one.at(time)[0]).toBeCloseTo(expected, 9);
      expect(two.at(time)[1]).toBeCloseTo(expected, 9);
    }
  });

  it('parts two masses that only know each other as (T_1 - T_2) e^(-t/τ), τ = C_1 C_2/(G (C_1 + C_2)), and keeps their heat', () => {
    const G = [Float64Array.of(2, -2), Float64Array.of(-2, 2)];
    const soak = wallTransient(G, [0, 0], [100, 300], [600, 400]);
    expect(soak.timeConstants[0]).toBe(Infinity);
    expect(soak.timeConstants[1]).toBeCloseTo(37.5, 9);
    const [first, second] = soak.at(50);
    expect(first - second).toBeCloseTo(200 * Math.exp(-50 / 37.5), 9);
    expect(100 * first + 300 * second).toBeCloseTo(100 * 600 + 300 * 400, 6);
  });

  it('ends where steadyWalls stands, from cold, for a whole cylinder', () => {
    const gas = from(1100);
    const { matrix, load } = networkOf(at(20), gas, around);
    const ends = steadyWalls(at(20), gas, around);
    const warm = wallTransient(matrix, load, [30, 40, 280, 420], [293, 293, 293, 293]);
    const [crown, body, head, liner] = warm.at(1e5);
    expect(crown).toBeCloseTo(ends.crown, 6);
    expect(body).toBeCloseTo(ends.body, 6);
    expect(head).toBeCloseTo(ends.head, 6);
    expect(liner).toBeCloseTo(ends.liner, 6);
  });
});
