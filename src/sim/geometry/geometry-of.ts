import type { Outcome } from '../outcome.ts';
import { buildGeometry } from './build-geometry.ts';
import type { EngineGeometry, GeometryInput } from './build-geometry.ts';

/** Shapes remembered: those of a design and of what it is compared with. */
const MOST = 4;
const remembered = new Map<string, Outcome<EngineGeometry>>();

/**
 * As `buildGeometry`, but a shape that was built lately is not built again: it takes 2 ms, more than half a period of Lovage 7, and most
 * changes of a design leave the shape alone.
 *
 * The answer depends on the shape alone; only sound ones are kept, so whatever is at fault is always looked at anew.
 */
export function geometryOf({ train, cylinder, windows }: GeometryInput): Outcome<EngineGeometry> {
  const shape = JSON.stringify([train, cylinder, windows]);
  const known = remembered.get(shape);
  if (known) return known;
  const built = buildGeometry({ train, cylinder, windows });
  if (built.ok) {
    if (remembered.size >= MOST) remembered.delete([...remembered.keys()][0]!);
    remembered.set(shape, built);
  }
  return built;
}
