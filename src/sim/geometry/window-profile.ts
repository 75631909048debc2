import { RoundedWindow } from './window-area.ts';

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
  /** What `uncover` reads: crown edge below the deck [m]. */
  depth = 0;
  /** What `uncover` writes: effective area uncovered [m^2], and its slope by the depth [m]. */
  openArea = 0;
  openWidth = 0;
  private readonly windows: readonly RoundedWindow[];
  private readonly tops: Float64Array;
  private readonly factors: Float64Array;

  constructor(groups: readonly WindowEvents[]) {
    this.groups = groups;
    this.opensAfterOwnTdc = Math.min(...groups.map((group) => group.opensAfterOwnTdc));
    this.closesAfterOwnTdc = Math.max(...groups.map((group) => group.closesAfterOwnTdc));
    this.topDepth = Math.min(...groups.map((group) => group.topDepth));
    this.windows = groups.map(
      ({ clearWidth, floorDepth, topDepth, cornerRadius }) =>
        new RoundedWindow(clearWidth, floorDepth - topDepth, cornerRadius),
    );
    this.tops = Float64Array.from(groups, (group) => group.topDepth);
    this.factors = Float64Array.from(groups, (group) => group.count * group.slantFactor);
    this.fullArea = this.area(Infinity);
  }

  /**
   * Effective area uncovered, all groups together; closed form, no allocation.
   *
   *   A = sum over groups of count * cos(plan) cos(elevation) * A_window(depth - top)
   */
  uncover(): void {
    const { windows, tops, factors, depth } = this;
    this.openArea = 0;
    this.openWidth = 0;
    for (let i = 0; i < windows.length; i++) {
      const window = windows[i]!;
      window.e = depth - tops[i]!;
      if (!(window.e > 0)) continue;
      window.uncover();
      this.openArea += factors[i]! * window.area;
      this.openWidth += factors[i]! * window.breadth;
    }
  }

  /** `uncover` at one depth [m]. @returns the area [m^2] */
  area(depth: number): number {
    this.depth = depth;
    this.uncover();
    return this.openArea;
  }
}
