import type { Model } from '../../cycle/model.ts';
import { solve } from '../../cycle/solve.ts';
import type { Solution, SolvedStart } from '../../cycle/solve.ts';
import type { PointResult } from '../../results/point-result.ts';
import { judgeBlower } from '../../results/verdict.ts';
import { rpm } from '../../units.ts';
import { doing } from '../study-step.ts';
import type { Study } from '../study-step.ts';
import { airFigures } from './air-figures.ts';
import type { AirFigures } from './air-figures.ts';
import type { AirLimit } from './air-limit.ts';
import { airSentence } from './air-sentence.ts';
import { limitAt } from './find-limit.ts';
import { oneMoreTooth } from './one-more-tooth.ts';
import type { StepGain } from './one-more-tooth.ts';

/** A line of the table: figures and what one more step of ratio would bring, or why there are none. */
export interface AirLine {
  readonly point: PointResult;
  readonly figures: AirFigures | null;
  readonly gain: StepGain | null;
}

export interface AirStudy {
  readonly sentence: string;
  readonly lines: readonly AirLine[];
  /** Where least is delivered: what limits it, and the plenum pressure at which the cylinders would take what is wanted [Pa]. */
  readonly least: {
    readonly speed: number;
    readonly limit: AirLimit;
    readonly swallows: number | null;
  } | null;
}

/** Whether the blower is big enough at these speeds, and what limits it where it delivers least. Speeds in rising order [rad/s]. */
export function* airStudy(model: Model, speeds: readonly number[], throttle: number): Study<AirStudy> {
  const lines: AirLine[] = [];
  const ends = new Map<number, SolvedStart | null>();
  // From the fastest down: slow points are the stiff ones, and a neighbour's start helps them most.
  let near: SolvedStart | null = null;
  for (const speed of [...speeds].sort((a, b) => b - a)) {
    const point = { speed, throttle };
    const at = `${Math.round(speed / rpm)} rpm`;
    const { result, next }: Solution = yield* doing(at, solve(model, point, { start: near }));
    near = next;
    ends.set(speed, next);
    const gain = result.converged ? yield* oneMoreTooth(model, point, next) : null;
    lines.unshift({ point: result, figures: result.converged ? airFigures(model, result) : null, gain });
  }
  const points = lines.map((line) => line.point);
  const { wanted } = model.engine;
  const verdict = judgeBlower(points, wanted);
  const worst = lines.find(({ point }) => point.speed === verdict.speed);
  if (!worst?.point.converged) return { sentence: verdict.text, lines, least: null };
  const point = { speed: worst.point.speed, throttle };
  const { limit, swallows } = yield* limitAt(model, point, worst.point, ends.get(point.speed)!);
  return {
    sentence: airSentence(
      points,
      wanted,
      worst.figures,
      limit,
      swallows,
      model.engine.blower.impeller !== null,
    ),
    lines,
    least: { speed: point.speed, limit, swallows },
  };
}
