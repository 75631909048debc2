import { rotorOutline } from './outline.ts';
import { measurePolygon } from './polygon.ts';
import { halfPitch } from './profile.ts';
import type { ProfilePoint, RotorSection } from './profile.ts';

/** Chord error over the tip radius: the area is then true to about 1e-6. */
const CHORD = 2e-7;

/**
 * Volume displaced by a pair in one turn, from the true area of the section.
 *
 *   V = 2 (pi R^2 - A) L        R tip radius [m], A area of one rotor's section [m^2], L length [m]
 *
 * Valid: no gaps. Between casing and rotors with gaps a little more goes round and comes back through the mesh.
 */
export function displacedVolume(section: RotorSection, length: number): number {
  const { area } = measurePolygon(rotorOutline(section, 0, CHORD * section.tipRadius));
  return 2 * (Math.PI * section.tipRadius ** 2 - area) * length;
}

/** Displaced flow over its mean, at equal steps of the rotor angle through one pulse. */
export interface Ripple {
  /** Amplitude of the part at 2 x lobes periods a turn, over the mean; what `rippleDepth` of a blower means [-]. */
  readonly depth: number;
  /** Highest less lowest, over the mean [-]. */
  readonly swing: number;
}

/**
 * Ripple of straight rotors, from how the chambers between tips, casing and the touching profiles grow and shrink.
 *
 *   dV/dphi = L (R^2 - (rho1^2 + rho2^2)/2)       rho1, rho2 [m]: from the two axes to where the rotors touch
 *
 * A point P of the profile touches when its normal's pitch point I = r e^(i f) lies on the line of centres, so that rho1 = |P|,
 * rho2 = |P - 2 I| and the rotor stands at phi = -f.
 *
 * Numerics: Fourier part by trapezia over the points of the profile, which stand unevenly in f.
 */
export function displacedRipple(section: RotorSection): Ripple {
  const { lobes, tipRadius, pitchRadius } = section;
  const rate = ({ x, y, pitchAngle }: ProfilePoint): number => {
    const [ix, iy] = [pitchRadius * Math.cos(pitchAngle), pitchRadius * Math.sin(pitchAngle)];
    return tipRadius ** 2 - (x * x + y * y + (x - 2 * ix) ** 2 + (y - 2 * iy) ** 2) / 2;
  };
  const steps = 1000;
  const touches = halfPitch(section).flatMap((piece) =>
    Array.from({ length: steps + 1 }, (_, k) => {
      const point = piece(k / steps);
      return { angle: point.pitchAngle, rate: rate(point) };
    }),
  );
  let [mean, wave] = [0, 0];
  for (let i = 1; i < touches.length; i++) {
    const [a, b] = [touches[i - 1]!, touches[i]!];
    const step = b.angle - a.angle;
    mean += (step * (a.rate + b.rate)) / 2;
    wave += (step * (a.rate * Math.cos(2 * lobes * a.angle) + b.rate * Math.cos(2 * lobes * b.angle))) / 2;
  }
  const rates = touches.map((touch) => touch.rate);
  const half = Math.PI / lobes;
  return {
    depth: Math.abs((2 * wave) / mean),
    swing: ((Math.max(...rates) - Math.min(...rates)) * half) / mean,
  };
}
