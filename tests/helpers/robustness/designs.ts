import { coveringArray } from './covering-array.ts';
import { anyRow, drawDesign } from './draw-design.ts';
import type { Drawn } from './draw-design.ts';
import type { Factor } from './factors.ts';
import { seeded } from './seeded.ts';

/** So many designs: the rows of a covering array first, then any. The same seed gives the same designs. */
export function* designs(
  factors: readonly Factor[],
  count: number,
  seed: number,
  speeds?: readonly [number, number],
): Generator<Drawn> {
  const draw = seeded(seed);
  const rows = coveringArray(
    factors.map(({ levels }) => levels.length),
    draw,
  );
  for (let i = 0; i < count; i++) yield drawDesign(factors, rows[i] ?? anyRow(factors, draw), draw, speeds);
}
