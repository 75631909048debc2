import type { Model } from '../../cycle/model.ts';
import type { Point } from '../../geometry/rod-points.ts';
import { ORIGIN, cross, dot, plus, polar, times, turnedBy } from '../../geometry/vectors.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { TURN } from '../../units.ts';
import type { MovingRow } from './moving-row.ts';
import { rodsAt } from './moving-row.ts';
import { rowForces } from './row-forces.ts';
import type { Counterweight } from './shaking.ts';
import { counterweightForce } from './shaking.ts';

/** Size of a load over the period [N], mean over the crank angle; and the crank angle of the peak [rad]. */
export interface LoadSize {
  readonly peak: number;
  readonly peakAngle: number;
  readonly mean: number;
}

export interface RowLoads {
  /** Force of the rods on the crank pin, seen from the crank: outwards along the throw, and in the direction of rotation [N]. */
  readonly outward: Float64Array;
  readonly onward: Float64Array;
  readonly pin: LoadSize;
  /** Bending moment of the master rod's shank at the knuckle flange [N m]; null where all rods are plain. */
  readonly bending: LoadSize | null;
}

export interface CylinderLoads {
  /** Greatest push and pull along the rod, both positive [N]. */
  readonly push: number;
  readonly pull: number;
  /** Greatest thrust of the piston on its liner, either way [N]. */
  readonly side: number;
  /** On its knuckle pin; null for master and plain rods. */
  readonly knuckle: LoadSize | null;
}

export interface Loads {
  /** At the points of the step mesh [rad]. */
  readonly angle: Float64Array;
  readonly rows: readonly RowLoads[];
  readonly cylinders: readonly CylinderLoads[];
  /** From the front of row A backwards: with the counterweights fitted, and without any. */
  readonly mains: readonly { readonly fitted: LoadSize; readonly bare: LoadSize }[];
}

/**
 * Loads of pins, rods and main bearings over one period of a solved point.
 *
 *   main bearing between two throws = 1/2 (F_before + F_behind),   F = rods on the pin + m_t r omega^2 + counterweight
 *
 * A bearing stands on either side of every throw and takes half of its load, as if the crank were cut between them.
 *
 * Valid: as `rowForces`; forces of gears, flywheel and propeller are not in the mains, and a bent or running-out crank is not seen.
 */
export function pinLoads(
  { geometry, engine }: Pick<Model, 'geometry' | 'engine'>,
  point: SolvedPoint,
  rows: readonly MovingRow[],
  counterweights: readonly Counterweight[],
): Loads {
  const { angle, cylinders: traces } = point.traces;
  const square = point.speed * point.speed;
  const column = () => new Float64Array(angle.length);
  const pins = rows.map(() => ({ outward: column(), onward: column(), bending: column() }));
  const mains = [...rows, null].map(() => ({ fitted: column(), bare: column() }));
  const rods = geometry.cylinders.map(() => ({ push: column(), side: column(), knuckle: column() }));

  angle.forEach((theta, i) => {
    const onThrow = rows.map((row, r): { bare: Point; fitted: Point } => {
      const gas = row.rods.map(
        ({ index }) => (traces[index]!.pressure[i]! - engine.ambient.pressure) * geometry.boreArea,
      );
      const forces = rowForces(row, rodsAt(row, theta), point.speed, gas);
      const pinAngle = theta + row.pinOffset;
      const out = polar(1, pinAngle);
      pins[r]!.outward[i] = dot(forces.pin, out);
      pins[r]!.onward[i] = cross(out, forces.pin);
      pins[r]!.bending[i] = forces.bending;
      forces.rods.forEach((each, j) => {
        const columns = rods[row.rods[j]!.index]!;
        columns.push[i] = each.push;
        columns.side[i] = Math.abs(each.side);
        columns.knuckle[i] = each.knuckle ? Math.hypot(each.knuckle.x, each.knuckle.y) : NaN;
      });
      const bare = plus(forces.pin, times(row.throwMass * row.crankRadius * square, out));
      const fitted = plus(bare, counterweightForce(counterweights[r]!, pinAngle, point.speed));
      return { bare: turnedBy(bare, row.stagger), fitted: turnedBy(fitted, row.stagger) };
    });
    mains.forEach((main, b) => {
      for (const which of ['fitted', 'bare'] as const) {
        const { x, y } = plus(onThrow[b - 1]?.[which] ?? ORIGIN, onThrow[b]?.[which] ?? ORIGIN);
        main[which][i] = Math.hypot(x, y) / 2;
      }
    });
  });

  const sized = (column: Float64Array) => sizeOf(angle, column);
  return {
    angle,
    rows: pins.map(({ outward, onward, bending }, r) => ({
      outward,
      onward,
      pin: sized(outward.map((each, i) => Math.hypot(each, onward[i]!))),
      bending: rows[r]!.master ? sized(bending) : null,
    })),
    cylinders: rods.map(({ push, side, knuckle }) => ({
      push: Math.max(...push),
      pull: Math.max(0, -Math.min(...push)),
      side: Math.max(...side),
      knuckle: Number.isNaN(knuckle[0]) ? null : sized(knuckle),
    })),
    mains: mains.map(({ fitted, bare }) => ({ fitted: sized(fitted), bare: sized(bare) })),
  };
}

function sizeOf(angle: Float64Array, size: Float64Array): LoadSize {
  let [area, at] = [0, 0];
  for (let i = 1; i < angle.length; i++) {
    area += 0.5 * (size[i]! + size[i - 1]!) * (angle[i]! - angle[i - 1]!);
    if (size[i]! > size[at]!) at = i;
  }
  return { peak: size[at]!, peakAngle: angle[at]! % TURN, mean: area / angle[angle.length - 1]! };
}
