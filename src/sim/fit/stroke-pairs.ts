import type { Engine } from '../engine.ts';
import type { FitKind, Pair } from './fit-check.ts';
import type { CylinderParts, RowParts } from './row-parts.ts';

/**
 * Crown and head, skirt edge and window floor, as they stand now, for marking in a drawing. Their least values are closed
 * forms: see `cylinderChecks`.
 */
export function strokePairs({ dimensions, cylinder }: Engine, { rowIndex, cylinders }: RowParts): Pair[] {
  const { barrel, piston } = dimensions;
  const half = cylinder.bore / 2;
  return cylinders.flatMap((one) => {
    const head = one.deck + barrel.headGap;
    const windowFloor = one.deck - deepestFloor(one);
    const pair = (
      kind: FitKind,
      names: readonly [string, string],
      across: number,
      heights: () => readonly [lower: number, upper: number],
    ): Pair => {
      const parts = [`${names[0]} ${one.label}`, `${names[1]} ${one.label}`] as const;
      const gapNow = (): number => {
        const [lower, upper] = heights();
        return upper - lower;
      };
      const contactNow = () => {
        const [lower, upper] = heights();
        const gap = upper - lower;
        return { kind, parts, rowIndex, a: onAxis(one, lower, across), b: onAxis(one, upper, across), gap };
      };
      return { kind, parts, gapNow, contactNow };
    };
    const crown = (): number => pinHeight(one) + piston.pinToCrown;
    return [
      pair('crowns', ['crown', 'head'], 0, () => [crown(), head]),
      pair('covers', ['skirt', 'window floor'], half, () => [crown() - piston.length, windowFloor]),
    ];
  });
}

/** Depth of the deepest window floor below the deck [m]. */
export const deepestFloor = ({ cylinder }: CylinderParts): number =>
  Math.max(...[...cylinder.exhaust.groups, ...cylinder.transfer.groups].map(({ floorDepth }) => floorDepth));

const pinHeight = ({ axisAngle, smallEnd }: CylinderParts): number =>
  smallEnd.x[0]! * Math.cos(axisAngle) + smallEnd.y[0]! * Math.sin(axisAngle);

const onAxis = ({ axisAngle }: CylinderParts, along: number, across: number) => ({
  x: along * Math.cos(axisAngle) - across * Math.sin(axisAngle),
  y: along * Math.sin(axisAngle) + across * Math.cos(axisAngle),
});
