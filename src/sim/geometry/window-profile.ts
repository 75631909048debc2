import { roundedWindowArea, roundedWindowWidth } from './window-area.ts';

/** One group of equal windows as it stands in one cylinder, trim included. */
export interface WindowInCylinder {
  readonly count: number;
  /** Clear chordal width of one window [m]. */
  readonly clearWidth: number;
  readonly topDepth: number;
  readonly floorDepth: number;
  readonly cornerRadius: number;
  /** cos(plan) cos(elevation) [-]. */
  readonly slantFactor: number;
}

/** When a group opens and closes: crank angle after the cylinder's own top dead centre, opens < closes [rad]. */
export interface WindowEvents extends WindowInCylinder {
  readonly opensAfterOwnTdc: number;
  readonly closesAfterOwnTdc: number;
}

/** All windows of one kind in one cylinder: main, boost and auxiliary together. */
export class WindowProfile {
  readonly groups: readonly WindowEvents[];
  /** First to open and last to close, after the cylinder's own top dead centre [rad]. */
  readonly opensAfterOwnTdc: number;
  readonly closesAfterOwnTdc: number;
  /** Highest top edge, below the deck [m]. */
  readonly topDepth: number;
  /** With every group fully uncovered [m^2]. */
  readonly fullArea: number;
  private readonly tops: Float64Array;
  private readonly heights: Float64Array;
  private readonly widths: Float64Array;
  private readonly radii: Float64Array;
  private readonly factors: Float64Array;

  constructor(groups: readonly WindowEvents[]) {
    this.groups = groups;
    this.opensAfterOwnTdc = Math.min(...groups.map((group) => group.opensAfterOwnTdc));
    this.closesAfterOwnTdc = Math.max(...groups.map((group) => group.closesAfterOwnTdc));
    this.topDepth = Math.min(...groups.map((group) => group.topDepth));
    this.tops = Float64Array.from(groups, (group) => group.topDepth);
    this.heights = Float64Array.from(groups, (group) => group.floorDepth - group.topDepth);
    this.widths = Float64Array.from(groups, (group) => group.clearWidth);
    this.radii = Float64Array.from(groups, (group) => group.cornerRadius);
    this.factors = Float64Array.from(groups, (group) => group.count * group.slantFactor);
    this.fullArea = this.area(Infinity);
  }

  /**
   * Effective area uncovered, all groups together; closed form, no allocation.
   *
   *   A = sum over groups of count * cos(plan) cos(elevation) * A_window(depth - top)
   *
   * @param depth - crown edge below the deck [m]
   * @returns [m^2]
   */
  area(depth: number): number {
    let total = 0;
    for (let i = 0; i < this.tops.length; i++) {
      const e = depth - this.tops[i]!;
      if (e > 0)
        total += this.factors[i]! * roundedWindowArea(this.widths[i]!, this.heights[i]!, this.radii[i]!, e);
    }
    return total;
  }

  /** Slope of `area` by the depth [m]. */
  width(depth: number): number {
    let total = 0;
    for (let i = 0; i < this.tops.length; i++) {
      const e = depth - this.tops[i]!;
      if (e > 0)
        total += this.factors[i]! * roundedWindowWidth(this.widths[i]!, this.heights[i]!, this.radii[i]!, e);
    }
    return total;
  }
}
