import type { Place } from './engine-shapes.ts';

/**
 * Section of one straight cycloidal rotor about its own axis: each lobe an epicycloid arc over the pitch circle, each
 * hollow a hypocycloid arc under it, both from a circle that rolls once over 1/(2 z) of the pitch circle's way.
 *
 *   lobe:   x = (p + q) cos f - q cos((p + q) f / q),  y likewise with sin,  0 <= f <= pi/z
 *   hollow: x = (p - q) cos f + q cos((p - q) f / q),  y = (p - q) sin f - q sin((p - q) f / q)
 *   p = tipRadius / (1 + 1/z) pitch radius, q = p / (2 z)
 *
 * A lobe points along +x. The polygon closes on itself; its area tends to pi p^2 (1 + 1/(2 z^2)), the section that
 * the blower's displacement is worked out from.
 *
 * @param tipRadius - [m], or any unit of length
 * @param lobes     - z, 2 or more [-]
 * @param perArc    - corners for each arc [-]
 */
export function rotorOutline(tipRadius: number, lobes: number, perArc = 16): Place[] {
  const pitch = pitchRadius(tipRadius, lobes);
  const rolling = pitch / (2 * lobes);
  const corners: Place[] = [];
  for (let arc = 0; arc < 2 * lobes; arc++) {
    const side = arc % 2 === 0 ? 1 : -1;
    const from = (Math.PI / lobes) * (arc - 0.5);
    const centre = pitch + side * rolling;
    for (let k = 0; k < perArc; k++) {
      const f = (Math.PI / lobes) * (k / perArc);
      const spin = (centre / rolling) * f;
      const x = centre * Math.cos(f) - side * rolling * Math.cos(spin);
      const y = centre * Math.sin(f) - rolling * Math.sin(spin);
      corners.push({
        x: x * Math.cos(from) - y * Math.sin(from),
        y: x * Math.sin(from) + y * Math.cos(from),
      });
    }
  }
  return corners;
}

/** Half the distance of the two rotors' axes, in the unit of the tip radius. */
export const pitchRadius = (tipRadius: number, lobes: number): number => tipRadius / (1 + 1 / lobes);

/** Angles of the left and the right rotor, clockwise: they mesh, and carry gas down along both sides of the casing [rad]. */
export const rotorAngles = (turned: number, lobes: number): readonly [left: number, right: number] => [
  -turned,
  Math.PI - Math.PI / lobes + turned,
];
