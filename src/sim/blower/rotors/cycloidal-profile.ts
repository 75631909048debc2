import type { ProfilePiece, RotorSection } from './profile.ts';

/**
 * Cycloidal rotor with lands: what a small circle of radius q traces as it rolls half a turn outside the pitch circle (lobe) and
 * half a turn inside it (hollow), joined by arcs about the axis at the tip and at the root. In complex numbers:
 *
 *   tip     R e^(i f)                                   |f| <= h
 *   lobe    (r + q) e^(i f) + q e^(i (f + u))           u = (f - h) r/q,         0 <= u <= pi
 *   hollow  (r - q) e^(i f) + q e^(i (f - v))           v = (f - pi/(2 z)) r/q,  0 <= v <= pi
 *   root    (2 r - R) e^(i f)                           |f - pi/z| <= h
 *   q = (R - r) / 2,   h = pi/(2 z) - pi q / r
 *
 * R tip radius, r pitch radius [m]; z lobes; f angle where circle and pitch circle touch, which the normal passes. Without lands
 * h = 0, q = r/(2 z), R = r (1 + 1/z).
 *
 * Valid: 0 < q <= r/(2 z); beyond, the arches of lobe and hollow need more of the pitch circle than there is.
 * Source: Camus' theorem: epicycloid and hypocycloid of one rolling circle are conjugate; Litvin & Fuentes, Gear Geometry and
 * Applied Theory, 2004, ch. 13. Tip and root arcs roll on the line of centres, where R + (2 r - R) is the axes' distance.
 */
export function cycloidalProfile({ lobes, tipRadius, pitchRadius }: RotorSection): readonly ProfilePiece[] {
  const r = pitchRadius;
  const q = (tipRadius - r) / 2;
  const arch = (Math.PI * q) / r;
  const middle = Math.PI / (2 * lobes);
  const h = Math.max(0, middle - arch);
  const land =
    (radius: number, from: number): ProfilePiece =>
    (t) => {
      const f = from + t * h;
      const [nx, ny] = [Math.cos(f), Math.sin(f)];
      return { x: radius * nx, y: radius * ny, nx, ny, pitchAngle: f };
    };
  const lobe: ProfilePiece = (t) => {
    const f = h + t * arch;
    const u = t * Math.PI;
    return {
      x: (r + q) * Math.cos(f) + q * Math.cos(f + u),
      y: (r + q) * Math.sin(f) + q * Math.sin(f + u),
      nx: Math.cos(f + u / 2),
      ny: Math.sin(f + u / 2),
      pitchAngle: f,
    };
  };
  const hollow: ProfilePiece = (t) => {
    const f = middle + t * arch;
    const v = t * Math.PI;
    return {
      x: (r - q) * Math.cos(f) + q * Math.cos(f - v),
      y: (r - q) * Math.sin(f) + q * Math.sin(f - v),
      nx: -Math.sin(f - v / 2),
      ny: Math.cos(f - v / 2),
      pitchAngle: f,
    };
  };
  const flanks = [lobe, hollow];
  return h > 1e-12 ? [land(tipRadius, 0), ...flanks, land(2 * r - tipRadius, middle + arch)] : flanks;
}
