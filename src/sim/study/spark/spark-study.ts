import type { Model } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import type { SolvedStart } from '../../cycle/solve.ts';
import type { Engine } from '../../engine.ts';
import { highestPoint } from '../../numerics/highest-point.ts';
import type { Outcome } from '../../outcome.ts';
import { failure, success } from '../../outcome.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { deg } from '../../units.ts';
import { isArticulated } from '../even/switched-off.ts';
import type { Study } from '../study-step.ts';
import type { SolvedWith } from '../walls/solved-with.ts';
import { solvedWith } from '../walls/solved-with.ts';
import { evenCamError } from './even-cam-error.ts';
import { firstCrossing } from './first-crossing.ts';

/** A point with all sparks moved together. */
export interface SparkPoint {
  /** Common advance of the cylinders without one of their own [rad]. */
  readonly advance: number;
  readonly torque: number;
  readonly imep: number;
  /** Livengood-Wu integral of each cylinder [-]; null where nothing burns. */
  readonly integrals: readonly (number | null)[];
  readonly peakPressures: readonly number[];
}

/** The point as sparks are counted from own dead centres, or by an even cam. */
export interface SparkWay {
  readonly imep: number;
  readonly torque: number;
  /** Least and greatest peak pressure [Pa]; octane numbers left in the worst cylinder [-]. */
  readonly peaks: readonly [number, number];
  readonly knockMargin: number | null;
}

export interface SparkStudy {
  /** By how much an even cam fires each cylinder early (+) or late (-) of its own dead centre [rad]. */
  readonly early: readonly number[];
  /** Both solved; null where all rods are plain, so that both are one. */
  readonly ways: Readonly<Record<Engine['train']['sparkFrom'], SparkWay>> | null;
  readonly points: readonly SparkPoint[];
  /** Advance of most torque [rad], and that torque [N m]; null where it lies outside what was looked at. */
  readonly best: { readonly advance: number; readonly torque: number } | null;
  /** Most advance with every knock integral below the limit [rad], engine and cylinder by cylinder; Infinity where none knocks. */
  readonly knockLimited: number;
  readonly knockLimitedOf: readonly number[];
  /** The design's own common advance [rad], and what its integral may reach [-]. */
  readonly now: number;
  readonly limit: number;
}

/** Advances looked at [rad], and what the knock integral may reach: engines differ by more than its tenth. */
const ADVANCES = [4, 10, 16, 22, 28, 34, 40, 46].map((each) => each * deg);
export const USUAL_LIMIT = 0.9;

/**
 * What the spark does at one point: an even cam against true dead centres, the advance of most torque, and the most that the fuel's
 * octane number allows.
 *
 *   early_j = top dead centre_j - crank pin's pass by axis j      error of an even cam, 0 with plain rods
 *   best: vertex of the parabola through the three highest of solved torques;  limit: integral_j(advance) = what is allowed, between solved points
 *
 * @param limit - what the knock integral may reach, 1 where end gas lights [-]
 *
 * All advances move together, those of single cylinders keeping their distance from the common one. A cylinder's own limit takes the
 * others' sparks to move along; they hardly feel each other by it.
 *
 * Valid: as combustion/knock.ts; the integral falls again far before the best spark, so only the first crossing counts. Burning after an
 * early spark is that of the charge at that instant: see combustion/burn-timing.ts.
 */
export function* sparkStudy(
  model: Model,
  point: OperatingPoint,
  limit: number = USUAL_LIMIT,
): Study<Outcome<SparkStudy>> {
  const { engine, geometry } = model;
  if (!engine.combustion.enabled)
    return failure([
      { path: 'combustion.enabled', message: 'burning is switched off: there is no spark to find' },
    ]);
  const now = commonAdvance(engine);
  let start: SolvedStart | null = null;
  const points: SparkPoint[] = [];
  for (const advance of ADVANCES) {
    const found: Outcome<SolvedWith> = yield* solvedWith(
      `spark ${Math.round(advance / deg)}° before top dead centre`,
      advanced(engine, advance - now),
      point,
      start,
    );
    if (!found.ok) continue;
    start = found.value.next ?? start;
    points.push(sparkPoint(advance, found.value.point));
  }
  if (points.length < 3)
    return failure([
      { path: '', message: 'hardly any advance has a periodic state: the engine misfires here' },
    ]);

  let ways: SparkStudy['ways'] = null;
  if (isArticulated(engine)) {
    const both: Partial<Record<Engine['train']['sparkFrom'], SparkWay>> = {};
    for (const sparkFrom of ['own dead centre', 'even spacing'] as const) {
      const changed = { ...engine, train: { ...engine.train, sparkFrom } };
      const found = yield* solvedWith(`sparks from ${sparkFrom}`, changed, point, start);
      if (!found.ok) return found;
      both[sparkFrom] = way(found.value.point);
    }
    ways = both as NonNullable<SparkStudy['ways']>;
  }

  const advances = points.map(({ advance }) => advance);
  const knockLimitedOf = geometry.cylinders.map((_, j) =>
    firstCrossing(
      advances,
      points.map(({ integrals }) => integrals[j] ?? 0),
      limit,
    ),
  );
  const torques = points.map(({ torque }) => torque);
  const highest = highestPoint(advances, torques);
  const inside = highest.x > advances[0]! && highest.x < advances.at(-1)!;
  return success({
    early: geometry.cylinders.map(evenCamError),
    ways,
    points,
    best: inside ? { advance: highest.x, torque: highest.y } : null,
    knockLimited: Math.min(...knockLimitedOf),
    knockLimitedOf,
    now,
    limit,
  });
}

/** Advance of row A's master, from which the common one is moved [rad]. */
function commonAdvance({ train }: Engine): number {
  const [first] = train.rows;
  return first!.cylinders[first!.master]!.sparkAdvance;
}

/** All sparks moved by an angle [rad]. */
export const advanced = (engine: Engine, by: number): Engine => ({
  ...engine,
  train: {
    ...engine.train,
    rows: engine.train.rows.map((row) => ({
      ...row,
      cylinders: row.cylinders.map((each) => ({ ...each, sparkAdvance: each.sparkAdvance + by })),
    })),
  },
});

const sparkPoint = (advance: number, { engine, cylinders }: SolvedPoint): SparkPoint => ({
  advance,
  torque: engine.torque,
  imep: engine.imep,
  integrals: cylinders.map(({ knock }) => knock && knock.integral),
  peakPressures: cylinders.map(({ peakPressure }) => peakPressure),
});

function way({ engine, cylinders }: SolvedPoint): SparkWay {
  const peaks = cylinders.map(({ peakPressure }) => peakPressure);
  return {
    imep: engine.imep,
    torque: engine.torque,
    peaks: [Math.min(...peaks), Math.max(...peaks)],
    knockMargin: engine.knockMargin,
  };
}
