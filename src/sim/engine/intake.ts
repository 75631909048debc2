import type { WallPatch } from './wall-patch.ts';

export interface Intake {
  readonly throttle: {
    readonly kind: 'butterfly' | 'slide';
    readonly bore: number;
    /** Shaft diameter over bore; butterfly only. */
    readonly shaftRatio: number;
    /** Plate angle at the closed stop; butterfly only [rad]. */
    readonly closedAngle: number;
    /** Share of the bore area that stays open when closed [-]. */
    readonly leakShare: number;
    readonly dischargeCoefficient: number;
  };
  /** Fixed restrictor ahead of all else, and fixed venturi ahead of the throttle; null for none. */
  readonly restrictor: Throat | null;
  readonly venturi: Throat | null;
  /** Flame arrester behind the throttle: pressure loss is K rho w^2 / 2, w over the whole of its area [m^2]; or null. */
  readonly arrester: { readonly area: number; readonly lossFactor: number } | null;
  /** Gas between throttle and blower. */
  readonly boxVolume: number;
  readonly boxWall: WallPatch;
}

/** A fixed round throat in the intake. */
export interface Throat {
  readonly bore: number;
  readonly dischargeCoefficient: number;
  /** Share of the pressure drop to the throat that its diffuser wins back [-]. */
  readonly recovered: number;
}
