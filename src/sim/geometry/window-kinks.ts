import { withinTurn } from './angles.ts';
import { crownPasses } from './crown-passes.ts';
import type { DeckedCylinder } from './place-windows.ts';
import type { WindowProfile } from './window-profile.ts';

/** An edge this close to a dead centre is touched, not passed: a nanometre of window has no area [m]. */
const TOUCH = 1e-9;

/** Kinks closer than this are one [rad]. */
const MERGE = 1e-9;

/**
 * Crank angles at which the area of a window has a kink: where the crown passes the top edge, the ends of the corner
 * radii, and the floor, both ways. For placing integration steps.
 *
 * @param cylinder - a piston with its deck
 * @param profiles - its windows
 * @returns rising, in [0, 2 pi), each once [rad]
 */
export function windowKinks(cylinder: DeckedCylinder, profiles: readonly WindowProfile[]): readonly number[] {
  const tdc = cylinder.topPin - cylinder.pinOffset;
  const angles = profiles
    .flatMap((profile) => profile.groups)
    .flatMap(({ topDepth, floorDepth, cornerRadius }) => [
      topDepth,
      topDepth + cornerRadius,
      floorDepth - cornerRadius,
      floorDepth,
    ])
    .filter((depth) => depth > cylinder.depthAtTdc + TOUCH && depth < cylinder.depthAtBdc - TOUCH)
    .flatMap((depth) => {
      const { down, up } = crownPasses(cylinder, depth - cylinder.depthAtTdc);
      return [withinTurn(tdc + down), withinTurn(tdc + up)];
    })
    .sort((a, b) => a - b);
  return angles.filter((angle, i) => i === 0 || angle - angles[i - 1]! > MERGE);
}
