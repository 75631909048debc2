import { wiebeFraction } from '../combustion/wiebe.ts';
import { withLambda } from '../cycle/mixture-at.ts';
import type { Model } from '../cycle/model.ts';
import { trapAngle } from '../cycle/schedule.ts';
import type { Constituent } from '../gas/constituent.ts';
import { AIR_INDEX, FUEL_INDEX, PRODUCTS_INDEX } from '../gas/mixture.ts';
import { internalEnergy } from '../gas/polynomial.ts';
import { aboutZero, restOfTurn } from '../geometry/angles.ts';
import { findRoot } from '../numerics/find-root.ts';
import { intervalOf } from '../numerics/interpolate.ts';
import { TURN } from '../units.ts';
import { squeezed } from './end-gas.ts';
import type { SolvedPoint } from './point-result.ts';

/** Unburned and burned gas of one cylinder, from where its windows shut to where its exhaust opens. */
export interface BurnZones {
  /** After own top dead centre, rising [rad]. */
  readonly angle: Float64Array;
  /** [K]; NaN where there is none of it, or too little to tell. */
  readonly unburned: Float64Array;
  readonly burned: Float64Array;
  /** Of the cycle's one zone [K]. */
  readonly mean: Float64Array;
  /** Pressure of both zones over that of the one zone at its highest [-]. */
  readonly peakRatio: number;
}

/** Shares of the charge from which, and to which, there are two zones worth a temperature [-]. */
const FIRST = 0.01;
const LAST = 0.99;
/** How far both zones' pressure may lie from the one zone's, and burned temperatures that are believed [K]. */
const APART = 0.3;
const COLDEST = 500;
const HOTTEST = 4000;

/** Specific energy [J/kg] and gas constant [J/(kg K)] of a gas at a temperature and density. */
type Gas = (T: number, density: number) => { readonly u: number; readonly R: number };

/**
 * Two zones at one pressure in the recorded period of cylinder j.
 *
 *   unburned: the charge as trapped;  dT_u / T_u = (R / cp) dp / p  from where burning begins
 *   burned:   share x of the charge by Wiebe's function, its fuel turned to products but for what the design leaves unburned
 *   p V = m_u R_u T_u + m_b R_b T_b,   m_u u_u(T_u) + m_b u_b(T_b) = U
 *
 * U: energy of the cycle's own single zone, which took up work and wall heat at its own pressure. Specific heats grow with temperature, so
 * two zones come to a slightly other pressure than one; `peakRatio` says by how much.
 *
 * Valid: no heat between the zones, all wall heat as the single zone had it; null where nothing burns, or one of design and point has no such cylinder.
 * Numerics: the pressure by Brent's method at every point of the mesh; R_b of dissociating gas by two fixed-point steps.
 * Source: Heywood, Internal Combustion Engine Fundamentals, 1988, sec. 9.2.2.
 */
export function burnZones(design: Model, point: SolvedPoint, j: number): BurnZones | null {
  const model = withLambda(design, point.engine.lambda);
  const { cylinders, traces } = point;
  const { combustion } = model.engine;
  const shape = model.geometry.cylinders[j];
  const figures = cylinders[j];
  if (!shape || !figures) return null;
  if (!combustion.enabled || !(figures.trappedMass > 0) || !(figures.burnedShare > 0)) return null;
  const air = figures.trappedAir / figures.trappedMass;
  const fuel = Math.max(0, figures.purity - air);
  const burnt = figures.burnedShare * Math.min(fuel, air / model.mixture.airFuelRatio);
  const fresh = gasOf(model, air, fuel);
  const ash = gasOf(model, air - burnt * model.mixture.airFuelRatio, fuel - burnt);

  const opens = shape.exhaust.opensAfterOwnTdc;
  const shut = restOfTurn(trapAngle(shape) - shape.tdc) - TURN;
  const spark = aboutZero(shape.sparkAngle - shape.tdc);
  const begins = Math.max(shut, spark + figures.burnDelay);
  const own = traces.cylinders[j]!;
  const length = traces.angle[traces.angle.length - 1]!;
  const angle = Float64Array.from(placesBetween(traces.angle, shape.tdc, shut, opens));
  const columns = {
    unburned: angle.map(() => NaN),
    burned: angle.map(() => NaN),
    mean: angle.map(() => NaN),
  };
  let before: { T: number; p: number } | null = null;
  let [most, mostTwo] = [0, NaN];
  angle.forEach((theta, k) => {
    const within = (theta + shape.tdc + 2 * length) % length;
    const i = intervalOf(traces.angle, within);
    const part = (within - traces.angle[i]!) / (traces.angle[i + 1]! - traces.angle[i]!);
    const read = (column: Float64Array) => column[i]! + part * (column[i + 1]! - column[i]!);
    const [p, T, V] = [read(own.pressure), read(own.temperature), read(own.volume)];
    columns.mean[k] = T;
    const x =
      theta > begins
        ? wiebeFraction((theta - begins) / figures.burnDuration, combustion.wiebeA, combustion.wiebeM)
        : 0;
    if (before === null || theta <= begins) {
      columns.unburned[k] = T;
      before = { T, p };
      return;
    }
    const last = before;
    const unburnedAt = (pressure: number) => squeezed(fresh.mixture, last.T, pressure / last.p);
    const state = whole(x, p, T, V, fresh.at, ash.at);
    let pressure = p;
    if (x >= FIRST && x <= LAST) {
      const burned = (at: number) => {
        const Tu = unburnedAt(at);
        const room = V - ((1 - x) * state.mass * fresh.at(Tu, 1).R * Tu) / at;
        const density = (x * state.mass) / room;
        let Tb = at / (density * ash.at(1500, density).R);
        for (let pass = 0; pass < 2; pass++) Tb = at / (density * ash.at(Math.min(Tb, HOTTEST), density).R);
        return { Tb, density, Tu };
      };
      const surplus = (at: number) => {
        const { Tb, density, Tu } = burned(at);
        return (1 - x) * fresh.at(Tu, 1).u + x * ash.at(Tb, density).u - state.energy / state.mass;
      };
      const [low, high] = [(1 - APART) * p, (1 + APART) * p];
      if (surplus(low) < 0 && surplus(high) > 0) {
        pressure = findRoot(surplus, low, high, 1e-6 * p);
        const { Tb } = burned(pressure);
        if (Tb > COLDEST && Tb < HOTTEST) columns.burned[k] = Tb;
      }
    } else if (x > LAST) columns.burned[k] = T;
    before = { T: unburnedAt(pressure), p: pressure };
    if (x <= LAST) columns.unburned[k] = before.T;
    if (p > most) [most, mostTwo] = [p, pressure];
  });
  return { angle, ...columns, peakRatio: mostTwo / most };
}

/** Mesh angles between two after own top dead centre, with both ends [rad]; the period repeats. */
function placesBetween(mesh: Float64Array, tdc: number, from: number, to: number): number[] {
  const length = mesh[mesh.length - 1]!;
  const places = [from, to];
  for (let k = -2; k <= 1; k++)
    for (const each of mesh.subarray(1)) {
      const theta = each + k * length - tdc;
      if (theta > from && theta < to) places.push(theta);
    }
  return [...new Set(places)].sort((a, b) => a - b);
}

/** Mass [kg] and energy [J] of the one zone, by its pressure, temperature and volume. */
function whole(x: number, p: number, T: number, V: number, fresh: Gas, ash: Gas) {
  const density = p / (((1 - x) * fresh(T, 1).R + x * ash(T, 1).R) * T);
  const [unburned, burned] = [fresh(T, density), ash(T, density)];
  const mass = (p * V) / (((1 - x) * unburned.R + x * burned.R) * T);
  return { mass, energy: mass * ((1 - x) * unburned.u + x * burned.u) };
}

/** Gas of these shares of air and fuel vapour, the rest products. */
function gasOf({ set, dissociation }: Model, air: number, fuel: number) {
  const parts = [
    { gas: set.constituents[AIR_INDEX]!, share: air },
    { gas: set.constituents[FUEL_INDEX]!, share: fuel },
    { gas: set.constituents[PRODUCTS_INDEX]!, share: 1 - air - fuel },
  ] satisfies { gas: Constituent; share: number }[];
  const at: Gas = (T, density) => {
    let u = parts.reduce((sum, { gas, share }) => sum + share * internalEnergy(gas, T), 0);
    let R = parts.reduce((sum, { gas, share }) => sum + share * gas.gasConstant, 0);
    if (dissociation) {
      dissociation.evaluate(T, Math.log(density));
      u += (1 - air - fuel) * dissociation.energy;
      R += (1 - air - fuel) * dissociation.gasConstant;
    }
    return { u, R };
  };
  return { mixture: parts, at };
}
