import type { Engine } from '../../src/sim/index.ts';
import { orificeMassFlow } from '../../src/sim/exchange/orifice.ts';
import { AIR } from '../../src/sim/gas/air.ts';
import { specificHeat } from '../../src/sim/gas/polynomial.ts';
import { at, changed } from './engines.ts';
import { rigOf, sealedEngine } from './sealed.ts';

const SPEED_RPM = 1000;
export const TURN_TIME = 60 / SPEED_RPM;
export const VOLUME = 1e-3;
const R = AIR.gasConstant;

/** Ratio of specific heats of air at a temperature [K]. */
export const airGamma = (T: number): number => specificHeat(AIR, T) / (specificHeat(AIR, T) - R);

export const AMBIENT_AIR = { pressure: 101_325, temperature: 293.15, gamma: airGamma(293.15) };

/** A vessel of one litre behind an orifice, to or from still air: the collector of an engine whose windows are shut. */
export function vessel(
  CdA: number,
  surroundings: { readonly pressure: number; readonly temperature: number } = AMBIENT_AIR,
): Engine {
  const engine = sealedEngine();
  const [first] = engine.collectors;
  return changed(engine, {
    ambient: { pressure: surroundings.pressure, temperature: surroundings.temperature },
    collectors: [
      changed(first, {
        volume: VOLUME,
        outletArea: CdA / 0.8,
        outletDischarge: { forward: 0.8, backward: 0.8 },
      }),
    ],
  });
}

export interface Moment {
  readonly time: number;
  readonly m: number;
  readonly p: number;
  readonly T: number;
}

/** One turn of a vessel that begins with air of a pressure and temperature, at every step. */
export function watch(engine: Engine, p: number, T: number): Moment[] {
  const rig = rigOf(engine, at(SPEED_RPM));
  const { gas, model, omega } = rig.system;
  const node = model.network.at.collectors[0];
  gas.pack(rig.state, node, p, T, [1, 0, 0]);
  const moments: Moment[] = [];
  rig.run(1e-6, (theta) =>
    moments.push({
      time: theta / omega,
      m: gas.mass[node],
      p: gas.pressure[node],
      T: gas.temperature[node],
    }),
  );
  return moments;
}

/** An all but empty vessel filled through an orifice that stays choked: at most 0.45 of ambient at the end. */
export const FILLING = { CdA: 2.5e-5, pressure: 0.002 * AMBIENT_AIR.pressure };
export const fillingFlow = (): number =>
  orificeMassFlow(FILLING.CdA, AMBIENT_AIR.pressure, AMBIENT_AIR.temperature, 0, AMBIENT_AIR.gamma, R);
export const filling = (): Moment[] => watch(vessel(FILLING.CdA), FILLING.pressure, AMBIENT_AIR.temperature);

/** A vessel at ten times the pressure outside that stays choked as it empties. */
export const EMPTYING = { CdA: 5e-5, outside: 50_000, pressure: 500_000, temperature: 400 };
export const emptying = (): Moment[] =>
  watch(
    vessel(EMPTYING.CdA, { pressure: EMPTYING.outside, temperature: 293.15 }),
    EMPTYING.pressure,
    EMPTYING.temperature,
  );

/**
 * Pressure over its first of a choked vessel that empties at constant entropy, gamma held at its mean:
 * (1 + (gamma-1)/2 t/tau)^(-2 gamma/(gamma-1)).
 */
export function emptiedTo(moments: readonly Moment[], time: number): number {
  const gamma = 0.5 * (airGamma(EMPTYING.temperature) + airGamma(moments.at(-1)!.T));
  const flow = orificeMassFlow(EMPTYING.CdA, EMPTYING.pressure, EMPTYING.temperature, 0, gamma, R);
  const tau = moments[0].m / flow;
  return (1 + (((gamma - 1) / 2) * time) / tau) ** ((-2 * gamma) / (gamma - 1));
}
