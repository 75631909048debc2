import type { ScaleLinear } from 'd3-scale';
import type { Room } from './chart-types.ts';
import { extentOf, linearScale } from './scales.ts';
import type { Column } from './scales.ts';

/**
 * Two scales of one measure for a drawing in the plane: every column and the origin fit into the room, and as long to the right as
 * up, so that angles are true. y grows upwards.
 */
export function equalScales(
  xs: readonly Column[],
  ys: readonly Column[],
  { left, right, top, bottom }: Room,
): { x: ScaleLinear<number, number>; y: ScaleLinear<number, number> } {
  const [x0, x1] = extentOf([...xs, [0]])!;
  const [y0, y1] = extentOf([...ys, [0]])!;
  const width = Math.max(1, right - left);
  const height = Math.max(1, bottom - top);
  const perPixel = Math.max((x1 - x0) / width, (y1 - y0) / height) || 1;
  const [midX, midY] = [(x0 + x1) / 2, (y0 + y1) / 2];
  return {
    x: linearScale([midX - (perPixel * width) / 2, midX + (perPixel * width) / 2], [left, right]),
    y: linearScale([midY - (perPixel * height) / 2, midY + (perPixel * height) / 2], [bottom, top]),
  };
}

/** Radii of rings about the origin on round values, as far as the scale's corner, about one every `spacing_px`. */
export function ringRadii(
  x: ScaleLinear<number, number>,
  y: ScaleLinear<number, number>,
  spacing_px: number,
): number[] {
  const reach = Math.hypot(...[x, y].map((scale) => Math.max(...scale.domain().map(Math.abs))));
  const perPixel = Math.abs(x.invert(1) - x.invert(0));
  const count = Math.max(1, Math.round(reach / perPixel / spacing_px));
  return linearScale([0, reach], [0, 1])
    .ticks(count)
    .filter((radius) => radius > 0);
}
