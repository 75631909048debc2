import { helixAttenuation } from '../../blower/roots-ripple.ts';
import type { Model } from '../../cycle/model.ts';
import type { Engine } from '../../engine.ts';
import { withinTurn } from '../../geometry/angles.ts';
import { deg, TURN } from '../../units.ts';
import { arrangementOf } from './arrangement.ts';
import type { Arrangement } from './arrangement.ts';

/** What a candidate alters; one thing at a time, the rest as built. */
export type Altered = 'nothing' | 'rows' | 'collectors' | 'phase';

/** A way to put the engine together that is worth a look. */
export interface Candidate {
  /** Tells the way, and stays the same from run to run. */
  readonly key: string;
  readonly altered: Altered;
  /** Of collectors: who shares one. */
  readonly grouping: Grouping | null;
  readonly arrangement: Arrangement;
}
export type Grouping =
  'all together' | 'neighbours together' | 'every other together' | 'by row' | 'as typed';

/** Why other rotor phases are not looked at. */
export type PhaseSilence = 'no ripple' | 'averaged' | null;

/** Ripple below which its phase means nothing, share of the mean delivery [-]. */
const LEAST_RIPPLE = 1e-3;
/** Angles closer than this are one [rad]. */
const SAME = 1e-6;

export function phaseSilence({ engine: { blower }, drive }: Model): PhaseSilence {
  if (Math.abs(blower.rippleDepth * helixAttenuation(blower.lobes, blower.helixAngle)) < LEAST_RIPPLE)
    return 'no ripple';
  return drive.phaseAveraged ? 'averaged' : null;
}

/**
 * Every sensible way to put an engine together, the one as built first: throws and staggers of the rows, who shares a collector, where
 * the rotors stand. Ways that come to the same are there once.
 *
 * @param typed - a grouping of the builder's own: collector of every cylinder row by row, from 0
 */
export function candidates(model: Model, typed: readonly number[] | null = null): readonly Candidate[] {
  const { engine } = model;
  const built = arrangementOf(engine);
  const all: Candidate[] = [
    { key: 'as built', altered: 'nothing', grouping: null, arrangement: built },
    ...rowPlans(engine).map((rows): Candidate => {
      const arrangement = { ...built, rows };
      return { key: rowsKey(rows), altered: 'rows', grouping: null, arrangement };
    }),
    ...groupings(engine, typed).map(({ grouping, seats, collectors }): Candidate => ({
      key: `${collectors} collectors, ${grouping}`,
      altered: 'collectors',
      grouping,
      arrangement: { ...built, seats, collectors },
    })),
    ...(phaseSilence(model) === null ? phases(engine) : []).map(({ phase, phaseStep }): Candidate => {
      const arrangement = { ...built, phase, phaseStep };
      return {
        key: `phase ${degrees(phase)}, step ${degrees(phaseStep)}`,
        altered: 'phase',
        grouping: null,
        arrangement,
      };
    }),
  ];
  const seen = new Set<string>();
  return all.filter(({ arrangement }) => {
    const same = sameness(arrangement);
    if (seen.has(same)) return false;
    seen.add(same);
    return true;
  });
}

const degrees = (angle: number): string => (angle / deg).toFixed(2);
const rowsKey = (rows: Arrangement['rows']): string =>
  rows.map(({ throwAngle, staggerAngle }) => `${degrees(throwAngle)}/${degrees(staggerAngle)}`).join(' ');

/** Angles within a turn, collectors by who shares one: equal for ways that come to the same. */
function sameness({ rows, seats, collectors, phase, phaseStep }: Arrangement): string {
  const turn = (angle: number) => Math.round(withinTurn(angle + SAME / 2) / SAME) % Math.round(TURN / SAME);
  const first = seats.map((seat) => seats.indexOf(seat));
  return JSON.stringify([
    rows.map(({ throwAngle, staggerAngle }) => [turn(throwAngle), turn(staggerAngle)]),
    first,
    collectors,
    turn(phase),
    turn(phaseStep),
  ]);
}

/**
 * Throws and staggers of rows of n cylinders, row r of R, from 0: barrels behind each other, half way, or in each other's gaps; pins
 * in one line, or evenly round, or where the firing comes out even nearest to either.
 *
 *   stagger_r = r s,  s in 0, 1/2, 1 times 360°/(n R);      throw_r = 0, 360° r/R, or  stagger_r - r 360°/(n R) + m 360°/n
 *
 * The last makes row r fire r 360°/(n R) after row A, plain rods taken. Of two equally near, the greater.
 */
function rowPlans({ train: { rows } }: Engine): readonly Arrangement['rows'][] {
  const count = rows.length;
  if (count === 1) return [];
  const gap = TURN / rows[0]!.cylinders.length;
  const plans: Arrangement['rows'][] = [];
  for (const share of [0, 0.5, 1]) {
    const stagger = (r: number) => (r * share * gap) / count;
    const even = (r: number, near: number) => {
      const offset = stagger(r) - (r * gap) / count;
      return offset + Math.floor((near - offset) / gap + 0.5 + SAME) * gap;
    };
    const throws: ((r: number) => number)[] = [
      () => 0,
      (r) => (r * TURN) / count,
      (r) => even(r, (r * TURN) / count),
      (r) => even(r, 0),
    ];
    for (const throwOf of throws)
      plans.push(rows.map((_, r) => ({ throwAngle: r === 0 ? 0 : throwOf(r), staggerAngle: stagger(r) })));
  }
  return plans;
}

interface GroupPlan {
  readonly grouping: Grouping;
  readonly seats: readonly number[];
  readonly collectors: number;
}

/** Cylinders in the order in which they stand round the engine, shared over 1, 2, as many collectors as rows, or as there are. */
function groupings(engine: Engine, typed: readonly number[] | null): readonly GroupPlan[] {
  const { rows } = engine.train;
  const standing = rows.flatMap((row, r) =>
    row.cylinders.map((cylinder) => ({ row: r, place: withinTurn(cylinder.axisAngle + row.staggerAngle) })),
  );
  const order = [...standing.keys()].sort(
    (a, b) => standing[a]!.place - standing[b]!.place || standing[a]!.row - standing[b]!.row,
  );
  const rank = standing.map((_, i) => order.indexOf(i));
  const total = standing.length;
  const counts = [...new Set([2, rows.length, engine.collectors.length])].filter((n) => n > 1 && n <= total);
  const plans: GroupPlan[] = [];
  // What the builder calls it first, then by row: interleaved rows are also every other barrel.
  if (typed) plans.push({ grouping: 'as typed', seats: typed, collectors: Math.max(...typed) + 1 });
  plans.push({ grouping: 'all together', seats: standing.map(() => 0), collectors: 1 });
  if (rows.length > 1)
    plans.push({ grouping: 'by row', seats: standing.map(({ row }) => row), collectors: rows.length });
  for (const collectors of counts.sort((a, b) => a - b)) {
    const neighbours = rank.map((place) => Math.floor((place * collectors) / total));
    plans.push({ grouping: 'neighbours together', seats: neighbours, collectors });
    plans.push({
      grouping: 'every other together',
      seats: rank.map((place) => place % collectors),
      collectors,
    });
  }
  return plans;
}

/** Quarters of a delivery pulse for all blowers at once, and blowers spread evenly over one. */
function phases({ blower: { lobes, count } }: Engine): readonly { phase: number; phaseStep: number }[] {
  const pulse = TURN / (2 * lobes);
  const together = [0, 1, 2, 3].map((quarter) => ({ phase: (quarter * pulse) / 4, phaseStep: 0 }));
  return count > 1 ? [...together, { phase: 0, phaseStep: pulse / count }] : together;
}
