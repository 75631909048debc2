/** 1 below the limit, 0 above it, over `width` about it by 1 - x^2 (3 - 2 x); its slope is continuous. */
function fade(value: number, limit: number, width: number): number {
  const x = (value - limit) / width + 0.5;
  if (x <= 0) return 1;
  if (x >= 1) return 0;
  return 1 - x * x * (3 - 2 * x);
}

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
export const burnedShare = (residual: number, full: number, limit: number, width: number): number =>
  full * fade(residual, limit, width);

/** Mixtures that burn: air over fuel over stoichiometric of the leanest and the richest, and a width in it [-]. */
export interface MixtureLimits {
  readonly leanLimit: number;
  readonly richLimit: number;
  readonly mixtureWidth: number;
}

/**
 * Share of turns in which a mixture lights: 1 well between the limits, a half on either, 0 well beyond; fading as `burnedShare` does.
 *
 * @param lambda - of the trapped charge; Infinity without fuel [-]
 * @returns [-]
 *
 * Valid: mixture at the plug taken as that of the whole charge. Numerics: slope continuous.
 * Source: limits after Zabetakis, US Bureau of Mines Bulletin 627, 1965; the fade is a declared smoothing.
 */
export const mixtureShare = (lambda: number, { leanLimit, richLimit, mixtureWidth }: MixtureLimits): number =>
  fade(lambda, leanLimit, mixtureWidth) * (1 - fade(lambda, richLimit, mixtureWidth));

/** Whether a mixture lies beyond either limit: it is said to misfire, and does so in single turns. */
export const beyondMixture = (
  lambda: number,
  { leanLimit, richLimit }: Pick<MixtureLimits, 'leanLimit' | 'richLimit'>,
): boolean => !(lambda <= leanLimit && lambda >= richLimit);
