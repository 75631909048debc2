import type { Engine } from '../engine.ts';
import type { FitReport } from './fit-check.ts';
import type { Found } from './fit-model.ts';
import type { RowParts } from './row-parts.ts';

type Size = Pick<FitReport, 'diameter' | 'length'>;

/**
 * Outer size.
 *
 *   diameter = 2 max( deck + head, sqrt(deck^2 + (fins/2)^2) )    of the circle about the crank axis
 *   length   = (rows - 1) spacing + max(fins, flange) + ends
 */
export function engineSize({ dimensions, masses }: Engine, rows: readonly RowParts[]): Size {
  const { barrel, space } = dimensions;
  const reaches = rows.flatMap(({ cylinders }) =>
    cylinders.map(({ deck }) => Math.max(deck + barrel.head, Math.hypot(deck, barrel.fins / 2))),
  );
  const widest = Math.max(barrel.fins, barrel.flangeAlong);
  return {
    diameter: 2 * Math.max(...reaches),
    length: (rows.length - 1) * masses.rowSpacing + widest + space.ends,
  };
}

export function spaceChecks(engine: Engine, rows: readonly RowParts[]): Found[] {
  const size = engineSize(engine, rows);
  return (['diameter', 'length'] as const).flatMap((kind) => {
    const room = engine.dimensions.space[kind];
    if (room === null) return [];
    return [still(kind, [`engine, ${kind}`, 'space there is'], room - size[kind])];
  });
}

/**
 * Rows along the crank, what of one needs the same room as what of the next.
 *
 *   big ends and what lies between them   s - width - web
 *   skirts and the next row's big ends    s - bore/2 - width/2, where skirts come as low as big ends reach out
 */
export function rowsApart(
  { dimensions, train, masses, cylinder }: Engine,
  rows: readonly RowParts[],
): Found[] {
  if (rows.length < 2) return [];
  const { rods, piston } = dimensions;
  const found = [
    still(
      'rows',
      ['big ends of a row', 'crank between the rows'],
      masses.rowSpacing - rods.bigEndWidth - rods.web,
    ),
  ];
  const lowest = Math.min(
    ...rows.flatMap(({ cylinders }) =>
      cylinders.map(({ deck, cylinder: own }) => deck - own.depthAtTdc - own.stroke - piston.length),
    ),
  );
  if (lowest < train.crankRadius + rods.bigEnd / 2) {
    const apart = masses.rowSpacing - (cylinder.bore + rods.bigEndWidth) / 2;
    found.push(still('rows', ['skirts of a row', 'big ends of the next'], apart));
  }
  return found;
}

const still = (kind: Found['kind'], parts: Found['parts'], clearance: number): Found => ({
  kind,
  parts,
  clearance,
  angle: null,
  curve: null,
  each: [],
});
