import type { CycleSystem } from '../../cycle/system.ts';
import { solveLinear } from '../../numerics/solve-linear.ts';

const MOST_ROUNDS = 5000;
/** Imbalance of mass over what flows, and of temperature [K], below which all counts as settled. */
const BALANCED = 1e-9;
const SETTLED = 1e-6;
/** Most that a pressure changes in a round [-]. */
const LONGEST = 0.1;

/**
 * Steady flow through inlet box, two stages and what stands between them, the plenum held at a pressure: pressures by Newton's method
 * with the slopes that the edges tell, temperatures by relaxation, a step of each in every round.
 *
 *   node  sum m = 0,  dU/dt = 0        all edges, blowers' work, walls, cooler
 *   plenum  sum_in m (h - h_plenum) + work + wall = 0
 *
 * @param state - of `system`; holds the settled state when done
 * @param inlet - temperature to begin from [K]
 * @returns false where there is none within the gas model's temperatures
 *
 * Numerics: an orifice's slope is twice the true one, so that a round leaves about half of the imbalance.
 */
export function settleStages(
  system: CycleSystem,
  state: Float64Array,
  rates: Float64Array,
  fresh: readonly number[],
  pressure: number,
  inlet: number,
): boolean {
  const { gas, edges, model } = system;
  const { at, through } = model.network;
  const { box, interstage, beforeSecond, plenum } = at;
  const nodes = beforeSecond === interstage ? [box, interstage] : [box, interstage, beforeSecond];
  const ambient = model.engine.ambient.pressure;
  const p = nodes.map((_, i) => ambient + (i / nodes.length) * (pressure - ambient));
  const T = nodes.map((_, i) => inlet + 5 * i);
  let plenumT = inlet + 20;
  const entries = new Set(through.entries);

  for (let round = 0; round < MOST_ROUNDS; round++) {
    nodes.forEach((node, i) => gas.pack(state, node, p[i]!, T[i]!, fresh));
    gas.pack(state, plenum, pressure, plenumT, fresh);
    if (!system.rates(state, rates, false)) return false;
    const net = nodes.map(() => 0);
    const slopes = nodes.map(() => nodes.map(() => 0));
    let most = 1e-12;
    for (let e = 0; e < edges.count; e++) {
      const [from, to] = [nodes.indexOf(edges.from[e]!), nodes.indexOf(edges.to[e]!)];
      if (from < 0 && to < 0) continue;
      most = Math.max(most, Math.abs(edges.massFlow[e]!));
      for (const [node, sign] of [
        [from, -1],
        [to, 1],
      ] as const) {
        if (node < 0) continue;
        net[node]! += sign * edges.massFlow[e]!;
        if (from >= 0) slopes[node]![from]! += sign * edges.slopeFrom[e]!;
        if (to >= 0) slopes[node]![to]! += sign * edges.slopeTo[e]!;
      }
    }
    const wall = (node: number): number =>
      system.nodeWalls.walls.reduce((sum, each) => sum + (each.node === node ? each.conductance : 0), 0);
    const cp = (node: number) => (gas.gamma[node]! * gas.gasConstant[node]!) / (gas.gamma[node]! - 1);
    const perKelvin = (node: number) => most * cp(node) + wall(node);

    let plenumHeat = (system.secondBlower ?? system.blower).powerIntoPlenum;
    for (const each of system.nodeWalls.walls)
      if (each.node === plenum)
        plenumHeat += each.conductance * (each.temperature - gas.temperature[plenum]!);
    for (let e = 0; e < edges.count; e++) {
      if (entries.has(e)) continue;
      const into =
        edges.to[e] === plenum ? edges.massFlow[e]! : edges.from[e] === plenum ? -edges.massFlow[e]! : 0;
      if (into > 0)
        plenumHeat += into * (edges.carried[e * edges.stride + gas.set.count]! - gas.enthalpy[plenum]!);
    }

    const step = solveLinear(
      slopes.map((row) => Float64Array.from(row)),
      Float64Array.from(net, (each) => -each),
    );
    let imbalance = 0;
    let change = Math.abs(plenumHeat / perKelvin(plenum));
    nodes.forEach((node, i) => {
      imbalance = Math.max(imbalance, Math.abs(net[i]!) / most);
      // What piles up takes its enthalpy along: it is the pressure's business.
      const heat = rates[node * gas.stride + gas.set.count]! - net[i]! * gas.enthalpy[node]!;
      const dT = heat / perKelvin(node);
      change = Math.max(change, Math.abs(dT));
      T[i]! += dT;
      p[i]! += Math.max(-LONGEST * p[i]!, Math.min(LONGEST * p[i]!, step[i]!));
    });
    plenumT += plenumHeat / perKelvin(plenum);
    if (![plenumT, ...T].every((each) => each > 200 && each < 2000)) return false;
    if (imbalance < BALANCED && change < SETTLED) return true;
  }
  return false;
}
