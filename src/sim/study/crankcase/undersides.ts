import { PistonMotion } from '../../geometry/crank-train.ts';
import type { EngineGeometry } from '../../geometry/cylinder-geometry.ts';
import { undersideVolume } from '../../geometry/underside-volume.ts';
import { fourierSums } from '../../numerics/fourier-sums.ts';
import { TURN } from '../../units.ts';

/** Parts of a turn at which volumes are given. */
export const PARTS = 360;
/** Engine orders that are looked at. */
export const ORDERS = 8;

/** What moves below some pistons over a turn. */
export interface Underside {
  /** Of all these cylinders [m^3]. */
  readonly sweptVolume: number;
  /** Volume below the pistons less its mean, over their swept volume, at PARTS + 1 crank angles from 0 [-]. */
  readonly share: Float64Array;
  /** Greatest less least [-]. */
  readonly swing: number;
  /** Amplitudes of orders 1 to ORDERS, in the same share [-]. */
  readonly harmonics: readonly number[];
}

export interface Undersides {
  /** The first master by itself, and with a second one on a plain rod of its own, opposite on the same pin. */
  readonly one: Underside;
  readonly two: Underside;
  /** As many evenly spaced pistons as the design has in a row, all on plain rods on one pin. */
  readonly even: Underside;
  /** The design as it is: every row, its own strokes, knuckles and throws. */
  readonly own: Underside;
}

/**
 * What pistons displace below them, as a share of what they sweep above: why a crankcase that evenly spaced cylinders share pumps nothing.
 *
 *   share(theta) = ( sum_j x_mean,j - x_j(theta) ) / sum_j s_j,   a_n = | 2/M sum_theta share e^(-i n theta) |
 *
 * x: travel below top dead centre [m], s: stroke [m], one bore. Source of the argument: underside-volume.ts.
 */
export function undersides(geometry: EngineGeometry): Undersides {
  const [first] = geometry.cylinders;
  const { crankRadius, masterRodLength } = first!.motion.rods;
  const inRow = geometry.cylinders.filter(({ rowIndex }) => rowIndex === 0).length;
  const stroke = 2 * crankRadius;
  const plain = (count: number): Underside => {
    const motions = Array.from({ length: count }, (_, j) =>
      evenPiston(crankRadius, masterRodLength, j / count),
    );
    return describe(geometry.boreArea * stroke * count, (theta) =>
      motions.reduce((sum, motion) => {
        motion.evaluate(theta);
        return sum + geometry.boreArea * motion.height;
      }, 0),
    );
  };
  return {
    one: plain(1),
    two: plain(2),
    even: plain(inRow),
    own: describe(geometry.sweptVolume, (theta) => undersideVolume(geometry, theta)),
  };
}

const evenPiston = (crankRadius: number, rodLength: number, turn: number): PistonMotion =>
  new PistonMotion({
    crankRadius,
    masterRodLength: rodLength,
    masterAxis: TURN * turn,
    axisAngle: TURN * turn,
    knuckleRadius: 0,
    knuckleAngle: 0,
    rodLength,
  });

function describe(sweptVolume: number, volumeAt: (theta: number) => number): Underside {
  const volumes = Float64Array.from({ length: PARTS }, (_, i) => volumeAt((TURN * i) / PARTS));
  const mean = volumes.reduce((sum, volume) => sum + volume, 0) / PARTS;
  const share = Float64Array.from(
    { length: PARTS + 1 },
    (_, i) => (volumes[i % PARTS]! - mean) / sweptVolume,
  );
  return {
    sweptVolume,
    share,
    swing: Math.max(...share) - Math.min(...share),
    harmonics: fourierSums(share.subarray(0, PARTS), ORDERS).map(({ re, im }) => Math.hypot(re, im)),
  };
}
