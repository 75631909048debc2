/**
 * A convex outline in the plane of a row: a point, a segment or a polygon run through counter-clockwise, grown by a
 * radius. So a circle is a point, and a rod with round ends is a segment. Corners are placed anew as the crank turns [m].
 */
export interface RoundedShape {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly radius: number;
}

export const roundedShape = (corners: number, radius: number): RoundedShape => ({
  x: new Float64Array(corners),
  y: new Float64Array(corners),
  radius,
});

export function placeCorner(shape: RoundedShape, corner: number, x: number, y: number): void {
  shape.x[corner] = x;
  shape.y[corner] = y;
}

/** A rectangle beside an axis through the origin: from `low` to `high` along it, from `left` to `right` across it [m]. */
export function placeOnAxis(
  shape: RoundedShape,
  cos: number,
  sin: number,
  low: number,
  high: number,
  left: number,
  right: number,
): void {
  placeCorner(shape, 0, low * cos - left * sin, low * sin + left * cos);
  placeCorner(shape, 1, high * cos - left * sin, high * sin + left * cos);
  placeCorner(shape, 2, high * cos - right * sin, high * sin + right * cos);
  placeCorner(shape, 3, low * cos - right * sin, low * sin + right * cos);
}

/** A shank from one point to another, straight-sided, of a width at each end [m]. */
export function placeBetween(
  shape: RoundedShape,
  from: { readonly x: number; readonly y: number },
  to: { readonly x: number; readonly y: number },
  widthFrom: number,
  widthTo: number,
): void {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const length = Math.sqrt(dx * dx + dy * dy);
  const acrossX = -dy / length / 2;
  const acrossY = dx / length / 2;
  placeCorner(shape, 0, from.x - acrossX * widthFrom, from.y - acrossY * widthFrom);
  placeCorner(shape, 1, to.x - acrossX * widthTo, to.y - acrossY * widthTo);
  placeCorner(shape, 2, to.x + acrossX * widthTo, to.y + acrossY * widthTo);
  placeCorner(shape, 3, from.x + acrossX * widthFrom, from.y + acrossY * widthFrom);
}
