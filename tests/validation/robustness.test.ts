import { describe, expect, it } from 'vitest';
import { coveringArray } from '../helpers/robustness/covering-array.ts';
import { designs } from '../helpers/robustness/designs.ts';
import { factors, SMALL } from '../helpers/robustness/factors.ts';
import { judge } from '../helpers/robustness/judge.ts';
import { seeded } from '../helpers/robustness/seeded.ts';

/** Fast engines take fewer and cheaper steps; few periods do for what settles soon. `npm run fuzz` has the patience. */
const CHEAP_SPEEDS = [2000, 9000] as const;
const PERIODS = 24;

describe('coveringArray', () => {
  it('holds every pair of levels of any two of 12 factors, in far fewer rows than there are combinations', () => {
    const levels = [2, 3, 4, 2, 2, 3, 2, 2, 4, 2, 3, 2];
    const rows = coveringArray(levels, seeded(4));
    for (let a = 0; a < levels.length; a++)
      for (let b = a + 1; b < levels.length; b++) {
        const pairs = new Set(rows.map((row) => `${row[a]} ${row[b]}`));
        expect(pairs.size).toBe(levels[a]! * levels[b]!);
      }
    expect(rows.length).toBeGreaterThanOrEqual(16);
    expect(rows.length).toBeLessThan(40);
  });
});

describe('300 designs of every pair of options, one cylinder each', () => {
  const drawn = factors(SMALL);
  const all = [...designs(drawn, 300, 11, CHEAP_SPEEDS)];

  it('hold every level of every choice and switch of the schema', () => {
    drawn.forEach(({ levels }, i) => {
      expect(new Set(all.map((design) => design.levels[i])).size).toBe(levels.length);
    });
  });

  it('each converge with closed balances, or say why not, in words without a gap', () => {
    const judged = all.map((design) => ({ ...judge(design, PERIODS), speed_rpm: design.speed_rpm }));
    expect(judged.filter(({ end }) => end === 'broken')).toEqual([]);
    // Enough of each that neither is held to nothing.
    const count = (end: string) => judged.filter((each) => each.end === end).length;
    expect(count('solved')).toBeGreaterThan(20);
    expect(count('no periodic state')).toBeGreaterThan(40);
    expect(count('refused')).toBeLessThan(60);
  });
});
