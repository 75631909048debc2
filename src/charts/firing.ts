/** What happens once a turn in one cylinder, at which crank angle [degrees]. */
export interface DialEvent {
  readonly label: string;
  readonly tdc_deg: number;
  readonly exhaust_deg: number;
  readonly transfer_deg: number;
  readonly selected: boolean;
}

/** Cylinders that stand on one circle of the dial, such as those of a row. */
export interface Ring {
  readonly label: string;
  readonly events: readonly DialEvent[];
}

/** From one top dead centre to the next of all cylinders. */
export interface Gap {
  readonly from: string;
  readonly to: string;
  /** Where it ends. */
  readonly at_deg: number;
  readonly gap_deg: number;
}
