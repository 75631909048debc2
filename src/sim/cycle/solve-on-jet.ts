import { unsolved } from '../results/summarise.ts';
import { heldLambda, JET_LAMBDAS, lambdaOfJet } from './jet-mixture.ts';
import { withLambda } from './mixture-at.ts';
import type { Model } from './model.ts';
import type { OperatingPoint } from './operating-point.ts';
import type { Progress, Solution, SolveOptions } from './solve.ts';

/** Difference between the λ that a point ran at and the one that its air draws from the jet, relative, below which it is the answer [-]. */
const SETTLED = 5e-5;
/** Change over a period that is enough for the first pass [-]. */
const ROUGH_CHANGE = 1e-4;
const MOST_PASSES = 20;

/**
 * Periodic state of a design with a jet: the mixture is the one that its own air flow draws.
 *
 *   lambda = jet(air flow of the periodic state at lambda)
 *
 * Each pass is the point solved at one λ from the start that was asked for, so that the last one is that point with its λ stated: going
 * on from the pass before would save nothing, for its mesh is made for another burn. Air answers little to λ, so substitution gains a digit or
 * two a pass; the secant of the last two passes takes it from there. Both are kept within a bracket, which always holds a root since λ
 * is held within JET_LAMBDAS, so it cannot run away where the nozzle just begins to flow and λ falls steeply.
 *
 * @param solveGiven - solves the point on a model of given mixture
 */
export function* solveOnJet(
  model: Model,
  point: OperatingPoint,
  options: SolveOptions,
  solveGiven: (model: Model, options: SolveOptions) => Generator<Progress, Solution>,
): Generator<Progress, Solution> {
  let lambda = heldLambda(options.start?.lambda ?? model.engine.charge.lambda);
  let passed = 0;
  const root = new BracketedSecant(...JET_LAMBDAS);
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    const given = withLambda(model, lambda);
    const how: SolveOptions = {
      ...options,
      ...(pass === 0 ? { change: Math.max(ROUGH_CHANGE, options.change ?? 0) } : { preview: false }),
    };
    const { result, next } = yield* after(passed, solveGiven(given, how));
    passed += result.cycles;
    if (!result.converged) return { result: { ...result, cycles: passed }, next: null };
    const drawn = heldLambda(lambdaOfJet(given, result.engine.airFlow));
    if (pass > 0 && Math.abs(drawn / lambda - 1) < SETTLED)
      return { result: { ...result, cycles: passed }, next };
    // The first pass is too rough to be an end of the bracket.
    lambda = pass === 0 ? drawn : root.next(lambda, drawn);
  }
  const reason = `λ did not settle in ${MOST_PASSES} passes between what the jet gives and what the engine draws, near ${lambda.toFixed(3)}`;
  return { result: unsolved(model, point, passed, NaN, reason), next: null };
}

/** The same run, its periods counted on from those before. */
function* after(passed: number, run: Generator<Progress, Solution>): Generator<Progress, Solution> {
  for (;;) {
    const step = run.next();
    if (step.done) return step.value;
    yield { ...step.value, cycle: passed + step.value.cycle };
  }
}

/** Looks for x = g(x) between two ends with g(low) >= low, g(high) <= high: secants, cut in half where they leave the bracket. */
class BracketedSecant {
  private last: { readonly x: number; readonly miss: number } | null = null;

  constructor(
    private low: number,
    private high: number,
  ) {}

  next(x: number, g: number): number {
    const { last } = this;
    const miss = g - x;
    if (miss > 0) this.low = x;
    else this.high = x;
    this.last = { x, miss };
    const guess = last && miss !== last.miss ? x - (miss * (x - last.x)) / (miss - last.miss) : g;
    const inside = guess >= this.low && guess <= this.high && guess !== x;
    return inside ? guess : 0.5 * (this.low + this.high);
  }
}
