import type { Engine } from '../engine.ts';
import { TURN } from '../units.ts';
import type { FitKind } from './fit-check.ts';
import type { Found } from './fit-model.ts';
import { FIT_SAMPLES } from './least-over-turn.ts';
import type { CylinderParts, RowParts } from './row-parts.ts';
import { deepestFloor } from './stroke-pairs.ts';

/**
 * What happens at each cylinder's own top dead centre, and under its crown. Closed forms:
 *
 *   crown to head             depthAtTdc + head gap
 *   skirt past window floors  depthAtTdc + piston length - deepest window floor
 *   small end to crown        pin to crown - crown thickness - small end / 2
 *
 * The first two grow with travel below top dead centre. Below 0 the crown meets the head; the windows open to the crankcase.
 */
export function cylinderChecks({ dimensions }: Engine, rows: readonly RowParts[]): Found[] {
  const { barrel, piston, rods } = dimensions;
  const all = rows.flatMap(({ cylinders }) => cylinders);
  const smallEnd = piston.pinToCrown - piston.crownThickness - rods.smallEnd / 2;
  return [
    atTop('crowns', all, ({ label, cylinder }) => ({
      parts: [`crown ${label}`, `head ${label}`],
      clearance: cylinder.depthAtTdc + barrel.headGap,
    })),
    atTop('covers', all, (one) => ({
      parts: [`skirt ${one.label}`, `window floor ${one.label}`],
      clearance: one.cylinder.depthAtTdc + piston.length - deepestFloor(one),
    })),
    {
      kind: 'smallEnds',
      parts: ['small end', 'underside of the crown'],
      clearance: smallEnd,
      angle: null,
      curve: null,
      each: [],
    },
  ];
}

function atTop(
  kind: FitKind,
  cylinders: readonly CylinderParts[],
  measure: (one: CylinderParts) => Pick<Found, 'parts' | 'clearance'>,
): Found {
  const each = cylinders.map((one) => ({ ...measure(one), angle: one.cylinder.tdc }));
  const worst = each.reduce((least, place, i) => (place.clearance < each[least]!.clearance ? i : least), 0);
  const { travel } = cylinders[worst]!.cylinder;
  const { clearance } = each[worst]!;
  const curve = Float64Array.from({ length: FIT_SAMPLES }, (_, k) => {
    travel.evaluate((k * TURN) / FIT_SAMPLES);
    return clearance + travel.value;
  });
  return { kind, ...each[worst]!, curve, each };
}
