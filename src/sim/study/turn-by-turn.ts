import { modelAt } from '../cycle/mixture-at.ts';
import type { Model } from '../cycle/model.ts';
import type { OperatingPoint } from '../cycle/operating-point.ts';
import { Period } from '../cycle/period.ts';
import { largestChange, weigh } from '../cycle/period-map.ts';
import { buildSchedule } from '../cycle/schedule.ts';
import type { PeriodStart } from '../cycle/start.ts';
import { atRest } from '../cycle/start.ts';
import { stepMethod } from '../cycle/step-method.ts';
import { CycleSystem } from '../cycle/system.ts';
import type { SolvedPoint } from '../results/point-result.ts';
import { AIR_INDEX, chargeFractions, FUEL_INDEX, LIQUID_INDEX } from '../gas/mixture.ts';
import { PeriodTotals } from '../results/period-totals.ts';
import { Recorder } from '../results/recorder.ts';
import { summarise } from '../results/summarise.ts';
import { TURN } from '../units.ts';

/** One turn of the crank on the way from a stated start; nothing about it repeats. */
export interface Turn {
  /** Counted from 1. */
  readonly turn: number;
  /** The turn's figures. Its residuals' `change` is how far it was from repeating the one before. */
  readonly figures: SolvedPoint;
  /** Cylinder by cylinder. */
  readonly charges: readonly TurnCharge[];
  /** Fuel at the end of the turn, vapour and liquid, over that of the design's mixture, in inlet box, plenum, and passages together [-]. */
  readonly fuelled: { readonly box: number; readonly plenum: number; readonly passages: number };
}

/** What a cylinder got in one turn. */
export interface TurnCharge {
  /** Net air and fuel through its transfer windows [kg]. */
  readonly air: number;
  readonly fuel: number;
  /** At its last spark, air over fuel over stoichiometric [-]; null without fuel. */
  readonly lambda: number | null;
  /** At its last spark, burned gas by mass [-]. */
  readonly residual: number;
  /** Whether its last spark lit it. */
  readonly fired: boolean;
}

export interface TurnOptions {
  /** State to begin from; at rest and full of air unless given. */
  readonly start?: PeriodStart;
  /** Speed of the next turn, from the one just stepped [rad/s]; held unless given. */
  readonly speedAfter?: (turn: Turn) => number;
}

/** How a run of turns ended: null where its consumer stopped it, a reason where the gas left the accepted range. */
export type TurnsEnd = { readonly reason: string } | null;

/** Points of a turn that a recorder holds. */
const MOST_POINTS = 20_000;

/**
 * Steps turn after turn at one speed and throttle: cranking from rest, misfire that comes and goes, a blower that fills its
 * plenum. No acceleration, no repeated mesh: every turn is stepped by its own error, starting where the last one ended.
 * A cylinder burns its charge or skips it, turn by turn. The speed may change from turn to turn, not within one.
 *
 * @returns a generator that goes on until its consumer stops or the gas leaves the accepted range
 */
export function* turnByTurn(
  design: Model,
  point: OperatingPoint,
  { start, speedAfter }: TurnOptions = {},
): Generator<Turn, TurnsEnd> {
  // One mixture throughout: what burned on one must not count as burned on another.
  const model = ofOneMixture(modelAt(design, point.speed));
  const schedule = buildSchedule(model.geometry.cylinders, 1);
  let { speed } = point;
  let system = new CycleSystem(model, point, 'by turns');
  const begin = start ?? atRest(system);
  const n = system.stateSize;
  const now = new Float64Array(n + begin.memory.length);
  now.set(begin.state);
  now.set(begin.memory, n);
  system.memory.values.set(begin.memory);
  const weights = new Float64Array(now.length);
  for (let turn = 1; ; turn++) {
    if (speed !== system.omega) {
      system = new CycleSystem(model, { ...point, speed }, 'by turns');
      system.memory.values.set(now.subarray(n));
    }
    const { method, fine } = stepMethod(model, system.point);
    const period = new Period(system, schedule, method);
    system.instant.before = (turn - 1) * TURN;
    const began = now.slice();
    const records = new Float64Array(system.size);
    records.set(now.subarray(0, n));
    const recorder = new Recorder(system, MOST_POINTS);
    const end = period.adapt(records, fine, true, recorder.note);
    if (!end.ok) return { reason: end.reason };
    now.set(records.subarray(0, n));
    now.set(system.memory.values, n);
    weigh(system, weights);
    const change = largestChange(began, now, weights);
    const stepped: Turn = {
      turn,
      figures: summarise(system, records, began, recorder, turn, change, 1),
      charges: chargesOf(system, new PeriodTotals(system, records, began)),
      fuelled: fuelledOf(system),
    };
    yield stepped;
    if (speedAfter) speed = speedAfter(stepped);
  }
}

function ofOneMixture(model: Model): Model {
  const charge = { ...model.engine.charge, lambdaOverSpeed: null };
  return { ...model, engine: { ...model.engine, charge } };
}

/** Constituents that are fuel. */
const fuels = ({ set }: Model): readonly number[] =>
  set.count > LIQUID_INDEX ? [FUEL_INDEX, LIQUID_INDEX] : [FUEL_INDEX];

function chargesOf({ model, burning, memory }: CycleSystem, totals: PeriodTotals): readonly TurnCharge[] {
  return model.network.through.transfers.map((edge, j) => {
    const lambda = burning.lambdaAtSpark[j]!;
    return {
      air: totals.through(edge, AIR_INDEX),
      fuel: fuels(model).reduce((sum, k) => sum + totals.through(edge, k), 0),
      lambda: Number.isFinite(lambda) ? lambda : null,
      residual: burning.residualAtSpark[j]!,
      fired: memory.burnMass(j) > 0 && memory.completeness(j) > 0,
    };
  });
}

function fuelledOf({ model, gas }: CycleSystem): Turn['fuelled'] {
  const { at } = model.network;
  const whole = chargeFractions(model.mixture)[FUEL_INDEX]!;
  const share = (nodes: readonly number[]) => {
    const sum = (of: (node: number) => number) => nodes.reduce((total, node) => total + of(node), 0);
    const fuel = fuels(model).reduce(
      (total, k) => total + sum((node) => gas.mass[node]! * gas.fraction[node * gas.set.count + k]!),
      0,
    );
    return fuel / sum((node) => gas.mass[node]!) / whole;
  };
  return { box: share([at.box]), plenum: share([at.plenum]), passages: share(at.passages) };
}
