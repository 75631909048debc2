import { turned } from './turned.ts';
import type { ProfilePiece, RotorSection } from './profile.ts';

/**
 * Distance of a lobe's arc centre from the rotor's axis, and the arc's radius: the arc passes the tip and cuts the pitch circle
 * half way to the hollow.
 *
 *   b = (R^2 - r^2) / (2 (R - r cos(pi/(2 z)))),   rho = R - b
 *
 * R tip radius, r pitch radius, b, rho [m]; z lobes [-].
 */
export function lobeArc({ lobes, tipRadius, pitchRadius }: RotorSection): { b: number; rho: number } {
  const b =
    (tipRadius ** 2 - pitchRadius ** 2) / (2 * (tipRadius - pitchRadius * Math.cos(Math.PI / (2 * lobes))));
  return { b, rho: tipRadius - b };
}

/**
 * Circular-arc rotor: the lobe is an arc about a centre on its own axis, the hollow is what such an arc of the other rotor leaves.
 * In complex numbers, the lobe along 0, the hollow along pi/z:
 *
 *   lobe    b + rho e^(i beta),          from the tip to the pitch circle at angle pi/(2 z)
 *   hollow  c + rho (I - c) / |I - c|    times e^(i pi/z),   I = r e^(i g),   c = 2 r e^(i g) - b e^(2 i g),   -pi/(2 z) <= g <= 0
 *
 * c is the path of the other arc's centre seen from this rotor, I the pitch point, through which the common normal passes; the
 * hollow runs beside the path at the distance rho. b, rho, r [m].
 *
 * Valid: r < R, b < r, and a hollow that does not fold (`hollowFold`).
 * Source: Litvin & Fuentes, Gear Geometry and Applied Theory, 2004, ch. 13 (rotors of Roots blowers); the hollow as an offset
 * curve follows from its equation of meshing.
 */
export function circularArcProfile(section: RotorSection): readonly ProfilePiece[] {
  const { lobes, pitchRadius: r } = section;
  const { b, rho } = lobeArc(section);
  const middle = Math.PI / (2 * lobes);
  const last = Math.atan2(r * Math.sin(middle), r * Math.cos(middle) - b);
  const lobe: ProfilePiece = (t) => {
    const [nx, ny] = [Math.cos(t * last), Math.sin(t * last)];
    const toPitch = -b * nx + Math.sqrt(r * r - b * b * ny * ny);
    return {
      x: b + rho * nx,
      y: rho * ny,
      nx,
      ny,
      pitchAngle: Math.atan2(toPitch * ny, b + toPitch * nx),
    };
  };
  const hollow: ProfilePiece = (t) => {
    const g = (t - 1) * middle;
    const [cx, cy] = [2 * r * Math.cos(g) - b * Math.cos(2 * g), 2 * r * Math.sin(g) - b * Math.sin(2 * g)];
    const [dx, dy] = [cx - r * Math.cos(g), cy - r * Math.sin(g)];
    const distance = Math.hypot(dx, dy);
    const place = turned(cx - (rho * dx) / distance, cy - (rho * dy) / distance, 2 * middle);
    const normal = turned(dx / distance, dy / distance, 2 * middle);
    return { x: place.x, y: place.y, nx: normal.x, ny: normal.y, pitchAngle: g + 2 * middle };
  };
  return [lobe, hollow];
}
