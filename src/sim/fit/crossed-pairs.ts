import type { Engine } from '../engine.ts';
import type { FitKind, Pair } from './fit-check.ts';
import { roundBarrelGap, squareBarrelGap } from './crossed-barrels.ts';
import type { CrossedBarrels } from './crossed-barrels.ts';
import type { CylinderParts, RowParts } from './row-parts.ts';

/** Barrels of different rows against each other. */
export function crossedPairs(engine: Engine, rows: readonly RowParts[]): Pair[] {
  return rows.flatMap((front, i) =>
    rows
      .slice(i + 1)
      .flatMap((rear) =>
        front.cylinders.flatMap((one) =>
          rear.cylinders.flatMap((other) => crossed(engine, front.rowIndex, rear.rowIndex, one, other)),
        ),
      ),
  );
}

function crossed(
  { train, dimensions, masses }: Engine,
  rowIndex: number,
  rearIndex: number,
  one: CylinderParts,
  other: CylinderParts,
): Pair[] {
  const { barrel } = dimensions;
  const turn = train.rows[rearIndex]!.staggerAngle - train.rows[rowIndex]!.staggerAngle;
  const angle = withinHalfTurn(other.axisAngle + turn - one.axisAngle);
  const apart = (rearIndex - rowIndex) * masses.rowSpacing;
  const at = (from: number): CrossedBarrels => ({ angle: Math.abs(angle), apart, from });
  const pair = (kind: FitKind, part: string, from: number, gap: number): Pair => {
    const parts = [`${part} ${one.label}`, `${part} ${other.label}`] as const;
    // Seen along the crank they meet on the bisector of their axes.
    const out = from * Math.cos(angle / 2);
    const bisector = one.axisAngle + angle / 2;
    const point = { x: out * Math.cos(bisector), y: out * Math.sin(bisector) };
    return {
      kind,
      parts,
      gapNow: () => gap,
      contactNow: () => ({ kind, parts, rowIndex, a: point, b: point, gap }),
    };
  };
  const base = Math.min(one.base, other.base);
  const fins = Math.min(one.deck, other.deck) - barrel.finsFrom;
  const mouth = base - barrel.mouthDepth;
  return [
    pair('flanges', 'flange', base, squareBarrelGap(at(base), barrel.flange, barrel.flangeAlong)),
    pair('fins', 'fins', fins, roundBarrelGap(at(fins), barrel.fins)),
    pair('mouths', 'mouth', mouth, roundBarrelGap(at(mouth), barrel.mouth)),
  ];
}

const withinHalfTurn = (angle: number): number => Math.atan2(Math.sin(angle), Math.cos(angle));
