import type { Combustion } from '../engine.ts';
import type { CylinderFigures, Note } from './point-result.ts';

/** What a reader must know where cylinders are likely to skip turns: how many, and whether burned gas or the mixture is why. */
export function misfireNotes(
  { misfireResidual, leanLimit, richLimit }: Combustion,
  cylinders: readonly Pick<CylinderFigures, 'misfire' | 'purity'>[],
): Note[] {
  const misfiring = cylinders.filter((c) => c.misfire);
  const stale = misfiring.filter((c) => 1 - c.purity > misfireResidual);
  const notes: Note[] = [];
  const note = (count: number, text: string) =>
    notes.push({ kind: 'misfire', text: `${count} of ${cylinders.length} cylinders ${text}` });
  if (stale.length > 0) {
    const worst = Math.max(...stale.map((c) => 1 - c.purity));
    note(
      stale.length,
      `hold more burned gas than they are likely to fire with (up to ${(100 * worst).toFixed(0)} %, limit ${(100 * misfireResidual).toFixed(0)} %): expect misfires. The power shown is an average over them.`,
    );
  }
  const unfit = misfiring.length - stale.length;
  if (unfit > 0) {
    note(
      unfit,
      `trap a mixture beyond what burns (λ ${richLimit} to ${leanLimit}): expect misfires. The power shown is an average over them.`,
    );
  }
  return notes;
}
