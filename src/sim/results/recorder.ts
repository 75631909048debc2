import { dragTorque } from '../blower/drag.ts';
import type { BlowerFlow } from '../cycle/flows/blower-flow.ts';
import type { CycleSystem } from '../cycle/system.ts';
import type { Blower } from '../engine.ts';
import { ExhaustWatch } from './exhaust-gas.ts';
import type { CylinderTrace, GasTrace, Traces } from './point-result.ts';

/** Columns that belong to one node. */
interface NodeColumns {
  readonly node: number;
  readonly pressure: Float64Array;
  readonly temperature: Float64Array;
  readonly purity: Float64Array;
}

/**
 * Takes down what a period looks like at every point of its mesh, for drawing and for peaks.
 *
 *   gas torque    = sum over cylinders, and the crankcase if it takes part, of (p - p_ambient) dV/dtheta
 *   blower torque = (fluid torque / eta_mech + drag * ratio) / eta_gears        both at the crank [N m]
 *
 *   gas work      = sum over cylinders of integral (p - p_ambient) dV      since the period began, by the step's own rule [J]
 *   blower work   = integral of the fluid work, gears and losses apart
 *
 * Ambient pressure stands under the pistons; inertia is in none of them.
 */
export class Recorder {
  readonly exhaust: ExhaustWatch;
  private count = 0;
  private readonly angle: Float64Array;
  private readonly nodes: readonly NodeColumns[];
  private readonly volume: readonly Float64Array[];
  private readonly crankcaseVolume: Float64Array;
  private readonly exhaustArea: readonly Float64Array[];
  private readonly transferArea: readonly Float64Array[];
  private readonly transferFlow: readonly Float64Array[];
  private readonly exhaustFlow: readonly Float64Array[];
  private readonly blowerFlow: Float64Array;
  private readonly slipFlow: Float64Array;
  private readonly gasTorque: Float64Array;
  private readonly blowerTorque: Float64Array;
  private readonly gasWork: Float64Array;
  private readonly blowerWork: Float64Array;
  private readonly secondTorque: Float64Array;
  private readonly secondWork: Float64Array;
  private readonly reliefLift: Float64Array;

  /** @param capacity - points at the most */
  constructor(
    private readonly system: CycleSystem,
    capacity: number,
  ) {
    this.exhaust = new ExhaustWatch(system);
    const column = () => new Float64Array(capacity);
    const { network, geometry } = system.model;
    const columns = () => geometry.cylinders.map(column);
    this.angle = column();
    // Reservoirs too: a study may hold a node that otherwise owns state.
    this.nodes = network.nodes.map((_, node) => ({
      node,
      pressure: column(),
      temperature: column(),
      purity: column(),
    }));
    this.volume = columns();
    this.crankcaseVolume = system.undersideWork ? column() : new Float64Array(0);
    this.exhaustArea = columns();
    this.transferArea = columns();
    this.transferFlow = columns();
    this.exhaustFlow = columns();
    this.blowerFlow = column();
    this.slipFlow = column();
    this.gasTorque = column();
    this.blowerTorque = column();
    this.gasWork = column();
    this.blowerWork = column();
    this.secondTorque = system.secondBlower ? column() : new Float64Array(0);
    this.secondWork = system.secondBlower ? column() : new Float64Array(0);
    this.reliefLift = system.relief ? column() : new Float64Array(0);
  }

  /** Takes down the present instant; to be handed to a Period that records, as its observer. */
  readonly note = (theta: number, y: Float64Array): void => {
    const { system } = this;
    const { gas, edges, pistons, model } = system;
    const { through, at } = model.network;
    const { efficiency, ratio } = model.drive;
    const { blower, ambient } = model.engine;
    const i = this.count++;
    this.exhaust.note(theta, y);
    this.angle[i] = theta;
    for (const { node, pressure, temperature, purity } of this.nodes) {
      pressure[i] = gas.pressure[node];
      temperature[i] = gas.temperature[node];
      purity[i] = system.purity(node);
    }
    let torque = 0;
    let work = 0;
    for (let j = 0; j < at.cylinders.length; j++) {
      const node = at.cylinders[j];
      this.volume[j][i] = gas.volume[node];
      this.exhaustArea[j][i] = pistons.exhaustArea[j];
      this.transferArea[j][i] = pistons.transferArea[j];
      this.transferFlow[j][i] = edges.massFlow[through.transfers[j]];
      this.exhaustFlow[j][i] = edges.massFlow[through.exhausts[j]];
      torque += (gas.pressure[node] - ambient.pressure) * (gas.volumeRate[node] / system.omega);
      work += y[system.pistonWork.recordAt + j] - ambient.pressure * (gas.volume[node] - this.volume[j][0]);
    }
    if (system.undersideWork) {
      const node = at.crankcase;
      this.crankcaseVolume[i] = gas.volume[node];
      torque += (gas.pressure[node] - ambient.pressure) * (gas.volumeRate[node] / system.omega);
    }
    this.blowerFlow[i] = edges.massFlow[through.blower];
    this.slipFlow[i] =
      edges.massFlow[through.slip] + (through.carriedBack < 0 ? 0 : edges.massFlow[through.carriedBack]);
    this.gasTorque[i] = torque;
    this.gasWork[i] = work;
    this.blowerWork[i] = y[system.blower.recordAt];
    if (system.relief) this.reliefLift[i] = system.relief.lift;
    this.blowerTorque[i] = torqueAtCrank(blower, system.blower.fluidTorque, system.omega, ratio, efficiency);
    if (system.secondBlower) this.noteSecond(i, system.secondBlower, y);
  };

  private noteSecond(i: number, flow: BlowerFlow, y: Float64Array): void {
    const { model, omega } = this.system;
    const { secondStage } = model.engine;
    const { second } = model.drive;
    if (!secondStage || !second) return;
    const { ratio, efficiency } = second;
    this.secondTorque[i] = torqueAtCrank(secondStage.blower, flow.fluidTorque, omega, ratio, efficiency);
    this.blowerTorque[i] += this.secondTorque[i];
    this.secondWork[i] = y[flow.recordAt];
    this.blowerWork[i] += this.secondWork[i];
  }

  /** Lift of the relief valve over its whole lift at every point; empty without one [-]. */
  lifts(): Float64Array {
    return this.reliefLift.slice(0, this.count);
  }

  /** What a node went through. */
  gas(node: number): GasTrace {
    const { pressure, temperature, purity } = this.nodes[node];
    const cut = (column: Float64Array) => column.slice(0, this.count);
    return { pressure: cut(pressure), temperature: cut(temperature), purity: cut(purity) };
  }

  traces(): Traces {
    const { network } = this.system.model;
    const cut = (column: Float64Array) => column.slice(0, this.count);
    const gasOf = (node: number) => this.gas(node);
    return {
      angle: cut(this.angle),
      inletBox: gasOf(network.at.box),
      plenum: gasOf(network.at.plenum),
      passages: network.at.passages.map(gasOf),
      cylinders: network.at.cylinders.map((node, j): CylinderTrace => ({
        ...gasOf(node),
        volume: cut(this.volume[j]),
        exhaustArea: cut(this.exhaustArea[j]),
        transferArea: cut(this.transferArea[j]),
        transferFlow: cut(this.transferFlow[j]),
        exhaustFlow: cut(this.exhaustFlow[j]),
      })),
      collectors: network.at.collectors.map(gasOf),
      crankcase: this.system.undersideWork
        ? { ...gasOf(network.at.crankcase), volume: cut(this.crankcaseVolume) }
        : null,
      blowerFlow: cut(this.blowerFlow),
      slipFlow: cut(this.slipFlow),
      gasTorque: cut(this.gasTorque),
      blowerTorque: cut(this.blowerTorque),
      gasWork: cut(this.gasWork),
      blowerWork: cut(this.blowerWork),
      second: this.system.secondBlower
        ? { torque: cut(this.secondTorque), work: cut(this.secondWork) }
        : null,
    };
  }
}

/** What the blowers of one stage ask of the crank [N m]. */
function torqueAtCrank(
  blower: Blower,
  fluid: number,
  omega: number,
  ratio: number,
  efficiency: number,
): number {
  const rotors = fluid / blower.mechanicalEfficiency + dragTorque(blower, omega * ratio) * ratio;
  return rotors / efficiency;
}
