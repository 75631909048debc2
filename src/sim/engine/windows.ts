import type { DischargeCoefficients } from '../exchange/discharge-table.ts';
import type { DirectionalCoefficient } from './directional-coefficient.ts';

export interface Windows {
  readonly exhaust: readonly WindowGroup[];
  readonly transfer: readonly WindowGroup[];
  /** Where a table is given: its values wide open, without a pressure difference. */
  readonly exhaustDischarge: DirectionalCoefficient;
  readonly transferDischarge: DirectionalCoefficient;
  /** Used instead, where not null. */
  readonly exhaustTable: DischargeCoefficients | null;
  readonly transferTable: DischargeCoefficients | null;
}

/** Equal windows of one kind; several groups of one kind make main, boost and auxiliary windows. */
export interface WindowGroup {
  readonly count: number;
  /** Width of one window, as `widthAlong` says, over bridges [m]. */
  readonly width: number;
  readonly widthAlong: 'chord' | 'bore circumference';
  /** Total width of the bridges within one window [m]. */
  readonly bridgeWidth: number;
  /** Top edge: depth below the deck [m], or the master cylinder's crank angle at opening [rad]. */
  readonly top:
    | { readonly kind: 'depth'; readonly depth: number }
    | { readonly kind: 'angle'; readonly opensAfterTdc: number };
  /** Depth of the floor below the deck; null = flush with the crown at the master's bottom dead centre [m]. */
  readonly floorDepth: number | null;
  readonly cornerRadius: number;
  /** Angle of the passage axis from the window's normal, in plan and in elevation [rad]. */
  readonly planAngle: number;
  readonly elevationAngle: number;
}
