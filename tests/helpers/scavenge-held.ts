import { CycleSystem } from '../../src/sim/cycle/system.ts';
import { atRest } from '../../src/sim/cycle/start.ts';
import type { Engine, Scavenging } from '../../src/sim/engine.ts';
import { findRoot } from '../../src/sim/numerics/find-root.ts';
import { deg } from '../../src/sim/units.ts';
import { at, changed, modelOf, presetEngine } from './engines.ts';

const AMBIENT = 101_325;
const FRESH = [1, 0, 0];
const BURNED = [0, 0, 1];

/** Caraway 1 with two zones by the given law, nothing crossing straight over, and no heat to any wall. */
export const zonedEngine = (law: Scavenging['law'], shortCircuitShare = 0): Engine =>
  changed(presetEngine('caraway-1'), {
    scavenging: { law, shortCircuitShare, smoothing: 0.01, zones: { mixingAngle: 8 * deg } },
    cylinderHeat: { annandA: 0, annandC: 0 },
  });

export interface Scavenged {
  /** Mass delivered over the mass inside, added up as it changes [-]. */
  readonly ratio: number;
  readonly xi: number;
  readonly volumeShare: number;
  /** Temperatures of the zones, and of burned gas that holds the enthalpy of what leaves [K]. */
  readonly fresh: number;
  readonly burned: number;
  readonly leaving: number;
  /** p V of gas at the two given temperatures, apart, over that of all of it at the one temperature of their energy, less 1 [-]. */
  readonly apart: number;
  /** T* / T - 1, and of the zones' energies from the cylinder's over m c_v T [-]. */
  readonly defect: number;
  readonly energyDefect: number;
}

/**
 * Scavenges a cylinder whose piston stands at bottom dead centre, between a passage and a collector that stay as they are, by classical
 * Runge-Kutta on the cycle's own rates: the passage a little above the cylinder's pressure, the collector a little below.
 *
 * @param until - scavenge ratios to report at, rising
 */
export function scavenged(
  engine: Engine,
  { passage, cylinder }: { readonly passage: number; readonly cylinder: number },
  until: readonly number[],
): Scavenged[] {
  const model = modelOf(engine);
  const system = new CycleSystem(model, at(3000));
  const { gas, edges, memory, stateSize } = system;
  const zones = system.zones!;
  const { at: nodes, through } = model.network;
  const node = nodes.cylinders[0]!;
  const y = new Float64Array(stateSize);
  y.set(atRest(system).state);
  system.instant.theta = model.geometry.cylinders[0]!.bdc;
  system.pistons.moveTo(system.instant.theta);
  gas.pack(y, node, AMBIENT, cylinder, BURNED);
  gas.pack(y, nodes.passages[0]!, 1.004 * AMBIENT, passage, FRESH);
  gas.pack(y, nodes.collectors[0]!, 0.996 * AMBIENT, cylinder, BURNED);
  memory.setStalePurity(0, 0);
  const moving = [...Array.from({ length: gas.stride }, (_, k) => node * gas.stride + k), zones.stateAt];
  const rates = new Float64Array(system.size);
  const argument = new Float64Array(stateSize);
  const slope = (from: Float64Array): { of: number[]; delivered: number } => {
    if (!system.rates(from, rates, false)) throw new Error(system.failure(system.instant.theta).reason);
    return {
      of: moving.map((i) => rates[i]!),
      delivered: edges.massFlow[through.transfers[0]!]! / gas.mass[node]!,
    };
  };
  const beside = (k: number[], by: number) => {
    argument.set(y);
    moving.forEach((i, m) => (argument[i] = y[i]! + by * k[m]!));
    return argument;
  };
  const found: Scavenged[] = [];
  let ratio = 0;
  for (const wanted of until) {
    while (ratio < wanted) {
      const first = slope(y);
      const h = Math.min(1e-3 / first.delivered, 5e-5);
      const a = first.of;
      const b = slope(beside(a, h / 2)).of;
      const c = slope(beside(b, h / 2)).of;
      const d = slope(beside(c, h)).of;
      moving.forEach((i, m) => (y[i] = y[i]! + (h / 6) * (a[m]! + 2 * b[m]! + 2 * c[m]! + d[m]!)));
      ratio += h * first.delivered;
    }
    slope(y);
    found.push({ ratio, ...seen(system, y, passage, cylinder) });
  }
  return found;
}

function seen(system: CycleSystem, y: Float64Array, cold: number, hot: number): Omit<Scavenged, 'ratio'> {
  const { gas, edges, model } = system;
  const zones = system.zones!;
  const node = model.network.at.cylinders[0]!;
  const n = gas.set.count;
  const exhaust = model.network.through.exhausts[0]! * edges.stride;
  const enthalpy = edges.carried[exhaust + n]!;
  const u = new Float64Array(n);
  const cv = new Float64Array(n);
  let leaving = gas.temperature[node]!;
  for (let i = 0; i < 30; i++) {
    gas.set.evaluate(leaving, u, cv, 0);
    let h = 0;
    let cp = 0;
    for (let k = 0; k < n; k++) {
      const R = gas.set.gasConstants[k]!;
      h += edges.carried[exhaust + k]! * (u[k]! + R * leaving);
      cp += edges.carried[exhaust + k]! * (cv[k]! + R);
    }
    leaving += (enthalpy - h) / cp;
  }
  const xi = zones.massShare[0]!;
  const U = y[node * gas.stride + n]!;
  const energyOf = (T: number, fractions: readonly number[]) => {
    gas.set.evaluate(T, u, cv, 0);
    return fractions.reduce((sum, f, k) => sum + f * u[k]!, 0);
  };
  const zoned =
    gas.mass[node]! *
    (xi * energyOf(zones.freshTemperature[0]!, FRESH) +
      (1 - xi) * energyOf(zones.burnedTemperature[0]!, BURNED));
  const mixed = [xi, 0, 1 - xi];
  const energy = xi * energyOf(cold, FRESH) + (1 - xi) * energyOf(hot, BURNED);
  const one = findRoot((T) => energyOf(T, mixed) - energy, 200, 3000);
  const [Rf, , Rb] = gas.set.gasConstants as unknown as [number, number, number];
  return {
    apart: (xi * Rf * cold + (1 - xi) * Rb * hot) / ((xi * Rf + (1 - xi) * Rb) * one) - 1,
    xi,
    volumeShare: zones.volumeShare[0]!,
    fresh: zones.freshTemperature[0]!,
    burned: zones.burnedTemperature[0]!,
    leaving,
    defect: zones.ratio[0]! - 1,
    energyDefect: (zoned - U) / (gas.heatCapacity[node]! * gas.temperature[node]!),
  };
}
