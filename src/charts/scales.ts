import { format } from 'd3-format';
import { scaleLinear } from 'd3-scale';
import type { ScaleLinear } from 'd3-scale';
import { THIN, powerOfTen } from '../design/power-of-ten.ts';

/** A column of figures; NaN and null are gaps. */
export type Column = ArrayLike<number | null>;

export type Domain = readonly [number, number];

const usable = (value: number | null | undefined): value is number =>
  value !== null && value !== undefined && Number.isFinite(value);

/** Smallest and largest finite figure of all columns; null when there is none. */
export function extentOf(columns: readonly Column[]): Domain | null {
  let low = Infinity;
  let high = -Infinity;
  for (const column of columns) {
    for (let i = 0; i < column.length; i++) {
      const value = column[i];
      if (!usable(value)) continue;
      if (value < low) low = value;
      if (value > high) high = value;
    }
  }
  return low <= high ? [low, high] : null;
}

/**
 * The stretch an axis shows for what there is: widened so that nothing lies on the edge, to take in `include`, and
 * opened to a unit's width where all figures are the same. Without any figure it is 0 to 1.
 */
export function roomyDomain(extent: Domain | null, include: readonly number[] = [], margin = 0.05): Domain {
  const all = [...(extent ?? []), ...include];
  if (all.length === 0) return [0, 1];
  const low = Math.min(...all);
  const high = Math.max(...all);
  if (low === high) {
    const half = low === 0 ? 0.5 : Math.abs(low) / 10;
    return [low - half, high + half];
  }
  const room = margin * (high - low);
  return [include.includes(low) ? low : low - room, include.includes(high) ? high : high + room];
}

export const linearScale = (domain: Domain, range: Domain): ScaleLinear<number, number> =>
  scaleLinear().domain(domain).range(range);

/** The scale of an axis: over the stretch that it fixes, else over what there is and what it must take in. */
export const axisScale = (
  { domain, include }: { readonly domain?: Domain; readonly include?: readonly number[] },
  extent: Domain | null,
  range: Domain,
  margin?: number,
): ScaleLinear<number, number> => linearScale(domain ?? roomyDomain(extent, include, margin), range);

/** The value drawn at a place [px], that of the nearer end where the place is beyond the scale. */
export function valueAt(scale: ScaleLinear<number, number>, place_px: number): number {
  const [low, high] = scale.domain() as [number, number];
  return Math.min(high, Math.max(low, scale.invert(place_px)));
}

/** Round values along an axis, about one for every `spacing_px`. */
export function ticksAlong(scale: ScaleLinear<number, number>, spacing_px: number): number[] {
  const [from, to] = scale.range() as [number, number];
  return scale.ticks(Math.max(2, Math.floor(Math.abs(to - from) / spacing_px)));
}

/**
 * How the marks of an axis are written: as exact as their step asks, without grouping; with a power of ten where the
 * axis reaches a million or stays below a thousandth, so that marks keep their width.
 */
export function tickWriter(scale: ScaleLinear<number, number>, count: number): (value: number) => string {
  const reach = Math.max(...scale.domain().map(Math.abs));
  if (reach >= 1e6 || reach < 1e-3) return (value) => (value === 0 ? '0' : withPower(value));
  const write = scale.tickFormat(Math.max(2, count));
  return (value) => (value === 0 ? '0' : write(value).replaceAll(',', '').replaceAll('-', '−'));
}

/** A round value needs no more figures than tell it from its neighbours. */
function withPower(value: number): string {
  const digits = Math.max(1, format('~e')(value).replace(/e.*$|\D/g, '').length);
  return powerOfTen(value, digits).replaceAll(THIN, '');
}

/** Distance between marks of an upright axis [px], and the width of a figure at their size. */
export const UPRIGHT_SPACING = 44;
const FIGURE_WIDTH = 6.4;

/** Room for the marks of an upright axis to its left [px], the usual one unless they are longer. */
export function leftMargin(
  scale: ScaleLinear<number, number>,
  { format: own }: { readonly format?: (value: number) => string },
): number {
  const ticks = ticksAlong(scale, UPRIGHT_SPACING);
  const longest = Math.max(
    0,
    ...ticks.map(own ?? tickWriter(scale, ticks.length)).map((text) => text.length),
  );
  return Math.max(46, Math.ceil(10 + FIGURE_WIDTH * longest));
}

const turnSteps_deg = [5, 10, 15, 30, 45, 60, 90, 180, 360, 720];

/** Crank angles to mark over so many degrees, on steps that divide a turn, no closer than `spacing_px`. */
export function turnTicks(span_deg: number, width_px: number, spacing_px: number): number[] {
  const step = turnSteps_deg.find((each) => (each / span_deg) * width_px >= spacing_px) ?? span_deg;
  const count = Math.floor(span_deg / step + 1e-9);
  return Array.from({ length: count + 1 }, (_, index) => index * step);
}
