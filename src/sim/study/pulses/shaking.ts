import type { Point } from '../../geometry/rod-points.ts';
import { ORIGIN, minus, plus, polar, times, turnedBy } from '../../geometry/vectors.ts';
import { TURN } from '../../units.ts';
import type { MovingRow } from './moving-row.ts';
import { rodsAt } from './moving-row.ts';

/** Highest order that is told. */
export const SHAKING_ORDERS = 6;
/** Angles at which a turn is looked at: orders from 66 on fold back, and rods have none of those. */
const SAMPLES = 72;

/** What a vector does at one engine order: an ellipse, the sum of one that turns with the crank and one against it. */
export interface Orbit {
  readonly order: number;
  /** Of the vector that turns with the rotation, and against it. */
  readonly forward: number;
  readonly backward: number;
  /** Half the ellipse's long axis: their sum. */
  readonly greatest: number;
}

export interface Counterweight {
  /** Mass times radius that would balance all that turns with the throw once a turn [kg m]. */
  readonly whole: number;
  /** What is fitted: that times the balanced share. */
  readonly fitted: number;
  /** Where it belongs, from opposite the crank pin, positive with the rotation [rad]. */
  readonly angle: number;
  /** Of `whole`, what turns: throw and lower masses on their pins; the rest stands for pistons that go to and fro. */
  readonly rotating: number;
}

export interface Shaking {
  readonly counterweights: readonly Counterweight[];
  /** On the case, of each row by itself, orders 1 to 6 [N]: without and with its counterweight. */
  readonly rows: readonly { readonly bare: readonly Orbit[]; readonly balanced: readonly Orbit[] }[];
  /** Of the whole engine: force [N], and moment about the middle of the rows [N m]. */
  readonly force: { readonly bare: readonly Orbit[]; readonly balanced: readonly Orbit[] };
  readonly moment: { readonly bare: readonly Orbit[]; readonly balanced: readonly Orbit[] };
}

/**
 * Force and moment with which the moving masses shake the case, by engine order.
 *
 *   F(theta) = -omega^2 (sum m q'' - m_t P) = sum over n of F_n exp(i n theta),   M = sum over rows of z F
 *
 * as complex numbers in the engine's frame, m_t P the throw. F_1 turns with the crank, so a counterweight of moment |F_1|/omega^2
 * takes all of it away; F_-1 and the higher orders stay. Gas forces cancel within the engine.
 *
 * A row of N >= 3 equal plain rods has F_-1 = 0 and |F_1| = (m_rot + N/2 m_osc) r omega^2.
 *
 * Valid: constant speed, rigid parts. Source: Taylor, The Internal Combustion Engine in Theory and Practice, vol. 2, 1985, ch. 8.
 */
export function shaking(rows: readonly MovingRow[], speed: number, balancedShare: number): Shaking {
  const square = speed * speed;
  const bare = rows.map((row) => series((theta) => times(square, rowShaking(row, theta))));
  const counterweights = rows.map((row, i): Counterweight => {
    const whole = Math.hypot(bare[i]!.forward[0]!.x, bare[i]!.forward[0]!.y) / square;
    const first = bare[i]!.forward[0]!;
    const fromPin = Math.atan2(first.y, first.x) - row.pinOffset - row.stagger;
    return {
      whole,
      fitted: balancedShare * whole,
      angle: fromPin - TURN * Math.round(fromPin / TURN),
      rotating: rotating(row),
    };
  });
  const balanced = bare.map(({ forward, backward }) => ({
    backward,
    forward: forward.map((each, i) => (i === 0 ? times(1 - balancedShare, each) : each)),
  }));
  const both = (of: (series: readonly Series[]) => Series) => ({
    bare: orbits(of(bare)),
    balanced: orbits(of(balanced)),
  });
  return {
    counterweights,
    rows: rows.map((_, i) => both((all) => all[i]!)),
    force: both((all) => combined(all, () => 1)),
    moment: both((all) => combined(all, (i) => rows[i]!.along)),
  };
}

/** Of a row on the case over omega^2, in the engine's frame [kg m]. */
function rowShaking(row: MovingRow, theta: number): Point {
  const at = rodsAt(row, theta);
  const sum = row.rods.reduce(
    (sum, { upperMass, lowerMass }, j) =>
      plus(sum, plus(times(upperMass, at[j]!.gudgeonPin.bend), times(lowerMass, at[j]!.lowerPin.bend))),
    times(row.throwMass, at[0]!.crankPin.bend),
  );
  return turnedBy(minus(ORIGIN, sum), row.stagger);
}

/** Mass times radius of the throw and of the lower masses, as if all stood at the crank pin [kg m]. */
const rotating = ({ rods, throwMass, crankRadius }: MovingRow): number =>
  rods.reduce((sum, { lowerMass }) => sum + lowerMass, throwMass) * crankRadius;

/** F_n and F_-n for n = 1, 2, ... */
interface Series {
  readonly forward: readonly Point[];
  readonly backward: readonly Point[];
}

function series(of: (theta: number) => Point): Series {
  const samples = Array.from({ length: SAMPLES }, (_, i) => of((i * TURN) / SAMPLES));
  const term = (n: number): Point =>
    times(
      1 / SAMPLES,
      samples.reduce((sum, each, i) => plus(sum, turnedBy(each, (-n * i * TURN) / SAMPLES)), ORIGIN),
    );
  const orders = Array.from({ length: SHAKING_ORDERS }, (_, i) => i + 1);
  return { forward: orders.map((n) => term(n)), backward: orders.map((n) => term(-n)) };
}

const combined = (all: readonly Series[], weight: (row: number) => number): Series => {
  const of = (direction: keyof Series) =>
    Array.from({ length: SHAKING_ORDERS }, (_, n) =>
      all.reduce((sum, each, row) => plus(sum, times(weight(row), each[direction][n]!)), ORIGIN),
    );
  return { forward: of('forward'), backward: of('backward') };
};

const orbits = ({ forward, backward }: Series): readonly Orbit[] =>
  forward.map((_, i) => {
    const [f, b] = [forward[i]!, backward[i]!].map(({ x, y }) => Math.hypot(x, y)) as [number, number];
    return { order: i + 1, forward: f, backward: b, greatest: f + b };
  });

/** Force of a row's counterweight on its throw, in the frame of the row [N]. @param pinAngle - in that frame [rad] */
export const counterweightForce = (
  { fitted, angle }: Counterweight,
  pinAngle: number,
  speed: number,
): Point => polar(-fitted * speed * speed, pinAngle + angle);
