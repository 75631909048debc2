import { arc } from 'd3-shape';

/** A piece of a ring about the origin, angles clockwise from the top [degrees]. */
export const sectorPath = (inner: number, outer: number, from_deg: number, to_deg: number): string =>
  arc().digits(2)({
    innerRadius: inner,
    outerRadius: outer,
    startAngle: (from_deg * Math.PI) / 180,
    endAngle: (to_deg * Math.PI) / 180,
  }) ?? '';
