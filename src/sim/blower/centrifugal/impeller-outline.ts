import type { Impeller } from '../../engine.ts';
import { TURN } from '../../units.ts';

/** Radius from which blades are drawn, and their thickness, over the tip radius. */
const EYE = 0.35;
const THICKNESS = 0.05;
const STEPS = 8;

/**
 * Corners of a wheel seen along its shaft, anticlockwise, the root of a blade along +x: blades that leave the eye radially and bend back to
 * their angle at the tip. It turns anticlockwise.
 *
 *   d phi / d r = -tan(beta s) / r,   s = (r - r_eye) / (R - r_eye)
 *
 * For drawing only: nothing is reckoned from it.
 */
export function impellerOutline(
  { blades, backsweep }: Pick<Impeller, 'blades' | 'backsweep'>,
  tipRadius: number,
): { x: number; y: number }[] {
  const camber = [{ r: EYE * tipRadius, phi: 0 }];
  for (let k = 0; k < STEPS; k++) {
    const { r, phi } = camber[k]!;
    const step = ((1 - EYE) * tipRadius) / STEPS;
    const middle = r + step / 2;
    camber.push({ r: r + step, phi: phi - (step * Math.tan(backsweep * ((k + 0.5) / STEPS))) / middle });
  }
  const spot = (r: number, angle: number) => ({ x: r * Math.cos(angle), y: r * Math.sin(angle) });
  return Array.from({ length: blades }, (_, blade) => {
    const at = (TURN * blade) / blades;
    const half = (r: number) => (THICKNESS * tipRadius) / 2 / r;
    return [
      ...camber.map(({ r, phi }) => spot(r, at + phi - half(r))),
      ...[...camber].reverse().map(({ r, phi }) => spot(r, at + phi + half(r))),
    ];
  }).flat();
}
