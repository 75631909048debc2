/** Radius at which a gap's bar ends: outside the even circle where it is longer than even, inside where shorter. */
export interface GapBars {
  radiusOf(gap_deg: number): number;
}

/**
 * Bars of gaps about a circle that stands for even spacing. The largest departure takes the room there is, but a small
 * one is not blown up beyond `most_pxPerShare`, so that a nearly even engine looks nearly even.
 *
 * @param even_deg - what every gap would be if all were alike
 * @param radius   - of the even circle [px]
 * @param room     - to either side of it [px]
 */
export function gapBars(
  gaps_deg: readonly number[],
  even_deg: number,
  radius: number,
  room: number,
  most_pxPerShare = 180,
): GapBars {
  const shareOf = (gap_deg: number): number => gap_deg / even_deg - 1;
  const largest = Math.max(0, ...gaps_deg.map((gap) => Math.abs(shareOf(gap))).filter(Number.isFinite));
  const scale = largest > 0 ? Math.min(most_pxPerShare, room / largest) : 0;
  return { radiusOf: (gap_deg) => radius + scale * shareOf(gap_deg) };
}
