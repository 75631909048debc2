import type { Stretch } from '../../../charts/chart-types.ts';
import type { RunningTurn } from '../../../sim/study/turns/running-turns.ts';

/** Half the width of a mark for one turn [turns]. */
const HALF = 0.35;

/** A mark for every charge that burned, a row for each cylinder; cylinders that never fire keep an empty one. */
export const firings = (turns: readonly RunningTurn[], labels: readonly string[]): Stretch[] =>
  labels.flatMap((label, j): Stretch[] => {
    const lit = turns.filter(({ cylinders }) => cylinders[j]?.fired);
    const colour = 'var(--burned)';
    if (lit.length === 0) return [{ from: 1, to: 1, label, colour }];
    return lit.map(({ turn }) => ({
      from: Math.max(1, turn - HALF),
      to: Math.min(turns.length, turn + HALF),
      label,
      colour,
    }));
  });
