import { beforeAll, describe, expect, it } from 'vitest';
import { coveringArray } from '../helpers/robustness/covering-array.ts';
import { designs } from '../helpers/robustness/designs.ts';
import type { Drawn } from '../helpers/robustness/draw-design.ts';
import { factors, SMALL } from '../helpers/robustness/factors.ts';
import { judge } from '../helpers/robustness/judge.ts';
import type { Judgement } from '../helpers/robustness/judge.ts';
import { seeded } from '../helpers/robustness/seeded.ts';

/** Fast engines take fewer and cheaper steps. */
const CHEAP_SPEEDS = [2000, 9000] as const;
/** As patient as the app with the designs that hold every pair of options; soon done with the others, most of which need about 60 periods. */
const PATIENT = 300;
const HASTY = 20;

/** What each end has to say for itself. */
const SAYS = {
  refused: /^[\w.[\]]+: .+; allowed: .+/,
  'no periodic state':
    /^no periodic state after \d+ periods: the last one still changed a volume by [\d.e+-]+ %(; .+ misfires without settling)?$/,
  'out of range': /^the gas in [\w ]+ left the range the model accepts \(.+\) near .+ of crank angle$/,
};

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
  const pairs = coveringArray(
    drawn.map(({ levels }) => levels.length),
    seeded(11),
  ).length;
  let judged: readonly (Drawn & Judgement)[] = [];
  beforeAll(() => {
    judged = all.map((design, i) => ({ ...design, ...judge(design, i < pairs ? PATIENT : HASTY) }));
  }, 120_000);
  const ending = (end: Judgement['end'], from = 0, to = all.length) =>
    judged.slice(from, to).filter((each) => each.end === end);

  it('hold every level of every choice and switch of the schema', () => {
    drawn.forEach(({ levels }, i) => {
      expect(new Set(all.map((design) => design.levels[i])).size).toBe(levels.length);
    });
  });

  it('each converge with finite figures and closed balances, or end in a way that is known: none is broken', () => {
    expect(judged).toHaveLength(300);
    expect(ending('broken').map(({ said, speed_rpm, data }) => ({ said, speed_rpm, data }))).toEqual([]);
    expect(ending('solved', pairs).length).toBeGreaterThan(0);
  });

  it('say why, in words without a gap, where they have no answer', () => {
    const silent = judged.filter(
      ({ end, said }) => end in SAYS && !SAYS[end as keyof typeof SAYS].test(said),
    );
    expect(silent.map(({ end, said }) => `${end}: ${said}`)).toEqual([]);
    expect(ending('refused').length).toBeGreaterThan(0);
    expect(ending('no periodic state').length).toBeGreaterThan(0);
  });

  it('are refused by a rule between two fields alone, since each number is drawn where it is allowed', () => {
    // The one rule that can be met is for a relief valve, which half of the designs have, its pressure drawn in a fifth.
    expect(ending('refused').length).toBeLessThan(all.length / 10);
  });

  it('are solved, with patience, whatever the option: every level of every factor is in one that is', () => {
    const solved = ending('solved', 0, pairs);
    const missing = drawn.flatMap(({ name, levels }, i) =>
      levels
        .filter((level) => !solved.some((design) => design.levels[i] === level.name))
        .map((level) => `${name}: ${level.name}`),
    );
    expect(missing).toEqual([]);
  });

  it('are solved, with patience, all but fewer than the rarest option is in', () => {
    const uses = drawn.flatMap(({ levels }, i) =>
      levels.map((level) => all.slice(0, pairs).filter((design) => design.levels[i] === level.name).length),
    );
    const unsolved = ending('no periodic state', 0, pairs).length + ending('out of range', 0, pairs).length;
    expect(unsolved).toBeLessThan(Math.min(...uses));
  });
});
