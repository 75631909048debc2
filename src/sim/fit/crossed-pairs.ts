import type { Engine } from '../engine.ts';
import type { Contact, Pair } from './fit-check.ts';
import { roundBarrelGap, squareBarrelGap } from './crossed-barrels.ts';
import type { CrossedBarrels } from './crossed-barrels.ts';
import type { CylinderParts, RowParts } from './row-parts.ts';

/** Barrels of different rows against each other. */
export function crossedPairs({ train, dimensions, masses }: Engine, rows: readonly RowParts[]): Pair[] {
  const { barrel } = dimensions;
  return rows.flatMap((front, i) =>
    rows.slice(i + 1).flatMap((rear) =>
      front.cylinders.flatMap((one) =>
        rear.cylinders.flatMap((other) => {
          const turn = train.rows[rear.rowIndex]!.staggerAngle - train.rows[front.rowIndex]!.staggerAngle;
          const apart = (rear.rowIndex - front.rowIndex) * masses.rowSpacing;
          const between = other.axisAngle + turn - one.axisAngle;
          const angle = Math.abs(Math.atan2(Math.sin(between), Math.cos(between)));
          const at = (from: number): CrossedBarrels => ({ angle, apart, from });
          const pair = (kind: Pair['kind'], part: string, from: number, gap: number): Pair => ({
            kind,
            parts: [`${part} ${one.label}`, `${part} ${other.label}`],
            gapNow: () => gap,
            contactNow: () => crossing(front.rowIndex, one, between, from * Math.cos(angle / 2), gap),
          });
          const base = Math.min(one.base, other.base);
          const fins = Math.min(one.deck, other.deck) - barrel.finsFrom;
          const mouth = base - barrel.mouthDepth;
          return [
            pair('flanges', 'flange', base, squareBarrelGap(at(base), barrel.flange, barrel.flangeAlong)),
            pair('fins', 'fins', fins, roundBarrelGap(at(fins), barrel.fins)),
            pair('mouths', 'mouth', mouth, roundBarrelGap(at(mouth), barrel.mouth)),
          ];
        }),
      ),
    ),
  );
}

/** Seen along the crank they meet on the bisector of their axes. */
function crossing(rowIndex: number, one: CylinderParts, between: number, out: number, gap: number): Contact {
  const bisector = one.axisAngle + Math.atan2(Math.sin(between), Math.cos(between)) / 2;
  const point = { x: out * Math.cos(bisector), y: out * Math.sin(bisector) };
  return { rowIndex, a: point, b: point, gap };
}
