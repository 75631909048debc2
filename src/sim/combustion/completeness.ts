/**
 * Share of the fresh charge that burns.
 *
 *   share = full (1 - s((r - (limit - width/2)) / width)),   s(x) = x^2 (3 - 2 x) on 0..1
 *
 * @param residual - r, mass fraction of burned gas in the trapped charge [-]
 * @param full     - at low residual; 0.96-0.98 typical [-]
 * @param limit    - residual at which half of it burns, and from which a misfire is flagged [-]
 * @param width    - over which burning fades, > 0 [-]
 * @returns [-]
 *
 * Valid: stands for the average over turns; real engines skip turns near the limit (the turn-by-turn mode shows that). CO and H2 of a
 * rich mixture are in the products already and are not counted here.
 * Numerics: slope continuous, so that the periodic solution exists beside the limit.
 * Source: Heywood 1988, sec. 4.9.4 for 0.95-0.98; the fade is a declared smoothing, not a measurement.
 */
export function burnedShare(residual: number, full: number, limit: number, width: number): number {
  const x = (residual - limit) / width + 0.5;
  if (x <= 0) return full;
  if (x >= 1) return 0;
  return full * (1 - x * x * (3 - 2 * x));
}
