import { annandCoefficient, annandRadiation } from '../../heat-transfer/annand.ts';
import type { CylinderHeat } from '../../engine.ts';
import type { GasStates } from '../gas-states.ts';
import type { Source } from '../instant.ts';
import type { Pistons } from '../pistons.ts';

/**
 * Heat from the gas to crown, head and the uncovered liner of every cylinder, by Annand's correlation with given wall
 * temperatures. Radiation is not switched off before burning: below 800 K it is less than 1 % of the convection.
 *
 *   Qdot = sum over surfaces of A [ h (T - T_w) + c (T^4 - T_w^4) ]
 *
 * T of the gas and T_w of the wall [K], A [m^2], h [W/(m^2 K)], c [W/(m^2 K^4)]. The liner counts from the crown's top dead
 * centre downwards.
 *
 * Valid: one mean coefficient for all walls; wall temperatures do not swing within a turn.
 * Source: Annand, see heat-transfer/annand.ts.
 * Records, per cylinder, heat into crown, head and liner [W].
 */
export class CylinderWalls implements Source {
  readonly recordCount: number;
  recordAt = 0;
  private readonly crownArea: number;
  private readonly headArea: number;
  private readonly linerPerimeter: number;

  constructor(
    private readonly nodes: readonly number[],
    private readonly settings: CylinderHeat,
    private readonly bore: number,
    private readonly pistonSpeed: number,
    private readonly pistons: Pistons,
    private readonly gas: GasStates,
  ) {
    const boreArea = 0.25 * Math.PI * bore * bore;
    this.crownArea = settings.crownAreaRatio * boreArea;
    this.headArea = settings.headAreaRatio * boreArea;
    this.linerPerimeter = Math.PI * bore;
    this.recordCount = 3 * nodes.length;
  }

  addTo(rates: Float64Array, record: boolean): void {
    const { nodes, gas, settings, pistons } = this;
    const { crownTemperature, headTemperature, linerTemperature } = settings;
    for (let j = 0; j < nodes.length; j++) {
      const node = nodes[j];
      const T = gas.temperature[node];
      const h = annandCoefficient(
        settings.annandA,
        settings.annandB,
        this.bore,
        gas.mass[node] / gas.volume[node],
        T,
        this.pistonSpeed,
      );
      const linerArea = this.linerPerimeter * pistons.travel[j];
      const crown = this.crownArea * wallFlux(h, settings.annandC, T, crownTemperature);
      const head = this.headArea * wallFlux(h, settings.annandC, T, headTemperature);
      const liner = linerArea * wallFlux(h, settings.annandC, T, linerTemperature);
      rates[node * gas.stride + gas.set.count] -= crown + head + liner;
      if (record) {
        const at = this.recordAt + 3 * j;
        rates[at] = crown;
        rates[at + 1] = head;
        rates[at + 2] = liner;
      }
    }
  }
}

const wallFlux = (h: number, radiation: number, T: number, wall: number): number =>
  h * (T - wall) + annandRadiation(radiation, T, wall);
