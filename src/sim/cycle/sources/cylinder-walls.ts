import { annandRadiation } from '../../heat-transfer/annand.ts';
import type { CylinderHeat } from '../../engine.ts';
import type { Film } from '../films/film.ts';
import type { GasStates } from '../gas-states.ts';
import type { Source } from '../instant.ts';
import type { Pistons } from '../pistons.ts';

/** Wall temperatures of one cylinder, in this order. */
export const CROWN = 0;
export const HEAD = 1;
export const LINER = 2;
export const SURFACES = 3;

/**
 * Heat from the gas to crown, head and the uncovered liner of every cylinder, by the design's law of the coefficient. Radiation,
 * in Annand's law alone, is not switched off before burning: below 800 K it is less than 1 % of the convection.
 *
 *   Qdot = sum over surfaces of A [ h (T - T_w) + c (T^4 - T_w^4) ]
 *
 * T of the gas and T_w of the wall [K], A [m^2], h [W/(m^2 K)], c [W/(m^2 K^4)]. The liner counts from the crown's top dead
 * centre downwards.
 *
 * Valid: one mean coefficient for all walls; wall temperatures do not swing within a turn.
 * Source: see heat-transfer/annand.ts, woschni.ts, hohenberg.ts.
 * Records, per cylinder, heat into crown, head and liner [W].
 */
export class CylinderWalls implements Source {
  readonly recordCount: number;
  recordAt = 0;
  /** Whether the heat is added up in every period, not only in recorded ones: wall temperatures are worked out from it. */
  readonly always: boolean;
  /** Of the last instant: coefficients [W/(m^2 K)]. */
  readonly coefficient: Float64Array;
  readonly crownArea: number;
  readonly headArea: number;
  readonly linerPerimeter: number;
  private readonly radiation: number;

  /** @param temperatures - of crown, head and liner, cylinder by cylinder; read at every instant [K] */
  constructor(
    private readonly nodes: readonly number[],
    settings: CylinderHeat,
    bore: number,
    readonly temperatures: Float64Array,
    private readonly film: Film,
    private readonly pistons: Pistons,
    private readonly gas: GasStates,
  ) {
    const boreArea = 0.25 * Math.PI * bore * bore;
    this.crownArea = settings.crownAreaRatio * boreArea;
    this.headArea = settings.headAreaRatio * boreArea;
    this.linerPerimeter = Math.PI * bore;
    this.radiation = settings.law === 'Annand' ? settings.annandC : 0;
    this.always = settings.solvesWalls;
    this.recordCount = SURFACES * nodes.length;
    this.coefficient = new Float64Array(nodes.length);
  }

  addTo(rates: Float64Array, record: boolean): void {
    const { nodes, gas, pistons, coefficient, temperatures, radiation, always } = this;
    this.film.write(coefficient);
    for (let j = 0; j < nodes.length; j++) {
      const node = nodes[j];
      const T = gas.temperature[node];
      const h = coefficient[j];
      const linerArea = this.linerPerimeter * pistons.travel[j];
      const wall = SURFACES * j;
      const crown = this.crownArea * wallFlux(h, radiation, T, temperatures[wall + CROWN]);
      const head = this.headArea * wallFlux(h, radiation, T, temperatures[wall + HEAD]);
      const liner = linerArea * wallFlux(h, radiation, T, temperatures[wall + LINER]);
      rates[node * gas.stride + gas.set.count] -= crown + head + liner;
      if (record || always) {
        const at = this.recordAt + wall;
        rates[at + CROWN] = crown;
        rates[at + HEAD] = head;
        rates[at + LINER] = liner;
      }
    }
  }
}

const wallFlux = (h: number, radiation: number, T: number, wall: number): number =>
  h * (T - wall) + annandRadiation(radiation, T, wall);
