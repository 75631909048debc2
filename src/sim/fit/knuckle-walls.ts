import type { Engine } from '../engine.ts';
import type { FitPlace } from './fit-check.ts';
import type { Found } from './fit-model.ts';
import { neighbours } from './row-pairs.ts';
import type { RowParts } from './row-parts.ts';

/**
 * Metal left round the knuckle pins in the master rod's flange.
 *
 *   to the rim            D/2 - k - d/2
 *   to the bearing's hole k - d/2 - D_hole/2
 *   between two pins      |K_i - K_j| - d        (equal radii, even angles: 2 k sin(pi/N) - d)
 */
export function knuckleWalls({ dimensions }: Engine, rows: readonly RowParts[]): Found[] {
  const { bigEnd, bigEndBore, knucklePin } = dimensions.rods;
  return rows.flatMap(({ articulated, cylinders }) => {
    if (!articulated) return [];
    const place = (first: string, second: string, clearance: number): FitPlace => ({
      parts: [first, second],
      clearance,
      angle: null,
    });
    const each = cylinders.flatMap((one) => {
      if (!one.eye) return [];
      const pin = `knuckle pin ${one.label}`;
      return [
        place(pin, 'rim of the flange', bigEnd / 2 - one.knuckleRadius - knucklePin / 2),
        place(pin, 'big-end bearing', one.knuckleRadius - (knucklePin + bigEndBore) / 2),
      ];
    });
    for (const [one, other] of neighbours(cylinders, ({ knuckleAngle }) => knuckleAngle)) {
      if (!one.eye || !other.eye) continue;
      const turn = other.knuckleAngle - one.knuckleAngle;
      const [k, l] = [one.knuckleRadius, other.knuckleRadius];
      const between = Math.sqrt(k * k + l * l - 2 * k * l * Math.cos(turn)) - knucklePin;
      each.push(place(`knuckle pin ${one.label}`, `knuckle pin ${other.label}`, between));
    }
    const least = each.reduce((best, one) => (one.clearance < best.clearance ? one : best));
    return [{ kind: 'knuckleWalls', ...least, curve: null, each: [] } satisfies Found];
  });
}
