import { withinTurn } from './angles.ts';
import type { CylinderGeometry } from './cylinder-geometry.ts';
import type { WindowProfile } from './window-profile.ts';

/** Integrals of uncovered area over crank angle [m^2 rad], or over time and per swept volume [s m^2/m^3]. */
export interface WindowIntegrals {
  /** Exhaust, from its opening to the opening of the transfer; 0 where the transfer opens first. */
  readonly blowdown: number;
  /** Transfer, all the while it is open. */
  readonly scavenge: number;
  /** Exhaust, all the while it is open. */
  readonly exhaust: number;
}

/**
 * Angle-areas of one cylinder: integral of the effective area (slant included, no discharge coefficient) over crank angle.
 *
 * Numerics: five-point Gauss-Legendre on pieces between the kinks, each piece split into `SPLIT`; the square-root growth
 * of a rounded window's width at its edge holds the relative error to 1e-8.
 */
export function angleAreas(cylinder: CylinderGeometry): WindowIntegrals {
  const { exhaust, transfer } = cylinder;
  const blowdownEnds = Math.min(
    Math.max(transfer.opensAfterOwnTdc, exhaust.opensAfterOwnTdc),
    exhaust.closesAfterOwnTdc,
  );
  return {
    blowdown: angleArea(cylinder, exhaust, exhaust.opensAfterOwnTdc, blowdownEnds),
    scavenge: angleArea(cylinder, transfer, transfer.opensAfterOwnTdc, transfer.closesAfterOwnTdc),
    exhaust: angleArea(cylinder, exhaust, exhaust.opensAfterOwnTdc, exhaust.closesAfterOwnTdc),
  };
}

/**
 * Specific time-areas: angle-area / (angular speed * swept volume).
 *
 * @param cylinder - with its own swept volume
 * @param speed    - of the crank, above 0 [rad/s]
 * @returns [s m^2/m^3]
 *
 * Source: the measure in trade use for comparing ports; Blair, Design and Simulation of Two-Stroke Engines, 1996, ch. 6.
 */
export function timeAreas(cylinder: CylinderGeometry, speed: number): WindowIntegrals {
  const areas = angleAreas(cylinder);
  const scale = 1 / (speed * cylinder.sweptVolume);
  return {
    blowdown: areas.blowdown * scale,
    scavenge: areas.scavenge * scale,
    exhaust: areas.exhaust * scale,
  };
}

const SPLIT = 16;
/** Five-point Gauss-Legendre rule on (-1, 1): closed form, Abramowitz & Stegun 25.4.29. */
const INNER = Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3;
const OUTER = Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3;
const PLACES = [-OUTER, -INNER, 0, INNER, OUTER];
const INNER_WEIGHT = (322 + 13 * Math.sqrt(70)) / 900;
const OUTER_WEIGHT = (322 - 13 * Math.sqrt(70)) / 900;
const WEIGHTS = [OUTER_WEIGHT, INNER_WEIGHT, 128 / 225, INNER_WEIGHT, OUTER_WEIGHT];

function angleArea(cylinder: CylinderGeometry, window: WindowProfile, from: number, to: number): number {
  const { tdc, travel, depthAtTdc } = cylinder;
  const inside = cylinder.kinks
    .map((kink) => withinTurn(kink - tdc))
    .filter((angle) => angle > from && angle < to);
  const ends = [from, ...inside.sort((a, b) => a - b), to];
  let total = 0;
  for (let i = 1; i < ends.length; i++) {
    const half = (0.5 * (ends[i]! - ends[i - 1]!)) / SPLIT;
    for (let piece = 0; piece < SPLIT; piece++) {
      const middle = ends[i - 1]! + (2 * piece + 1) * half;
      for (let k = 0; k < PLACES.length; k++) {
        travel.evaluate(tdc + middle + half * PLACES[k]!);
        total += WEIGHTS[k]! * half * window.area(depthAtTdc + travel.value);
      }
    }
  }
  return total;
}
