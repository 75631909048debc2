import type { Model } from '../cycle/model.ts';
import { percent } from '../units.ts';
import type { Note, SolvedPoint } from './point-result.ts';

/**
 * Where discharge tables end before the cycle does: their last column then holds, which a reader must know. Judged at the points of
 * the step mesh, each direction by itself.
 */
export function beyondTables({ engine, network }: Model, { traces }: Pick<SolvedPoint, 'traces'>): Note[] {
  const collectorOf = (j: number) =>
    traces.collectors[network.at.collectors.indexOf(network.edges[network.through.exhausts[j]!]!.to)]!;
  const kinds = [
    {
      name: 'exhaust',
      table: engine.windows.exhaustTable,
      before: (j: number) => traces.cylinders[j]!.pressure,
      behind: (j: number) => collectorOf(j).pressure,
      flow: (j: number) => traces.cylinders[j]!.exhaustFlow,
    },
    {
      name: 'transfer',
      table: engine.windows.transferTable,
      before: (j: number) => traces.passages[j]!.pressure,
      behind: (j: number) => traces.cylinders[j]!.pressure,
      flow: (j: number) => traces.cylinders[j]!.transferFlow,
    },
  ];
  return kinds.flatMap(({ name, table, before, behind, flow }) => {
    if (!table) return [];
    const last = table.pressureRatios.at(-1)!;
    let largest = 1;
    let out = 0;
    let open = 0;
    traces.cylinders.forEach((_, j) => {
      const [p, q, m] = [before(j), behind(j), flow(j)];
      for (let i = 0; i < m.length; i++) {
        if (m[i] === 0) continue;
        const ratio = m[i]! > 0 ? p[i]! / q[i]! : q[i]! / p[i]!;
        open++;
        if (ratio > last) out++;
        largest = Math.max(largest, ratio);
      }
    });
    if (out === 0) return [];
    const share = (out / open / percent).toPrecision(2);
    const text =
      `The discharge table of the ${name} windows is left: pressure ratios reach ${largest.toFixed(2)}, it ends at ${last}. ` +
      `Outside its table, ${share} % of the points with flow, the coefficients of its last pressure ratio are used.`;
    return [{ kind: 'assumption' as const, text }];
  });
}
