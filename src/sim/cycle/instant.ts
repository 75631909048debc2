/** Where the step stands; elements read it, the system writes it. */
export interface Instant {
  /** Crank angle from the start of the period [rad]. */
  theta: number;
  /** Length of the step in hand [rad]. */
  span: number;
  /** Angle turned before this period began: where the rotors stand [rad]. */
  before: number;
  /** Crank speed, constant over a period [rad/s]. */
  readonly omega: number;
}

/** Computes the flow of its edges at the present instant from the unpacked gas. */
export interface FlowElement {
  setFlows(): void;
}

/**
 * Adds to the rates of its nodes what no edge carries: heat, work, reaction. What it must account for it writes to its
 * own records when `record` is set: `recordCount` numbers from `recordAt` on, each a rate to be integrated.
 */
export interface Source {
  readonly recordCount: number;
  recordAt: number;
  addTo(rates: Float64Array, record: boolean): void;
}

/**
 * Adds to a whole step what is integrated exactly over it and spread evenly, such as burning: `prepare` works it out at the
 * beginning of the step, `addTo` adds `weight` times its rates to a vector of the state. Records as `Source`.
 */
export interface StepSource {
  readonly recordCount: number;
  recordAt: number;
  /** [s] */
  weight: number;
  prepare(): void;
  addTo(vector: Float64Array, record: boolean): void;
}
