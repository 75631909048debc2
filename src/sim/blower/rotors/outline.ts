import { halfPitch } from './profile.ts';
import type { ProfilePiece, RotorSection, Spot } from './profile.ts';
import { turned } from './turned.ts';

/** Pieces are halved at most so often: a chord error far below anything that can be cut. */
const DEEPEST = 14;
/** Corners closer than this are one [m]. */
const SAME = 1e-12;

/**
 * Corners of one rotor's section, anticlockwise, the first lobe along +x: the profile moved into the metal by `inset` along its
 * normal, and cut into chords that depart from it by no more than `chordError`.
 *
 * Two profiles that touch without a gap have, moved so, a gap of 2 inset wherever they touched, because the normals are common.
 *
 * @param inset      - half the mesh clearance [m]
 * @param chordError - [m]
 *
 * Numerics: the departure is looked at in the quarters of every chord. Where the profile bends more sharply than the inset
 * (cycloids at the pitch circle, within a fraction of a micrometre of it) the moved curve would fold: those corners are left out.
 */
export function rotorOutline(section: RotorSection, inset: number, chordError: number): Spot[] {
  const half = halfPitch(section).flatMap((piece) => cut(piece, inset, chordError));
  const pitch = Math.PI / section.lobes;
  // The mirror image, from the middle of the hollow behind to the middle of the lobe.
  const mirrored = half.map(({ x, y }) => ({ x, y: -y })).reverse();
  const corners: Spot[] = [];
  for (let lobe = 0; lobe < section.lobes; lobe++)
    for (const { x, y } of [...mirrored, ...half]) {
      const corner = turned(x, y, 2 * pitch * lobe);
      const last = corners.at(-1);
      if (!last || Math.hypot(corner.x - last.x, corner.y - last.y) > SAME) corners.push(corner);
    }
  const [first] = corners;
  const end = corners.at(-1)!;
  if (Math.hypot(end.x - first!.x, end.y - first!.y) <= SAME) corners.pop();
  return corners;
}

interface Place extends Spot {
  readonly nx: number;
  readonly ny: number;
}

function cut(piece: ProfilePiece, inset: number, chordError: number): Spot[] {
  const at = (t: number): Place => {
    const { x, y, nx, ny } = piece(t);
    return { x: x - inset * nx, y: y - inset * ny, nx, ny };
  };
  const places: Place[] = [at(0)];
  const halve = (from: Place, to: Place, a: number, b: number, depth: number): void => {
    const straight = [0.25, 0.5, 0.75].every(
      (share) => departure(at(a + share * (b - a)), from, to) <= chordError,
    );
    if (straight || depth === DEEPEST) {
      places.push(to);
      return;
    }
    const middle = at((a + b) / 2);
    halve(from, middle, a, (a + b) / 2, depth + 1);
    halve(middle, to, (a + b) / 2, b, depth + 1);
  };
  halve(places[0]!, at(1), 0, 1, 0);
  return places.filter((place, i) => {
    const last = places[i - 1];
    return !last || (place.y - last.y) * (last.nx + place.nx) >= (place.x - last.x) * (last.ny + place.ny);
  });
}

/** Distance of a place from the straight line through two others [m]. */
function departure({ x, y }: Spot, a: Spot, b: Spot): number {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  if (length === 0) return Math.hypot(x - a.x, y - a.y);
  return Math.abs((x - a.x) * (b.y - a.y) - (y - a.y) * (b.x - a.x)) / length;
}
