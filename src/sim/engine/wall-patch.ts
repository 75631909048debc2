/** A wall that holds a given temperature and exchanges heat with the gas beside it. */
export interface WallPatch {
  readonly area: number;
  readonly temperature: number;
  /** Hydraulic diameter for the Nusselt number [m]. */
  readonly hydraulicDiameter: number;
  /** Multiplier on the smooth-tube Nusselt number [-]. */
  readonly enhancement: number;
}
