import type { DirectionalCoefficient } from './directional-coefficient.ts';
import type { WallPatch } from './wall-patch.ts';

export interface Plenum {
  readonly volume: number;
  readonly wall: WallPatch;
  /** Relief valve to ambient, or null. Lifts in proportion from cracking to full-open pressure difference, see cycle/flows/relief-valve.ts. */
  readonly relief: {
    readonly crackingPressure: number;
    readonly fullOpenPressure: number;
    /** At which it shuts again, <= cracking: the difference is twice the friction on its stem over its area [Pa]. */
    readonly reseatingPressure: number;
    readonly area: number;
    readonly dischargeCoefficient: number;
  } | null;
  readonly bypass: Bypass | null;
}

/** An opening from the plenum round the blowers. */
export interface Bypass {
  readonly into: 'inlet box' | 'air';
  readonly area: number;
  readonly dischargeCoefficient: number;
  /** Plenum above ambient where it begins to open, and by how much more it is fully open [Pa]; null: always open. */
  readonly control: { readonly opensAt: number; readonly range: number } | null;
}

/** One transfer passage for each cylinder. */
export interface Passages {
  readonly volume: number;
  /** Area where the passage leaves the plenum [m^2]. */
  readonly entryArea: number;
  readonly entryDischarge: DirectionalCoefficient;
  /** Of the column of gas in one passage, whose inertia is then reckoned with; null: flow follows pressure at once [m]. */
  readonly length: number | null;
  readonly wall: WallPatch;
}

export interface Collector {
  readonly volume: number;
  readonly outletArea: number;
  readonly outletDischarge: DirectionalCoefficient;
  /** Behind the outlet, with the inertia of its gas; friction is Darcy's factor [m], [m^2], [-]. Null for none. */
  readonly pipe: { readonly length: number; readonly area: number; readonly friction: number } | null;
  readonly wall: WallPatch;
}
export type Collectors = readonly Collector[];

export interface Crankcase {
  /** Whether it is part of the plenum; else it is vented to the air. */
  readonly isPlenum: boolean;
  /** Free volume with every piston half way down its stroke [m^3]. */
  readonly volume: number;
  /** To the air, both ways; unused where it is the plenum. */
  readonly breather: { readonly area: number; readonly dischargeCoefficient: number };
  /** Past the rings of one piston, from cylinder to crankcase and back. */
  readonly blowBy: { readonly area: number; readonly dischargeCoefficient: number };
  readonly wall: WallPatch;
}
