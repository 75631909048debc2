import type { Drawn } from './draw-design.ts';
import type { Judgement } from './judge.ts';

/** How one of many drawn designs ended. */
export interface Ended extends Judgement {
  /** Its place among those drawn, from 1. */
  readonly number: number;
  readonly speed_rpm: Drawn['speed_rpm'];
  readonly throttle: Drawn['throttle'];
}

/** What is known of many designs. */
export interface Tally {
  readonly done: number;
  readonly ends: ReadonlyMap<Judgement['end'], number>;
  /** What was said by those without an answer, numbers left out, most frequent first. */
  readonly sayings: readonly (readonly [said: string, times: number])[];
  readonly broken: readonly string[];
  readonly worstDefect: number;
  readonly worstChange: number;
}

const count = <K>(into: Map<K, number>, key: K): void => void into.set(key, (into.get(key) ?? 0) + 1);

/** Counts how designs ended, whatever the order they come in. */
export function tally(ended: readonly Ended[]): Tally {
  const ends = new Map<Judgement['end'], number>();
  const sayings = new Map<string, number>();
  for (const { end, said } of ended) {
    count(ends, end);
    if (end === 'solved' || end === 'broken') continue;
    count(
      sayings,
      said.replace(/[\d.,−-]+/g, '#').replace(/(of charge|in) (cylinder|passage) \w+/g, '$1 a $2'),
    );
  }
  const worst = (of: 'defect' | 'change') => ended.reduce((most, each) => Math.max(most, each[of] ?? 0), 0);
  return {
    done: ended.length,
    ends,
    sayings: [...sayings].sort(([a, m], [b, n]) => n - m || a.localeCompare(b)),
    broken: ended
      .filter(({ end }) => end === 'broken')
      .sort((a, b) => a.number - b.number)
      .map((each) => `design ${each.number}, ${each.speed_rpm} rpm, throttle ${each.throttle}: ${each.said}`),
    worstDefect: worst('defect'),
    worstChange: worst('change'),
  };
}
