import type { WindowGroup } from '../engine.ts';

/**
 * Width of one window across the flow, from its width along the chord or along the bore, less its bridges.
 *
 *   chord = B sin(arc / B)
 *
 * The flow crosses the chordal plane, so the chord carries the area. Bridges are taken as standing near the middle of
 * the window, where arc and chord agree.
 *
 * @param group - a window group; arc <= pi B / 2, chord <= B
 * @param bore  - B [m]
 * @returns clear chordal width [m]
 */
export function clearWidth(group: WindowGroup, bore: number): number {
  const chord = group.widthAlong === 'chord' ? group.width : bore * Math.sin(group.width / bore);
  return chord - group.bridgeWidth;
}

/** Width of one window along the bore, bridges included [m]. arc = B asin(chord / B). */
export function developedWidth(group: WindowGroup, bore: number): number {
  return group.widthAlong === 'chord' ? bore * Math.asin(group.width / bore) : group.width;
}

/** Share of the window's area that a slanted passage presents to the flow [-]: cos(plan) cos(elevation). */
export function slantFactor(group: WindowGroup): number {
  return Math.cos(group.planAngle) * Math.cos(group.elevationAngle);
}
