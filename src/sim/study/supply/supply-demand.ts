import { withLambda } from '../../cycle/mixture-at.ts';
import type { Model } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import type { SolvedStart } from '../../cycle/solve.ts';
import { solve } from '../../cycle/solve.ts';
import { timeMean } from '../../numerics/time-mean.ts';
import type { Outcome } from '../../outcome.ts';
import { failure, success } from '../../outcome.ts';
import type { SolvedPoint, Traces } from '../../results/point-result.ts';
import { rpm } from '../../units.ts';
import { referenceAirFlow } from '../air/air-figures.ts';
import { stepwiseRoot } from '../stepwise-root.ts';
import { doing } from '../study-step.ts';
import type { Study } from '../study-step.ts';
import { BlowerSide } from './blower-side.ts';
import type { Supply } from './blower-side.ts';
import { solveHeld, withHeldPlenum } from './held-plenum.ts';
import { pulsationText } from './pulsation-text.ts';

/** What the cylinders swallow with the plenum held. */
export interface Demand {
  /** Of the plenum [Pa], [K]. */
  readonly pressure: number;
  readonly temperature: number;
  /** Net air through the transfer windows [kg/s], and over ambient air in the swept volume [-]. */
  readonly airFlow: number;
  readonly deliveryRatio: number;
  readonly chargingEfficiency: number;
}

/** Where a plenum stands, as far as the two curves tell. */
export interface Meeting {
  readonly pressure: number;
  readonly airFlow: number;
}

export interface SupplyDemand {
  readonly speed: number;
  readonly throttle: number;
  /** Ambient air in the swept volume, every turn [kg/s]: air flow over it is the delivery ratio. */
  readonly referenceFlow: number;
  readonly supply: readonly Supply[];
  readonly demand: readonly Demand[];
  /** Where supply and demand are equal; null where they do not meet within the pressures looked at. */
  readonly meeting: Meeting | null;
  /** Of the converged cycle, time means; ripple highest less lowest [Pa]. */
  readonly cycle: Meeting & { readonly ripple: number; readonly temperature: number };
  /** Mean plenum pressure while charge flows out of it, weighted by that flow [Pa]. */
  readonly drawnPressure: number;
  /** How far the cycle lies from the meeting point, and why. */
  readonly explanation: string;
  /** Pressures at which the cylinders had no answer, and why. */
  readonly gaps: readonly { readonly pressure: number; readonly reason: string }[];
}

/** Places of the curves, in shares of the plenum's pressure over the exhaust, from the working point. */
const PLACES = [-0.75, -0.5, -0.25, 0, 0.25, 0.5, 1];
const SUPPLY_PLACES = 25;
/** How many more places are looked at towards the exhaust's pressure where the curves have not met. */
const MOST_LOWER = 4;
/** Least spread of the curves, over ambient pressure: some 20 Pa, half of what a slow crank makes. */
const LEAST_SPREAD = 2e-4;
/** Share of the working point's flow below which it is not looked further down: near no flow cylinders hardly settle [-]. */
const LEAST_FLOW = 0.1;
/** Pressure within which the meeting point is found, over the spread. */
const MEETING_TOLERANCE = 1e-3;

/**
 * Supply against demand at one operating point: the blower side's steady flow and the cylinders' periodic flow, each against a
 * held plenum pressure, and where they meet; beside it the converged cycle, whose plenum pulses.
 *
 * The held plenum is as warm as the blower side makes it at that pressure, and warmer and staler by what the cycle's own plenum
 * gets from gas that is blown back.
 *
 * @param start - a stated neighbour's solution for the working point, or null
 */
export function* supplyDemand(
  model: Model,
  point: OperatingPoint,
  start: SolvedStart | null = null,
): Study<Outcome<SupplyDemand>> {
  const { ambient } = model.engine;
  const { result: cycle } = yield* doing('working point', solve(model, point, { start }));
  if (!cycle.converged) return failure([{ path: '', message: cycle.reason }]);
  const asSolved = withLambda(model, cycle.engine.lambda);
  const blower = new BlowerSide(asSolved, point);
  const atCycle = blower.at(cycle.plenum.meanPressure);
  const blownBack = atCycle ? cycle.plenum.meanTemperature - atCycle.temperature : 0;
  const purity = timeMean(cycle.traces.angle, cycle.traces.plenum.purity);
  const referenceFlow = referenceAirFlow(model, point.speed);

  const centre = cycle.plenum.meanPressure;
  const exhaust =
    cycle.collectors.reduce((sum, each) => sum + each.meanPressure, 0) / cycle.collectors.length;
  const spread = Math.max(Math.abs(centre - exhaust), LEAST_SPREAD * ambient.pressure);
  const held = withHeldPlenum(asSolved);
  const gaps: { pressure: number; reason: string }[] = [];
  const demand: Demand[] = [];
  let near: SolvedStart | null = null;
  const demandAt = function* (pressure: number): Study<Demand | null> {
    const steady = blower.at(pressure);
    const temperature = (steady?.temperature ?? cycle.plenum.meanTemperature - blownBack) + blownBack;
    const run = solveHeld(held, point, { pressure, temperature, purity }, near);
    const { result, next } = yield* doing(`cylinders at ${(pressure / 1e5).toFixed(3)} bar`, run);
    if (!result.converged) {
      gaps.push({ pressure, reason: result.reason });
      return null;
    }
    near = next;
    const { deliveryRatio, chargingEfficiency } = result.engine;
    return {
      pressure,
      temperature,
      airFlow: deliveryRatio * referenceFlow,
      deliveryRatio,
      chargingEfficiency,
    };
  };
  // Downwards, so that every place has a near neighbour to start from.
  const places = [...PLACES].sort((a, b) => b - a);
  let lowest = places.at(-1)!;
  for (const place of places) {
    const found = yield* demandAt(centre + place * spread);
    if (found) demand.unshift(found);
    if (place < 0 && (!found || found.deliveryRatio < LEAST_FLOW * cycle.engine.deliveryRatio)) break;
  }
  for (let more = 0; more < MOST_LOWER && outrunsSupply(blower, demand[0]); more++) {
    lowest = (lowest - 1) / 2;
    const found = yield* demandAt(centre + lowest * spread);
    if (found) demand.unshift(found);
  }
  const supply = Array.from({ length: SUPPLY_PLACES }, (_, i) => {
    const high = PLACES.at(-1)!;
    return blower.at(centre + spread * (lowest + ((high - lowest) * i) / (SUPPLY_PLACES - 1)));
  }).filter((each): each is Supply => each !== null && each.massFlow >= 0);

  const meeting = yield* meet(blower, demand, demandAt, MEETING_TOLERANCE * spread);
  const working = {
    pressure: centre,
    airFlow: cycle.engine.deliveryRatio * referenceFlow,
    ripple: cycle.plenum.maxPressure - cycle.plenum.minPressure,
    temperature: cycle.plenum.meanTemperature,
  };
  const drawn = drawnPressure(cycle);
  return success({
    speed: point.speed,
    throttle: point.throttle,
    referenceFlow,
    supply,
    demand,
    meeting,
    cycle: working,
    drawnPressure: drawn,
    explanation: pulsationText(
      `${Math.round(point.speed / rpm)} rpm`,
      meeting,
      working,
      drawn,
      ambient.pressure,
    ),
    gaps,
  });
}

/** Whether cylinders swallow more than there is even at the lowest pressure looked at. */
function outrunsSupply(blower: BlowerSide, lowest: Demand | undefined): boolean {
  const supply = lowest && blower.at(lowest.pressure);
  return !!supply && lowest.airFlow > supply.airFlow;
}

/** Where demand overtakes supply. */
function* meet(
  blower: BlowerSide,
  demand: readonly Demand[],
  demandAt: (pressure: number) => Study<Demand | null>,
  tolerance: number,
): Study<Meeting | null> {
  const excess = new Map<number, number>();
  for (const { pressure, airFlow } of demand) {
    const supply = blower.at(pressure);
    if (supply) excess.set(pressure, airFlow - supply.airFlow);
  }
  const places = [...excess.keys()].sort((a, b) => a - b);
  const above = places.findIndex(
    (pressure, i) => i > 0 && excess.get(pressure)! >= 0 && excess.get(places[i - 1]!)! < 0,
  );
  if (above < 0) return null;
  let lost = false;
  const pressure = yield* stepwiseRoot(
    function* (p): Study<number> {
      const supply = blower.at(p);
      const swallowed = yield* demandAt(p);
      if (!supply || !swallowed) lost = true;
      return supply && swallowed ? swallowed.airFlow - supply.airFlow : 0;
    },
    places[above - 1]!,
    places[above]!,
    tolerance,
    excess,
  );
  const supply = blower.at(pressure);
  return lost || !supply ? null : { pressure, airFlow: supply.airFlow };
}

/** Plenum pressure weighted by what flows into cylinders [Pa]. */
function drawnPressure({ traces, plenum }: SolvedPoint): number {
  const [weighted, drawn] = weigh(traces);
  return drawn > 0 ? weighted / drawn : plenum.meanPressure;
}

function weigh({ angle, plenum, cylinders }: Traces): [weighted: number, drawn: number] {
  let [weighted, drawn] = [0, 0];
  const inflow = (i: number) => cylinders.reduce((sum, each) => sum + Math.max(0, each.transferFlow[i]!), 0);
  for (let i = 1; i < angle.length; i++) {
    const step = (angle[i]! - angle[i - 1]!) / 2;
    const [before, now] = [inflow(i - 1), inflow(i)];
    drawn += step * (before + now);
    weighted += step * (before * plenum.pressure[i - 1]! + now * plenum.pressure[i]!);
  }
  return [weighted, drawn];
}
