import { AIR_INDEX, chargeFractions, drawnFractions } from '../gas/mixture.ts';
import type { CycleSystem } from './system.ts';

/** State and memory at the beginning of a period: enough to go on from. Plain data. */
export interface PeriodStart {
  readonly state: Float64Array;
  readonly memory: Float64Array;
}

/**
 * The cold start of a periodic solution: a rough guess at a running engine, the same for every request.
 * Inlet and plenum hold fresh charge, cylinders a mixture of fresh and burned gas near ambient pressure, collectors
 * burned gas at 700 K.
 */
export function runningGuess(system: CycleSystem): PeriodStart {
  const { model } = system;
  const { ambient, combustion } = model.engine;
  const fresh = drawnFractions(model.mixture);
  const old = combustion.enabled ? chargeFractions(model.mixture, 0) : fresh;
  const mixed = combustion.enabled ? drawnFractions(model.mixture, 0.7) : fresh;
  const inlet = model.mixture.evaporation.temperature;
  const first = model.network.at.cylinders[0];
  return fill(system, (kind, node) => {
    switch (kind) {
      case 'inlet box':
        return [ambient.pressure, inlet, fresh];
      case 'plenum':
      case 'passage':
        return [1.05 * ambient.pressure, inlet + 20, fresh];
      case 'interstage':
        return [1.02 * ambient.pressure, inlet + 10, fresh];
      case 'crankcase':
        return [ambient.pressure, ambient.temperature + 40, mixed];
      case 'cylinder': {
        // Shut in at ambient pressure, and compressed or expanded since: p V^1.3 constant.
        const squeeze = trappedVolume(system, node - first) / system.gas.volume[node];
        const T = (combustion.enabled ? 450 : inlet + 20) * Math.max(1, squeeze) ** 0.3;
        return [ambient.pressure * Math.max(1, squeeze) ** 1.3, T, mixed];
      }
      default:
        return [ambient.pressure, combustion.enabled ? 700 : inlet + 20, old];
    }
  });
}

/** Exponent of isentropic compression of air. */
const AIR_EXPONENT = 1.4;

/**
 * An engine full of air at ambient pressure and temperature: where cranking starts. Cylinders that are shut hold what they shut in,
 * compressed; at ambient pressure near its top dead centre a cylinder would freeze on the way down.
 */
export function atRest(system: CycleSystem): PeriodStart {
  const { model } = system;
  const { ambient } = model.engine;
  const air = model.set.constituents.map((_, k) => (k === AIR_INDEX ? 1 : 0));
  const first = model.network.at.cylinders[0];
  return fill(system, (kind, node) => {
    const squeeze =
      kind === 'cylinder' ? Math.max(1, trappedVolume(system, node - first) / system.gas.volume[node]) : 1;
    return [
      ambient.pressure * squeeze ** AIR_EXPONENT,
      ambient.temperature * squeeze ** (AIR_EXPONENT - 1),
      air,
    ];
  });
}

type Filling = [pressure: number, temperature: number, fractions: readonly number[]];

function fill(system: CycleSystem, filling: (kind: string, node: number) => Filling): PeriodStart {
  const { gas, pistons, model } = system;
  const state = new Float64Array(system.stateSize);
  pistons.moveTo(0);
  for (let node = 0; node < gas.dynamicCount; node++) {
    gas.pack(state, node, ...filling(model.network.nodes[node].kind, node));
  }
  const memory = new Float64Array(system.memory.values.length);
  const { walls } = system.memory;
  const { crownTemperature, headTemperature, linerTemperature } = model.engine.cylinderHeat;
  const given = [crownTemperature, headTemperature, linerTemperature];
  memory.set(
    walls.map((_, i) => given[i % given.length]),
    memory.length - walls.length,
  );
  return { state, memory };
}

/** Volume of a cylinder when its exhaust closes [m^3]. */
function trappedVolume(system: CycleSystem, j: number): number {
  const cylinder = system.model.geometry.cylinders[j];
  return cylinder.trappedCompressionRatio * cylinder.clearanceVolume;
}
