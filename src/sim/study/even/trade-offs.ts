import { MEASURES, rank } from './ranking.ts';
import type { Alternative, Measure } from './ranking.ts';

/** A way that is better than the one as built in something, and what it costs. */
export interface TradeOff {
  readonly way: Alternative;
  /** What it is clearly better and clearly worse in, the first being what it was looked up for. */
  readonly better: readonly Measure[];
  readonly worse: readonly Measure[];
}

/** Difference below which two ways are as good as each other, over the larger of both [-]. */
const CLEARLY = 0.05;

const differs = (a: number, b: number): boolean =>
  Math.abs(a - b) > CLEARLY * Math.max(Math.abs(a), Math.abs(b)) && Math.abs(a - b) > 1e-9;

/**
 * Why an engine is put together as it is: for every measure in which another arrangement of its rows does clearly better, the best of
 * them, and what it does worse. Without an entry nothing beats the way as built in anything.
 */
export function tradeOffs(ways: readonly Alternative[]): readonly TradeOff[] {
  const built = ways.find(({ altered }) => altered === 'nothing');
  if (!built?.measures) return [];
  const now = built.measures;
  const found = new Map<string, TradeOff>();
  for (const measure of MEASURES) {
    const [best] = rank(
      ways.filter(({ altered }) => altered === 'rows'),
      measure,
    );
    if (!best?.measures || found.has(best.key)) continue;
    const then = best.measures;
    if (!(then[measure] < now[measure] && differs(then[measure], now[measure]))) continue;
    const clear = MEASURES.filter((each) => differs(then[each], now[each]));
    const better = clear.filter((each) => then[each] < now[each] && each !== measure);
    found.set(best.key, {
      way: best,
      better: [measure, ...better],
      worse: clear.filter((each) => then[each] > now[each]),
    });
  }
  return [...found.values()];
}
