import { withLambda } from '../../cycle/mixture-at.ts';
import type { Model } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import { solve } from '../../cycle/solve.ts';
import type { Outcome } from '../../outcome.ts';
import { failure, success } from '../../outcome.ts';
import { doing } from '../study-step.ts';
import type { Study } from '../study-step.ts';
import { turnByTurn } from '../turn-by-turn.ts';

/** What a throttle that is shut within an instant does to the gas behind it. */
export interface Snap {
  readonly speed: number;
  /** Turn by turn from the one after: lowest pressure behind the throttle, and lowest and mean in the plenum [Pa]. */
  readonly turns: readonly {
    readonly box: number;
    readonly plenum: number;
    readonly plenumMean: number;
  }[];
  /** Ambient less the lowest pressure behind the throttle, and in the plenum [Pa]. */
  readonly boxDepression: number;
  readonly plenumDepression: number;
  /** Turns after which pressure behind the throttle falls by less than a hundredth of its depression; null if later than looked. */
  readonly settledAfter: number | null;
  /** Why the turns ended early; null where they did not. */
  readonly broke: string | null;
}

/** Turns that are looked at: a tract of the usual size is drawn empty within ten. */
const TURNS = 24;
/** Fall from one turn to the next, over the depression so far, that counts as settled [-]. */
const SETTLED = 0.01;

/**
 * The throttle shut within an instant from a running point, turn after turn, while the crank's inertia holds the speed.
 *
 * Valid: speed held, so the depression is the deepest of that speed; the engine slows within some tens of turns and it eases.
 * No fuel film: liquid on the walls flashes off as pressure falls, and the mixture goes rich for these turns.
 */
export function* snappedThrottle(model: Model, point: OperatingPoint): Study<Outcome<Snap>> {
  const { result, next } = yield* doing('before the throttle shuts', solve(model, point));
  if (!result.converged || !next)
    return failure([{ path: '', message: result.converged ? 'nothing to go on from' : result.reason }]);
  const { pressure } = model.engine.ambient;
  const run = turnByTurn(
    withLambda(model, result.engine.lambda),
    { speed: point.speed, throttle: 0 },
    { start: next },
  );
  const turns: { box: number; plenum: number; plenumMean: number }[] = [];
  let broke: string | null = null;
  while (turns.length < TURNS) {
    const turn = run.next();
    if (turn.done) {
      broke = turn.value?.reason ?? null;
      break;
    }
    const { inletBox, plenum } = turn.value.figures;
    turns.push({ box: inletBox.minPressure, plenum: plenum.minPressure, plenumMean: plenum.meanPressure });
    yield { doing: `turn ${turns.length} after the throttle shut` };
  }
  if (turns.length === 0) return failure([{ path: '', message: broke ?? 'no turn could be stepped' }]);
  const settled = turns.findIndex(({ box }, i) => {
    const before = turns[i - 1];
    return before !== undefined && Math.abs(before.box - box) < SETTLED * Math.abs(pressure - box);
  });
  return success({
    speed: point.speed,
    turns,
    boxDepression: pressure - Math.min(...turns.map(({ box }) => box)),
    plenumDepression: pressure - Math.min(...turns.map(({ plenum }) => plenum)),
    settledAfter: settled < 0 ? null : settled,
    broke,
  });
}
