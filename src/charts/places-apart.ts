interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Points nearer than `gap` to one before them are moved to the right until they are not [px]; the order is kept. */
export function placesApart(points: readonly Spot[], gap: number): readonly Spot[] {
  const placed: Spot[] = [];
  for (const { x, y } of points) {
    let at = { x, y };
    const close = (other: Spot) => Math.hypot(at.x - other.x, at.y - other.y) < gap * (1 - 1e-9);
    for (let tries = 0; tries < points.length; tries++) {
      const other = placed.find(close);
      if (!other) break;
      at = { x: other.x + Math.sqrt(Math.max(0, gap * gap - (at.y - other.y) ** 2)), y };
    }
    placed.push(at);
  }
  return placed;
}
