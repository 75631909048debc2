import { rowAir } from '../../heat-transfer/walls/row-air.ts';
import type { WallConductances } from '../../heat-transfer/walls/wall-conductances.ts';
import { wallConductances } from '../../heat-transfer/walls/wall-conductances.ts';
import type { GasSide, GasSides, WallState } from '../../heat-transfer/walls/wall-network.ts';
import { steadyWalls } from '../../heat-transfer/walls/wall-network.ts';
import type { Model } from '../model.ts';
import { CROWN, HEAD, LINER, SURFACES } from '../sources/cylinder-walls.ts';

/** How far gas stands above a wall, weighed by its coefficient [K]: only to guess how the heat answers to the wall. */
const USUAL_DIFFERENCE = 500;

/** A cylinder's walls with what meets them. */
export interface CylinderWallState extends WallState {
  /** Speed [m/s] and temperature [K] of the air that meets this cylinder. */
  readonly airSpeed: number;
  readonly airTemperature: number;
}

/**
 * Wall temperatures of all cylinders as slow states of the period: held while it runs, worked out anew from the heat that crossed
 * them. Row by row from the front, since rows behind meet slower, warmer air.
 */
export class SolvedWalls {
  private readonly conductances: readonly WallConductances[];
  private readonly rows: readonly number[];
  private readonly airSpeeds: readonly number[];

  constructor(private readonly model: Model) {
    const { engine, geometry } = model;
    const { cooling, crownAreaRatio } = engine.cylinderHeat;
    const { bore } = engine.cylinder;
    this.rows = geometry.cylinders.map(({ rowIndex }) => rowIndex);
    this.airSpeeds = engine.train.rows.map((_, row) => rowAir(cooling, bore, row, 0).speed);
    this.conductances = this.airSpeeds.map((speed) =>
      wallConductances(bore, crownAreaRatio * geometry.boreArea, cooling, speed),
    );
  }

  conductanceOf(j: number): WallConductances {
    return this.conductances[this.rows[j]];
  }

  /** @param gas - what the gas gives each cylinder's surfaces */
  steady(gas: readonly GasSides[]): readonly CylinderWallState[] {
    const { model, rows, conductances, airSpeeds } = this;
    const { cylinderHeat, cylinder, ambient, train } = model.engine;
    const { cooling } = cylinderHeat;
    const states: CylinderWallState[] = [];
    let given = 0;
    for (let row = 0; row < train.rows.length; row++) {
      const airTemperature = ambient.temperature + rowAir(cooling, cylinder.bore, row, given).warmer;
      const around = { air: airTemperature, crankcase: cooling.crankcaseTemperature };
      const here = rows.flatMap((of, j) => (of === row ? [j] : []));
      for (const j of here)
        states[j] = {
          ...steadyWalls(conductances[row], gas[j], around),
          airSpeed: airSpeeds[row],
          airTemperature,
        };
      given += here.reduce((sum, j) => sum + states[j].headToAir + states[j].barrelToAir, 0) / here.length;
    }
    return states;
  }

  /**
   * Replaces wall temperatures by those that suit the heat of a period.
   *
   * @param temperatures - crown, head, liner, cylinder by cylinder: those held; overwritten [K]
   * @param heat         - what crossed them, in the same order [W]
   */
  settle(temperatures: Float64Array, heat: Float64Array): void {
    const guess = (i: number): GasSide => ({
      heat: heat[i],
      conductance: Math.max(0, heat[i]) / USUAL_DIFFERENCE,
      at: temperatures[i],
    });
    const states = this.steady(this.rows.map((_, j) => sides(j, guess)));
    states.forEach(({ crownSurface, head, liner }, j) => {
      temperatures[SURFACES * j + CROWN] = crownSurface;
      temperatures[SURFACES * j + HEAD] = head;
      temperatures[SURFACES * j + LINER] = liner;
    });
  }

  /** The walls that lead away exactly this heat, in the order of `settle` [W]. */
  carrying(heat: Float64Array): readonly CylinderWallState[] {
    return this.steady(this.rows.map((_, j) => sides(j, (i) => ({ heat: heat[i], conductance: 0, at: 0 }))));
  }
}

const sides = (j: number, of: (i: number) => GasSide): GasSides => ({
  crown: of(SURFACES * j + CROWN),
  head: of(SURFACES * j + HEAD),
  liner: of(SURFACES * j + LINER),
});
