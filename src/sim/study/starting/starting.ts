import type { Model } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import { MAX_SPEED } from '../../cycle/operating-point.ts';
import type { Outcome } from '../../outcome.ts';
import { failure, success } from '../../outcome.ts';
import { rpm, TURN } from '../../units.ts';
import { movingRows } from '../pulses/moving-row.ts';
import { inertiasOf } from '../pulses/pulses.ts';
import type { Study } from '../study-step.ts';
import { turnByTurn } from '../turn-by-turn.ts';
import type { Turn } from '../turn-by-turn.ts';
import { wettedVolume } from '../wetted-volume.ts';
import { coldModel } from './cold-model.ts';
import { turnTorque } from './turn-torque.ts';
import type { TurnTorque } from './turn-torque.ts';

/** One turn of the crank on the way to running. */
export interface StartTurn {
  /** Counted from 1. */
  readonly turn: number;
  readonly speed: number;
  /** What it takes to turn it, starter and engine together; negative where the engine does it alone [N m]. */
  readonly torque: TurnTorque;
  /** Time mean above ambient [Pa]. */
  readonly plenumGauge: number;
  /** Fuel in the plenum, vapour and liquid, over that of the design's mixture, at the end of the turn [-]. */
  readonly plenumFuelled: number;
  /** Net through all transfer windows [kg]. */
  readonly air: number;
  readonly fuel: number;
  /** Richest charge at its spark, air over fuel over stoichiometric [-]; null where none has fuel. */
  readonly richest: number | null;
  /** Indices of the cylinders that fired. */
  readonly fired: readonly number[];
}

export interface Starting {
  readonly turns: readonly StartTurn[];
  /** What lies between where fuel joins the air and the cylinders [m^3], and turns in which the blowers displace as much [-]. */
  readonly wettedVolume: number;
  readonly turnsToDisplace: number;
  /** First turn in which a charge is rich enough to burn, one burns, and from which on the engine turns itself; null for none. */
  readonly combustible: number | null;
  readonly firstFiring: number | null;
  readonly catches: number | null;
  /** Largest mean and peak before the first firing [N m], and what the flywheel lends then [J]. */
  readonly torqueNeeded: number;
  readonly peakTorque: number;
  readonly lent: number;
  /** Lowest speed within such a turn, a starter of even torque behind the flywheel [rad/s]; null where it would stop. */
  readonly slowest: number | null;
  /** Why the turns ended early; null where they did not. */
  readonly broke: string | null;
}

export interface StartOptions {
  /** Turns after which it gives up. */
  readonly mostTurns?: number;
  /** Walls as cold as the air; otherwise those of the running engine. */
  readonly cold?: boolean;
}

/** A hundred turns are a quarter of a minute at 400 rpm: a starter's and a battery's patience. */
const MOST_TURNS = 100;
/** Turns in a row that must turn the engine without help before it counts as caught. */
const SELF_TURNING = 3;
/** Turns shown after it has caught. */
const AFTERWARDS = 5;

/**
 * Cranking from rest, full of air, turn after turn, until the engine turns itself or patience ends.
 *
 *   speed held by the starter until the engine does more than the starter;  then   J (w_2^2 - w_1^2) / 2 = -T_needed 2 pi
 *
 * T_needed: gas, friction and blowers over the turn [N m], see `turnTorque`; J of crank, rods, rotors and load [kg m^2]. The starter
 * freewheels: the speed never falls below cranking speed. Mixture from a carburettor has to fill what it wets
 * before it reaches the cylinders; a charge burns if it is neither too lean nor too stale.
 *
 * Valid: fuel is vapour once it has passed the carburettor. A cold tract keeps a film of fuel back, for which a real start needs a choke,
 * priming or more turns. The load takes nothing but its inertia. No speed change within a turn.
 * Source: balances of mass and energy over each turn.
 */
export function* starting(
  running: Model,
  point: OperatingPoint,
  { mostTurns = MOST_TURNS, cold = true }: StartOptions = {},
): Study<Outcome<Starting>> {
  const model = cold ? coldModel(running) : running;
  const { engine, drive } = model;
  const { coldFriction } = engine.wanted;
  const inertia = inertiasOf(model, movingRows(model)).total;
  const turns: StartTurn[] = [];
  let selfTurning = 0;
  let catches: number | null = null;

  const speedAfter = (): number => {
    const { torque, speed } = turns.at(-1)!;
    const squared = speed * speed - (2 * TURN * torque.needed) / inertia;
    return Math.max(point.speed, Math.sqrt(Math.max(0, squared)));
  };
  const run = turnByTurn(model, point, { speedAfter });
  let broke: string | null = null;
  while (turns.length < mostTurns && (catches === null || turns.length < catches + AFTERWARDS)) {
    const next = run.next();
    if (next.done) {
      broke = next.value?.reason ?? null;
      break;
    }
    const turn = startTurn(next.value, engine.ambient.pressure, coldFriction);
    turns.push(turn);
    selfTurning = turn.torque.needed < 0 ? selfTurning + 1 : 0;
    if (selfTurning === SELF_TURNING) catches ??= turn.turn - SELF_TURNING + 1;
    if (speedAfter() > MAX_SPEED) {
      broke = `the engine runs away past ${Math.round(MAX_SPEED / rpm)} rpm within a turn: its inertia is too small for its work`;
      break;
    }
    yield { doing: `turn ${turn.turn}` };
  }
  if (turns.length === 0) return failure([{ path: '', message: broke ?? 'no turn could be stepped' }]);

  const firing = turns.find(({ fired }) => fired.length > 0);
  const before = turns.filter(({ turn }) => turn < (firing?.turn ?? Infinity));
  const unlit = before.length > 0 ? null : unlitTorque(model, point);
  const turned = unlit
    ? [unlit]
    : (before.length > 0 ? before : turns.slice(0, 1)).map(({ torque }) => torque);
  const most = (of: (turn: TurnTorque) => number) => Math.max(...turned.map(of));
  const lent = most((torque) => torque.lent);
  const slowest = point.speed ** 2 - (2 * lent) / inertia;
  const wetted = wettedVolume(model);
  return success({
    turns,
    wettedVolume: wetted,
    turnsToDisplace: wetted / (engine.blower.count * engine.blower.displacement * drive.ratio),
    combustible:
      turns.find(({ richest }) => richest !== null && richest <= engine.combustion.leanLimit)?.turn ?? null,
    firstFiring: firing?.turn ?? null,
    catches,
    torqueNeeded: most((torque) => torque.needed),
    peakTorque: most((torque) => torque.peak),
    lent,
    slowest: slowest > 0 ? Math.sqrt(slowest) : null,
    broke,
  });
}

/** Of the first turn with the ignition off, for engines that fire at once. */
function unlitTorque(model: Model, point: OperatingPoint): TurnTorque | null {
  const { engine } = model;
  const unlit = { ...model, engine: { ...engine, combustion: { ...engine.combustion, enabled: false } } };
  const first = turnByTurn(unlit, point).next();
  return first.done ? null : turnTorque(first.value.figures, engine.wanted.coldFriction);
}

function startTurn(
  { turn, figures, charges, fuelled }: Turn,
  ambientPressure: number,
  coldFriction: number,
): StartTurn {
  const lambdas = charges.flatMap(({ lambda }) => (lambda === null ? [] : [lambda]));
  const sum = (of: (charge: (typeof charges)[number]) => number) =>
    charges.reduce((total, charge) => total + of(charge), 0);
  return {
    turn,
    speed: figures.speed,
    torque: turnTorque(figures, coldFriction),
    plenumGauge: figures.plenum.meanPressure - ambientPressure,
    plenumFuelled: fuelled.plenum,
    air: sum(({ air }) => air),
    fuel: sum(({ fuel }) => fuel),
    richest: lambdas.length > 0 ? Math.min(...lambdas) : null,
    fired: charges.flatMap(({ fired }, j) => (fired ? [j] : [])),
  };
}
