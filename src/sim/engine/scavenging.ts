export interface Scavenging {
  readonly law:
    | { readonly kind: 'perfect mixing' }
    | { readonly kind: 'perfect displacement' }
    /** Displacement until the cylinder holds `displacedShare` of fresh charge, then mixing. */
    | { readonly kind: 'displacement then mixing'; readonly displacedShare: number }
    /** Purity of what leaves, at equally weighted purities of what is inside; both from 0 to 1, rising. */
    | { readonly kind: 'table'; readonly inside: readonly number[]; readonly leaving: readonly number[] };
  /** Share of the transfer inflow that passes straight to the exhaust while both windows flow [-]. */
  readonly shortCircuitShare: number;
  /** Of single cylinders, in the order of rows and cylinders, where theirs is not the common one [-]. */
  readonly ownShortCircuit: readonly (number | null)[];
  /** Width over which a jump of the law is spread, in purity inside [-]. */
  readonly smoothing: number;
  /** A fresh and a burned zone with a temperature each; null where a cylinder is one mixed volume. */
  readonly zones: {
    /** Crank angle in which their difference falls to 1/e once they mix freely, as they do behind shut windows [rad]. */
    readonly mixingAngle: number;
  } | null;
}
