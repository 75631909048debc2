import { rotorInertia } from '../../blower/rotors/rotor-inertia.ts';
import type { Model } from '../../cycle/model.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { TURN } from '../../units.ts';
import type { Dial } from './dial.ts';
import { dial } from './dial.ts';
import type { EarlyFire } from './early-fire.ts';
import { earlyFire } from './early-fire.ts';
import type { Inertias, SpeedFluctuation } from './fluctuation.ts';
import { speedFluctuation } from './fluctuation.ts';
import type { Harmonic } from './harmonics.ts';
import { harmonics } from './harmonics.ts';
import type { Loads } from './loads.ts';
import { pinLoads } from './loads.ts';
import type { MovingRow } from './moving-row.ts';
import { motionOf, movingRows, rodsAt } from './moving-row.ts';
import type { ShaftLoad } from './shafts.ts';
import { blowerShaft, outputShaft } from './shafts.ts';
import type { Shaking } from './shaking.ts';
import { shaking } from './shaking.ts';
import type { TorqueOverTurn } from './torque.ts';
import { torqueOverTurn } from './torque.ts';

/** What turns the crank over one period of a solved point, and how evenly it runs. */
export interface Turning {
  readonly torque: TorqueOverTurn;
  /** By engine order, rising. */
  readonly harmonics: {
    readonly gas: readonly Harmonic[];
    readonly inertia: readonly Harmonic[];
    readonly blower: readonly Harmonic[];
    readonly total: readonly Harmonic[];
  };
  readonly fluctuation: SpeedFluctuation;
}

/** What has to bear it. */
export interface Bearing {
  readonly loads: Loads;
  readonly shaking: Shaking;
  readonly earlyFire: EarlyFire | null;
  readonly output: ShaftLoad;
  /** Of each blower. */
  readonly blowerDrive: ShaftLoad;
}

/** Everything about the pulses of one solved point: when, how hard, and on what. */
export interface Pulses extends Turning, Bearing {
  readonly dial: Dial;
}

export const LOADS_CAUTION =
  'These are numbers to hand to whoever checks the strength, and no strength proof: stress raisers, fatigue, torsional vibration, ' +
  'loose fits, misfire, detonation and bursting wheels are in none of them. Local rules, and licensed or experienced practice, come ' +
  'first.';

/** Orders up to which harmonics are told: three firings of every cylinder, 24 at the least. */
const highestOrder = (cylinders: number): number => Math.max(24, 3 * cylinders);

/** Torque over the turn, its harmonics and how far the speed swings, with the masses, flywheel and load of the design. */
export function turning(model: Model, point: SolvedPoint): Turning {
  const rows = movingRows(model);
  const torque = torqueOverTurn(model, point, rows);
  const highest = highestOrder(model.geometry.cylinders.length);
  const ofOrder = (key: keyof TorqueOverTurn['work']) =>
    harmonics(torque.work[key], point.turnsPerPeriod, highest);
  return {
    torque,
    harmonics: {
      gas: ofOrder('gas'),
      inertia: ofOrder('inertia'),
      blower: ofOrder('blower'),
      total: ofOrder('total'),
    },
    fluctuation: speedFluctuation(torque.work.total, inertiasOf(model, rows), point.speed),
  };
}

/** Loads of pins, bearings and shafts, balance, and the case of an early fire. */
export function bearing(
  model: Model,
  point: SolvedPoint,
  { torque, fluctuation }: Pick<Turning, 'torque' | 'fluctuation'>,
): Bearing {
  const { engine, drive } = model;
  const rows = movingRows(model);
  const shakes = shaking(rows, point.speed, engine.masses.balancedShare);
  const early = engine.combustion.enabled ? earlyFire(model, point) : null;
  const kick = early && early.torque;
  return {
    loads: pinLoads(model, point, rows, shakes.counterweights),
    shaking: shakes,
    earlyFire: early,
    output: outputShaft(torque, fluctuation, engine.load, engine.friction.outputGearEfficiency, kick),
    blowerDrive: blowerShaft(torque, fluctuation, engine.blower, drive, engine.load.shockFactor, kick),
  };
}

/** All of it; tens of milliseconds. */
export function pulses(model: Model, point: SolvedPoint): Pulses {
  const turns = turning(model, point);
  return { dial: dial(model.geometry), ...turns, ...bearing(model, point, turns) };
}

/** Angles over which the rods' inertia is averaged. */
const SAMPLES = 36;

/** Everything that turns, at the crank; rotors that cannot mesh count for nothing. */
export function inertiasOf(
  { engine, drive }: Pick<Model, 'engine' | 'drive'>,
  rows: readonly MovingRow[],
): Inertias {
  const { load, blower, secondStage } = engine;
  let rods = 0;
  for (let i = 0; i < SAMPLES; i++)
    for (const row of rows) rods += (2 * motionOf(row, rodsAt(row, (i * TURN) / SAMPLES)).inertia) / SAMPLES;
  const parts = {
    flywheel: load.flywheelInertia,
    rods,
    load: load.inertia / load.gearRatio ** 2,
    rotors:
      2 * blower.count * (rotorInertia(blower) ?? 0) * drive.ratio ** 2 +
      (secondStage && drive.second
        ? 2 * (rotorInertia(secondStage.blower) ?? 0) * drive.second.ratio ** 2
        : 0),
  };
  return { ...parts, total: parts.flywheel + parts.rods + parts.load + parts.rotors };
}
