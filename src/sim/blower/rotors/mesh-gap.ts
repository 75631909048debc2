import { TURN } from '../../units.ts';
import type { Spot } from './profile.ts';
import { turned } from './turned.ts';

/** How closely two rotors pass each other. */
export interface MeshGap {
  /** Least distance at any angle; negative where one cuts into the other [m]. */
  readonly least: number;
  /** Largest, over the angles, of the least distance: how far the seal ever opens [m]. */
  readonly widest: number;
  /** Where the least distance is: rotor angle [rad], distance from the first rotor's axis [m]. */
  readonly at: { readonly rotorAngle: number; readonly radius: number };
}

/** Angle of the second rotor, its first lobe from +x, when the first has turned by `turn`: a hollow then faces a lobe [rad]. */
export const matingAngle = (turn: number, lobes: number): number => Math.PI - Math.PI / lobes - turn;

/**
 * The gap between two equal rotors through a full mesh turn, 2 pi / lobes, at equal steps of the angle: from every corner of the
 * one to the sides of the other, both ways round.
 *
 * @param corners  - of one rotor, anticlockwise, first lobe along +x [m]
 * @param distance - of the axes [m]
 * @param steps    - angles that are looked at
 *
 * Valid: the polygons' own chord error is in it. A cut deeper than half the thickness of a lobe may read as a gap.
 */
export function meshGap(corners: readonly Spot[], lobes: number, distance: number, steps = 24): MeshGap {
  const reach = Math.max(...corners.map(({ x, y }) => Math.hypot(x, y)));
  let least = Infinity;
  let widest = -Infinity;
  let at = { rotorAngle: 0, radius: 0 };
  for (let step = 0; step < steps; step++) {
    // Off the symmetric places, which a few steps would otherwise meet again and again.
    const rotorAngle = ((step + 0.37) / steps) * (TURN / lobes);
    const first = corners.map(({ x, y }) => turned(x, y, rotorAngle));
    const second = corners.map(({ x, y }) => {
      const place = turned(x, y, matingAngle(rotorAngle, lobes));
      return { x: place.x + distance, y: place.y };
    });
    // Only where the tip circles overlap can the rotors come near each other.
    const near = ({ x, y }: Spot) =>
      Math.hypot(x, y) < 1.02 * reach && Math.hypot(x - distance, y) < 1.02 * reach;
    const here = { gap: Infinity, spot: first[0]! };
    nearest(second.filter(near), sides(first, near), here);
    nearest(first.filter(near), sides(second, near), here);
    if (here.gap < least) {
      least = here.gap;
      at = { rotorAngle, radius: Math.hypot(here.spot.x, here.spot.y) };
    }
    widest = Math.max(widest, here.gap);
  }
  return { least, widest, at };
}

type Side = readonly [Spot, Spot];

const sides = (corners: readonly Spot[], near: (spot: Spot) => boolean): Side[] =>
  corners.flatMap((a, i): Side[] => {
    const b = corners[(i + 1) % corners.length]!;
    return near(a) || near(b) ? [[a, b]] : [];
  });

/** Takes into `found` the place that is nearest to the sides, or deepest inside them. */
function nearest(places: readonly Spot[], all: readonly Side[], found: { gap: number; spot: Spot }): void {
  for (const spot of places) {
    let closest = Infinity;
    let outside = true;
    for (const [a, b] of all) {
      const [ux, uy] = [b.x - a.x, b.y - a.y];
      const [vx, vy] = [spot.x - a.x, spot.y - a.y];
      const share = Math.max(0, Math.min(1, (ux * vx + uy * vy) / (ux * ux + uy * uy)));
      const [dx, dy] = [vx - share * ux, vy - share * uy];
      const distance = dx * dx + dy * dy;
      if (distance < closest) {
        closest = distance;
        outside = ux * vy - uy * vx <= 0;
      }
    }
    const gap = (outside ? 1 : -1) * Math.sqrt(closest);
    if (gap < found.gap) {
      found.gap = gap;
      found.spot = spot;
    }
  }
}
