import type { GeometryInput } from '../../../src/sim/geometry/build-geometry.ts';
import { mm } from '../../../src/sim/units.ts';
import { built, engineWith, evenRow, windowGroup } from './workshop.ts';

const top = (depth_mm: number) => ({ top: { kind: 'depth', depth: depth_mm * mm } }) as const;

/** The independent five-cylinder check: decks lowered so that each crown reaches its own deck at its own top dead centre. */
export function referenceFive(): GeometryInput {
  const options = {
    crankRadius: 20 * mm,
    masterRod: 90 * mm,
    knuckle: 20 * mm,
    exhaust: [windowGroup(top(24))],
    transfer: [windowGroup(top(30))],
  };
  const atOneHeight = built({ ...engineWith({ ...options, ...row(() => 0) }) });
  return engineWith({ ...options, ...row((j) => -atOneHeight.cylinders[j]!.depthAtTdc) });
  function row(offset: (j: number) => number) {
    const change = (_: unknown, j: number) => ({ barrelOffset: offset(j) });
    return { rows: [evenRow({ count: 5, masterRod: 90 * mm, knuckle: 20 * mm, change })] };
  }
}
