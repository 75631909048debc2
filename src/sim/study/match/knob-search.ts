import { buildModel } from '../../cycle/model.ts';
import type { Model } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import { solve } from '../../cycle/solve.ts';
import type { SolvedStart } from '../../cycle/solve.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { stepwiseRoot } from '../stepwise-root.ts';
import { doing } from '../study-step.ts';
import type { Study } from '../study-step.ts';
import { fixFigures, limitsPassed } from './fix.ts';
import type { Fix } from './fix.ts';
import { gearChoices } from './gear-choice.ts';
import type { Knob } from './knobs.ts';
import { figureOf } from './target.ts';
import type { Target } from './target.ts';

/** Shares of the way to an end of the range at which it is looked for a change of sign. */
const LOOKS = [0.06, 0.2, 0.5, 1];
/** Accuracy of the search, over the range [-], and over what the answer is rounded to [-]. */
const TOLERANCE = 5e-5;
const OF_GRAIN = 0.2;
/** How nearly a point must repeat while the root is only looked for; what is answered is solved fully. */
const LOOKING = 1e-5;
/** Steps of the grain by which a rounded value may be moved on until it does. */
const MOST_NUDGES = 4;
const MOST_GEARS = 6;

interface Tried {
  readonly value: number;
  readonly excess: number;
  readonly point: SolvedPoint;
}

/** The search along one knob for where its figure meets the target; see `match`. */
export class KnobSearch {
  private readonly tried: Tried[];
  private readonly starts: { value: number; next: SolvedStart }[] = [];
  /** What a refused or unsolved value said, and which value that was. */
  private trouble: { readonly value: number; readonly message: string } | null = null;
  private readonly origin: number;
  private readonly grain: number | null;
  /** Whether the figure must rise. */
  private readonly rise: boolean;

  constructor(
    private readonly model: Model,
    private readonly at: OperatingPoint,
    private readonly target: Target,
    private readonly knob: Knob,
    base: SolvedPoint,
    next: SolvedStart | null,
  ) {
    this.origin = knob.now(model);
    this.grain = knob.grain(model);
    const excess = figureOf(target.figure, base) - target.value;
    this.rise = excess < 0;
    this.tried = [{ value: this.origin, excess, point: base }];
    if (next) this.starts.push({ value: this.origin, next });
  }

  *run(): Study<Fix> {
    const { knob, tried } = this;
    if (tried[0]!.excess === 0) return this.fix(tried[0]!, true, null);
    const bracket = yield* this.bracket();
    if (!bracket) return this.fix(this.nearest(), false, this.outOfReach());
    if (this.grain === null) return this.fix(bracket[1], true, null);
    const [from, to] = bracket;
    const [low, high] = knob.range(this.model);
    const known = new Map([from, to].map(({ value, excess }) => [value, excess]));
    let lost = false;
    const trial = (value: number) => this.trial(value, LOOKING);
    const root = yield* stepwiseRoot(
      function* (value): Study<number> {
        const found = yield* trial(value);
        lost ||= found === null;
        return found?.excess ?? 0;
      },
      from.value,
      to.value,
      Math.max(TOLERANCE * (high - low), OF_GRAIN * this.grain),
      known,
    );
    if (lost) return this.fix(this.nearest(), false, this.outOfReach());
    return knob.name === 'blower.driveRatio' ? yield* this.geared(root) : yield* this.rounded(root);
  }

  /** Two values between which the target lies, the one that reaches it second; null where there are none. */
  private *bracket(): Study<readonly [Tried, Tried] | null> {
    const [low, high] = this.knob.range(this.model);
    const upFirst = this.knob.helpsUpwards === this.rise;
    const ends = upFirst ? [high, low] : [low, high];
    for (const end of this.knob.eitherWay ? ends : ends.slice(0, 1)) {
      let last = this.tried[0]!;
      for (const value of this.looks(end)) {
        const found = yield* this.trial(value, this.grain === null ? undefined : LOOKING);
        if (!found) break;
        if (found.excess < 0 !== this.rise) return [last, found];
        last = found;
      }
    }
    return null;
  }

  /** Where it is looked on the way to an end. */
  private looks(end: number): readonly number[] {
    const { origin } = this;
    if (this.grain === null) {
      const step = Math.sign(end - origin);
      return Array.from({ length: Math.abs(end - origin) }, (_, i) => origin + step * (i + 1));
    }
    // The end itself, not what rounding makes of it: it is told from the places before.
    return LOOKS.map((share) => (share === 1 ? end : origin + share * (end - origin))).filter(
      (value) => value !== origin,
    );
  }

  /** @param change - see SolveOptions */
  private *trial(value: number, change?: number): Study<Tried | null> {
    const built = this.knob.at(this.model, value);
    if (!built.ok) {
      this.trouble = { value, message: built.faults[0]!.message };
      return null;
    }
    const found = yield* this.solved(built.value, value, change);
    if (found) this.tried.push(found);
    return found;
  }

  private *solved(model: Model, value: number, change?: number): Study<Tried | null> {
    const near = this.starts.reduce<{ value: number; next: SolvedStart } | null>(
      (best, each) => (best && Math.abs(best.value - value) <= Math.abs(each.value - value) ? best : each),
      null,
    );
    const { result, next } = yield* doing(
      this.knob.name,
      solve(model, this.at, { start: near?.next ?? null, ...(change !== undefined && { change }) }),
    );
    if (!result.converged) {
      this.trouble = { value, message: result.reason };
      return null;
    }
    if (next) this.starts.push({ value, next });
    return { value, excess: figureOf(this.target.figure, result) - this.target.value, point: result };
  }

  private reaches = ({ excess }: Tried): boolean => (this.rise ? excess >= 0 : excess <= 0);

  /** The root rounded to the knob's grain, moved on until it does what it should. */
  private *rounded(root: number): Study<Fix> {
    const grain = this.grain!;
    const away = Math.sign(root - this.origin) || 1;
    const steps = (away > 0 ? Math.ceil : Math.floor)(root / grain - 1e-9 * away);
    for (let nudge = 0; nudge <= MOST_NUDGES; nudge++) {
      const found = yield* this.trial((steps + away * nudge) * grain);
      if (found && this.reaches(found)) return this.fix(found, true, null);
    }
    return this.fix(this.nearest(), false, this.outOfReach());
  }

  /** The nearest whole teeth that do what the ratio should. */
  private *geared(root: number): Study<Fix> {
    const { engine } = this.model;
    const choices = gearChoices(engine.blower.gears, root, root > this.origin);
    for (const choice of choices.slice(0, MOST_GEARS)) {
      const built = buildModel({ ...engine, blower: { ...engine.blower, gears: choice.gears } });
      if (!built.ok) continue;
      const found = yield* this.solved(built.value, choice.ratio);
      if (found && this.reaches(found))
        return { ...this.fix(found, true, null), gears: choice.gears, sameCentres: choice.sameCentres };
    }
    return this.fix(this.nearest(), false, 'no whole teeth make a ratio that does it');
  }

  /** What came nearest to the target. */
  private nearest(): Tried {
    return this.tried.reduce((best, each) => (Math.abs(each.excess) < Math.abs(best.excess) ? each : best));
  }

  /** What stops it: the end of the range, a value beyond that cannot be, or that more of it brings less. */
  private outOfReach(): string {
    const { value } = this.nearest();
    const [low, high] = this.knob.range(this.model);
    const up = value > this.origin;
    const further = this.tried.some((each) => (up ? each.value > value : each.value < value));
    if (further && value !== this.origin) return 'further on it turns back';
    if (value === low || value === high) return this.knob.stop;
    const { trouble } = this;
    const blocked =
      trouble && (value === this.origin || (up ? trouble.value > value : trouble.value < value));
    return blocked ? trouble.message : 'either way it leads away from it';
  }

  private fix(found: Tried, reached: boolean, reason: string | null): Fix {
    return {
      vary: this.knob.name,
      reached,
      from: this.origin,
      to: found.value,
      figures: fixFigures(this.target, found.point),
      gears: null,
      sameCentres: true,
      reason,
      beyond: limitsPassed(this.model.engine.blower, found.point),
    };
  }
}
