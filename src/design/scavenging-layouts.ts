/**
 * Shares of the displacement-then-mixing law by layout of the windows, where a design gives none.
 *
 * Typical starting values, not measured ones; ranges: loop 0.3-0.5 and 0-0.07, cross 0.1-0.3 and 0.05-0.15, uniflow
 * 0.5-0.7 and 0-0.02. Form: Benson & Brandham, Int. J. Mech. Sci. 11, 1969; restated by Blair, 1996.
 */
export const SCAVENGING_BY_LAYOUT = {
  loop: { displacedShare: 0.4, shortCircuitShare: 0.05 },
  cross: { displacedShare: 0.2, shortCircuitShare: 0.1 },
  uniflow: { displacedShare: 0.6, shortCircuitShare: 0.01 },
} as const;
