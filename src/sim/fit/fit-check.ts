import type { Point } from '../geometry/rod-points.ts';

/** What is held against what. The order is that of the tables. */
export const FIT_KINDS = [
  'crowns',
  'covers',
  'skirts',
  'rodsInSkirts',
  'rodsAtMouths',
  'rods',
  'bigEnds',
  'eyes',
  'knuckleWalls',
  'smallEnds',
  'flanges',
  'fins',
  'mouths',
  'rows',
  'diameter',
  'length',
] as const;
export type FitKind = (typeof FIT_KINDS)[number];

export type FitVerdict = 'collides' | 'may touch' | 'clear';

/** Where two parts come nearest at some crank angle, in the frame of a row; apart or overlapping by `gap` [m]. */
export interface Contact {
  readonly kind: FitKind;
  readonly parts: readonly [string, string];
  readonly rowIndex: number;
  readonly a: Point;
  readonly b: Point;
  readonly gap: number;
}

/** Two parts that might touch. */
export interface Pair {
  readonly kind: FitKind;
  /** What the two are called: `skirt A3`, `rod A4`. */
  readonly parts: readonly [string, string];
  /** As the crank stands: negative by how far they overlap [m]. */
  readonly gapNow: () => number;
  /** Null where it cannot be shown in a view along the crank. */
  readonly contactNow: () => Contact | null;
}

/** One of the places where a check was made. */
export interface FitPlace {
  readonly parts: readonly [string, string];
  readonly clearance: number;
  /** Crank angle of the least clearance; null where it does not change [rad]. */
  readonly angle: number | null;
}

export interface FitCheck extends FitPlace {
  readonly kind: FitKind;
  /** How far the clearance may be out, all tolerances the wrong way at once [m]. */
  readonly tolerance: number;
  readonly verdict: FitVerdict;
  /** Clearance of these two parts at `FIT_SAMPLES` even crank angles from 0; null where it does not change [m]. */
  readonly curve: Float64Array | null;
  /** Cylinder by cylinder, or wall by wall, where that is asked of this kind. */
  readonly each: readonly FitPlace[];
}

export interface FitReport {
  /** In the order of `FIT_KINDS`; kinds that this engine has no parts for are left out. */
  readonly checks: readonly FitCheck[];
  /** Of the circle about the crank axis that all barrels and heads stay in, and of all along the crank [m]. */
  readonly diameter: number;
  readonly length: number;
}

export const verdictOf = (clearance: number, tolerance: number): FitVerdict =>
  clearance < 0 ? 'collides' : clearance < tolerance ? 'may touch' : 'clear';
