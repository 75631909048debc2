import { lobeArc } from './circular-arc-profile.ts';
import { fullCycloidTipRadius, halfPitch } from './profile.ts';
import type { RotorSection } from './profile.ts';

/** Why rotors of this section cannot mesh. */
export interface SectionFault {
  /** Where and why, without the dimensions' names. */
  readonly reason: string;
  /** Smallest and largest tip radius that mesh at this distance of the axes [m]. */
  readonly allowed: readonly [least: number, most: number];
}

/** Places along the hollow at which it is looked at: a fold narrower than 1/2000 of it is missed. */
const PLACES = 2000;

/**
 * The fault of a section that cannot mesh, or null.
 *
 * Cycloids: q = (R - r)/2 <= r/(2 z), or the arches overlap on the pitch circle. Circular arcs: the centre of the lobe's arc lies
 * inside the pitch circle, and the hollow never runs backwards (a fold is metal that the other lobe cuts away). Any: r < R.
 */
export function sectionFault(section: RotorSection): SectionFault | null {
  const { profile, lobes, tipRadius, pitchRadius } = section;
  const refuse = (reason: string): SectionFault => ({
    allowed: [pitchRadius, largestTipRadius(section)],
    reason,
  });
  if (!(tipRadius > pitchRadius))
    return refuse('the tips do not reach over the line half way between the axes');
  if (profile === 'cycloidal') {
    if (tipRadius <= fullTip(section)) return null;
    const needed = (((tipRadius - pitchRadius) / 2 / pitchRadius) * 360).toFixed(1);
    return refuse(
      `neighbouring lobe and hollow run into each other on the pitch circle, ${mm(pitchRadius)} from the axis: ` +
        `each needs ${needed}° of it and has ${(180 / lobes).toFixed(1)}°`,
    );
  }
  const { b } = lobeArc(section);
  if (b >= pitchRadius) {
    return refuse(
      `the centre of the lobe’s arc lies ${mm(b)} from the axis, not inside the pitch circle of ${mm(pitchRadius)}`,
    );
  }
  const fold = hollowFold(section);
  if (!fold) return null;
  return refuse(
    `the other rotor’s lobe cuts the hollow away ${mm(fold.radius)} from the axis, ${fold.fromMiddle_deg.toFixed(1)}° off the hollow’s middle`,
  );
}

/** That of full cycloids, with room for round-off in how it was typed. */
const fullTip = ({ pitchRadius, lobes }: RotorSection): number =>
  fullCycloidTipRadius(pitchRadius, lobes) * (1 + 1e-12);

/** Largest tip radius that meshes at a pitch radius [m]; that of arcs to 1e-6 of it. */
export function largestTipRadius(section: RotorSection): number {
  const full = fullTip(section);
  if (section.profile === 'cycloidal') return full;
  const fits = (tipRadius: number) => {
    const tried = { ...section, tipRadius };
    return lobeArc(tried).b < section.pitchRadius && hollowFold(tried) === null;
  };
  // Arcs reach beyond full cycloids, never to twice the pitch radius, where no root would be left.
  let [low, high] = [full, 2 * section.pitchRadius];
  while (high - low > 1e-6 * section.pitchRadius) {
    const middle = (low + high) / 2;
    if (fits(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** Where the hollow of a circular-arc section runs backwards, or null. */
function hollowFold(section: RotorSection): { radius: number; fromMiddle_deg: number } | null {
  const hollow = halfPitch(section)[1]!;
  let last = hollow(0);
  for (let k = 1; k <= PLACES; k++) {
    const next = hollow(k / PLACES);
    if ((next.y - last.y) * last.nx - (next.x - last.x) * last.ny <= 0) {
      const angle = Math.PI / section.lobes - Math.atan2(last.y, last.x);
      return { radius: Math.hypot(last.x, last.y), fromMiddle_deg: (angle * 180) / Math.PI };
    }
    last = next;
  }
  return null;
}

const mm = (length: number): string => `${(length * 1e3).toFixed(2)} mm`;
