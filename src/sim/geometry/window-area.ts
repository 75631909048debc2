/**
 * A rounded rectangle that a straight crown edge uncovers from the top: its area A and the slope of that, its width at the edge.
 *
 *   d < c:  A = (w - 2 c) d + c^2/2 (t - sin t),  cos(t/2) = 1 - d/c     width = w - 2 c + 2 sqrt(d (2 c - d))
 *   else:   A = w e - (2 - pi/2) c^2                                     width = w
 *
 * d: distance of the edge from the nearer end. Near the floor, A = A(H) - A(H - e) and A(H) = w H - (4 - pi) c^2.
 *
 * Numerics: closed form, true to round-off for the smallest opening. The slope dA/de jumps by w - 2c where it opens; with round corners the slope there grows as
 * the square root of e. `uncover` reads `e` and writes fields, so that no double is passed to a call and boxed.
 * Source: geometry of the circular segment; reference table tests/reference/window.csv.
 */
export class RoundedWindow {
  /** Depth of the edge below the top of the window, any sign [m]. */
  e = 0;
  /** Uncovered: 0 when closed, the whole window once the edge has passed the floor [m^2]. */
  area = 0;
  /** dA/de: 0 above the top and below the floor [m]. */
  breadth = 0;
  readonly fullArea: number;

  /**
   * @param width  - clear width w [m]
   * @param height - H [m]
   * @param radius - of all four corners c, 0 <= c <= w/2, H/2 [m]
   */
  constructor(
    private readonly width: number,
    private readonly height: number,
    private readonly radius: number,
  ) {
    this.fullArea = width * height - (4 - Math.PI) * radius * radius;
  }

  uncover(): void {
    const { e, width, height, radius, fullArea } = this;
    const d = Math.min(e, height - e);
    if (d <= 0) {
      this.area = e > 0 ? fullArea : 0;
      this.breadth = 0;
    } else if (d < radius) {
      // Both corners together are a circular segment of angle t; taken from a sine, it is exact for small d.
      const t = 4 * Math.asin(Math.sqrt((0.5 * d) / radius));
      const strip = (width - 2 * radius) * d + 0.5 * radius * radius * angleLessSine(t);
      this.area = e < height - e ? strip : fullArea - strip;
      this.breadth = width - 2 * radius + 2 * Math.sqrt(d * (2 * radius - d));
    } else {
      this.area = width * e - (2 - 0.5 * Math.PI) * radius * radius;
      this.breadth = width;
    }
  }
}

/** `RoundedWindow`'s area at one depth. */
export function roundedWindowArea(width: number, height: number, radius: number, e: number): number {
  const window = new RoundedWindow(width, height, radius);
  window.e = e;
  window.uncover();
  return window.area;
}

/** t - sin t without cancellation: four terms of the series below 0.1, true to 1e-15 there. */
function angleLessSine(t: number): number {
  if (t >= 0.1) return t - Math.sin(t);
  const t2 = t * t;
  return ((t * t2) / 6) * (1 - (t2 / 20) * (1 - (t2 / 42) * (1 - t2 / 72)));
}
