/**
 * Area of a rounded rectangle that a straight crown edge has uncovered from the top.
 *
 *   e <= c:       A = (w - 2 c) e + c^2/2 (t - sin t),   cos(t/2) = 1 - e/c
 *   c < e < H-c:  A = w e - (2 - pi/2) c^2
 *   e >= H-c:     A = A(H) - A(H - e),   A(H) = w H - (4 - pi) c^2
 *
 * @param width  - clear width w [m]
 * @param height - H [m]
 * @param radius - of all four corners c, 0 <= c <= w/2, H/2 [m]
 * @param e      - depth of the edge below the top of the window, any sign [m]
 * @returns 0 when closed, the whole window once the edge has passed the floor [m^2]
 *
 * Numerics: closed form, true to round-off for the smallest opening. The slope dA/de jumps by w - 2c where it opens; with round corners the slope there grows as
 * the square root of e.
 * Source: geometry of the circular segment; reference table tests/reference/window.csv.
 */
export function roundedWindowArea(width: number, height: number, radius: number, e: number): number {
  if (e <= 0) return 0;
  if (e >= height) return width * height - (4 - Math.PI) * radius * radius;
  const fromFloor = height - e;
  if (fromFloor < radius)
    return width * height - (4 - Math.PI) * radius * radius - cornerStrip(width, radius, fromFloor);
  if (e < radius) return cornerStrip(width, radius, e);
  return width * e - (2 - 0.5 * Math.PI) * radius * radius;
}

/**
 * Width of the same window at the crown's edge: the slope dA/de of its area.
 *
 *   w - 2 c + 2 sqrt(d (2 c - d))  where d, the distance to the nearer end, is below c;  w between
 *
 * @returns 0 above the top and below the floor [m]
 */
export function roundedWindowWidth(width: number, height: number, radius: number, e: number): number {
  if (e <= 0 || e >= height) return 0;
  const d = Math.min(e, height - e);
  return d < radius ? width - 2 * radius + 2 * Math.sqrt(d * (2 * radius - d)) : width;
}

function cornerStrip(width: number, radius: number, e: number): number {
  // Both corners together are a circular segment of angle t; taken from a sine, it is exact for small e.
  const t = 4 * Math.asin(Math.sqrt((0.5 * e) / radius));
  return (width - 2 * radius) * e + 0.5 * radius * radius * angleLessSine(t);
}

/** t - sin t without cancellation: four terms of the series below 0.1, true to 1e-15 there. */
function angleLessSine(t: number): number {
  if (t >= 0.1) return t - Math.sin(t);
  const t2 = t * t;
  return ((t * t2) / 6) * (1 - (t2 / 20) * (1 - (t2 / 42) * (1 - t2 / 72)));
}
