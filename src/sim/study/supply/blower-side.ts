import type { Model } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import { atRest } from '../../cycle/start.ts';
import { CycleSystem } from '../../cycle/system.ts';
import { AIR_INDEX, drawnFractions } from '../../gas/mixture.ts';
import { findRoot } from '../../numerics/find-root.ts';
import { settleStages } from './settle-stages.ts';

/** What throttle, inlet box and blower send on with the plenum held at a pressure, everything steady. */
export interface Supply {
  /** Of the plenum [Pa], and the temperature at which it then settles [K]. */
  readonly pressure: number;
  readonly temperature: number;
  /** Air and fuel to the cylinders, and the air in it [kg/s]. */
  readonly massFlow: number;
  readonly airFlow: number;
  /** Displaced, back through the clearances, out of the relief valve [kg/s]. */
  readonly displaced: number;
  readonly slip: number;
  readonly relief: number;
  /** Net through the bypass, wherever it leads [kg/s]. */
  readonly bypass: number;
  readonly boxPressure: number;
  readonly boxTemperature: number;
  /** Work on the gas of all stages, and heat that an intercooler takes [W]. */
  readonly fluidPower: number;
  readonly cooled: number;
}

/** Change of both temperatures below which they count as settled [K]. */
const SETTLED = 1e-6;
const MOST_ROUNDS = 400;

/**
 * The blower side of a model: the model's own throttle, walls, blower, clearances, relief valve and bypass, in steady flow
 * with the delivery evened. A relief valve that sticks is one that opens as pressure rises.
 *
 *   box     m_throttle + m_slip + m_bypass = m_displaced,   energy likewise with the heat of its wall
 *   plenum  m_displaced = m_slip + m_bypass + m_relief + m_out,   energy likewise with the blower's work and the heat of its wall
 *
 * Box pressure by bracketing at given temperatures, temperatures by relaxation; two stages: `settleStages`. Flows [kg/s].
 *
 * Valid: fresh charge everywhere; no pulsation, no gas blown back by the cylinders.
 * Numerics: near the pressure at which all goes back through the clearances, relaxation is slow; there it may give up.
 */
export class BlowerSide {
  private readonly system: CycleSystem;
  private readonly state: Float64Array;
  private readonly rates: Float64Array;
  private readonly fresh: readonly number[];

  constructor(design: Model, point: OperatingPoint) {
    this.system = new CycleSystem({ ...design, drive: { ...design.drive, phaseAveraged: true } }, point);
    this.state = new Float64Array(this.system.size);
    this.state.set(atRest(this.system).state);
    this.rates = new Float64Array(this.system.size);
    this.fresh = drawnFractions(this.model.mixture);
  }

  private get model(): Model {
    return this.system.model;
  }

  /** Steady supply with the plenum held at a pressure [Pa]; null where there is none within the gas model's temperatures. */
  at(pressure: number): Supply | null {
    const { ambient, secondStage } = this.model.engine;
    if (secondStage) return this.staged(pressure);
    let boxT = this.model.mixture.evaporation.temperature;
    let plenumT = boxT + 10;
    for (let round = 0; round < MOST_ROUNDS; round++) {
      let inRange = true;
      const imbalance = (boxP: number): number => {
        inRange &&= this.put(boxP, boxT, pressure, plenumT);
        const { throttle, slip, recirculated, blower } = this.flows();
        return throttle + slip + recirculated - blower;
      };
      const highest = Math.max(pressure, ambient.pressure);
      const boxP = findRoot(imbalance, 0.01 * ambient.pressure, highest, 1e-6);
      if (!inRange || !this.put(boxP, boxT, pressure, plenumT)) return null;
      const { box, plenum } = this.corrections();
      boxT += box;
      plenumT += plenum;
      if (!(boxT > 200 && boxT < 2000 && plenumT > 200 && plenumT < 2000)) return null;
      if (Math.abs(box) + Math.abs(plenum) < SETTLED) return this.supply(pressure, boxP, boxT, plenumT);
    }
    return null;
  }

  private staged(pressure: number): Supply | null {
    const { system, state, rates, fresh } = this;
    const inlet = this.model.mixture.evaporation.temperature;
    if (!settleStages(system, state, rates, fresh, pressure, inlet)) return null;
    const { gas } = system;
    const { box, plenum } = this.model.network.at;
    return this.supply(pressure, gas.pressure[box]!, gas.temperature[box]!, gas.temperature[plenum]!);
  }

  private put(boxP: number, boxT: number, plenumP: number, plenumT: number): boolean {
    const { system, state, fresh } = this;
    const { at } = system.model.network;
    system.gas.pack(state, at.box, boxP, boxT, fresh);
    system.gas.pack(state, at.plenum, plenumP, plenumT, fresh);
    return system.rates(state, this.rates, false);
  }

  private flows() {
    const { massFlow } = this.system.edges;
    const { through } = this.system.model.network;
    const bypass = through.bypass < 0 ? 0 : massFlow[through.bypass]!;
    return {
      throttle: massFlow[through.throttle]!,
      blower: massFlow[through.blower]!,
      slip: massFlow[through.slip]! + (through.carriedBack < 0 ? 0 : massFlow[through.carriedBack]!),
      relief: through.relief < 0 ? 0 : massFlow[through.relief]!,
      bypass,
      /** What of it comes back to the inlet box. */
      recirculated: this.model.engine.plenum.bypass?.into === 'inlet box' ? bypass : 0,
    };
  }

  /** By how much either temperature is off its energy balance [K]. */
  private corrections(): { box: number; plenum: number } {
    const { system } = this;
    const { gas, edges, nodeWalls } = system;
    const { at, through } = system.model.network;
    const { throttle, blower, slip, recirculated } = this.flows();
    const carried = (edge: number) => edges.carried[edge * edges.stride + gas.set.count]!;
    const cp = (node: number) => (gas.gamma[node]! * gas.gasConstant[node]!) / (gas.gamma[node]! - 1);
    const wall = (node: number) => {
      let [conductance, heat] = [0, 0];
      for (const each of nodeWalls.walls) {
        if (each.node !== node) continue;
        conductance += each.conductance;
        heat += each.conductance * (each.temperature - gas.temperature[node]!);
      }
      return { conductance, heat };
    };
    const [boxWall, plenumWall] = [wall(at.box), wall(at.plenum)];
    const enthalpyThrough = (edge: number) =>
      edge < 0 || edges.massFlow[edge] === 0 ? 0 : edges.massFlow[edge]! * carried(edge);
    const back =
      enthalpyThrough(through.slip) +
      enthalpyThrough(through.carriedBack) +
      (recirculated === 0 ? 0 : enthalpyThrough(through.bypass));
    const box =
      throttle * carried(through.throttle) +
      back -
      blower * gas.enthalpy[at.box]! +
      system.blower.powerIntoBox +
      boxWall.heat;
    // What does not go back leaves, by relief valve or bypass or to the cylinders, with the plenum's enthalpy.
    const leaving = (blower - slip - recirculated) * gas.enthalpy[at.plenum]!;
    const plenum =
      blower * gas.enthalpy[at.box]! + system.blower.powerIntoPlenum + plenumWall.heat - back - leaving;
    const through1 = Math.max(blower, Math.abs(slip), Math.abs(recirculated), 1e-9);
    return {
      box: box / (through1 * cp(at.box) + boxWall.conductance),
      plenum: plenum / (through1 * cp(at.plenum) + plenumWall.conductance),
    };
  }

  private supply(pressure: number, boxPressure: number, boxTemperature: number, temperature: number): Supply {
    const { blower, slip, relief, bypass } = this.flows();
    const { secondBlower, cooler } = this.system;
    const massFlow = blower - slip - relief - bypass;
    return {
      pressure,
      temperature,
      massFlow,
      airFlow: massFlow * this.fresh[AIR_INDEX]!,
      displaced: blower,
      slip,
      relief,
      bypass,
      boxPressure,
      boxTemperature,
      fluidPower: (this.system.blower.fluidTorque + (secondBlower?.fluidTorque ?? 0)) * this.system.omega,
      cooled: cooler?.heatOut ?? 0,
    };
  }
}
