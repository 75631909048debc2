import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { barPieces, pinnedEnds } from '../../src/charts/bar-pieces.ts';
import { barPlaces } from '../../src/charts/bar-places.ts';

const crown = [3, -1];
const head = [2, NaN];

describe('barPieces', () => {
  it('stand each on zero side by side, and one on the other in a stack', () => {
    expect(barPieces([crown, head], 1, true)[0]).toEqual([
      { low: 0, high: 3 },
      { low: 0, high: 2 },
    ]);
    expect(barPieces([crown, head], 1, false)[0]).toEqual([
      { low: 0, high: 3 },
      { low: 3, high: 5 },
    ]);
  });

  it('with one missing leave that one out side by side, and the whole of a stack', () => {
    expect(barPieces([crown, head], 2, true)[1]).toEqual([{ low: -1, high: 0 }, null]);
    expect(barPieces([crown, head], 2, false)[1]).toEqual([null, null]);
  });
});

describe('pinnedEnds', () => {
  it('are each series’ own side by side, and their sum in a stack', () => {
    expect(pinnedEnds([crown, head], 2, true)).toEqual([
      [3, 2],
      [-1, NaN],
    ]);
    expect(pinnedEnds([crown, head], 2, false)).toEqual([[5], [NaN]]);
  });

  it('are none while one series has nothing pinned', () => {
    expect(pinnedEnds([crown, undefined], 2, true)).toEqual([[], []]);
  });

  it('are a gap for a bar that was not there before', () => {
    expect(pinnedEnds([[3]], 2, true)).toEqual([[3], [null]]);
  });
});

describe('barPlaces', () => {
  it('find every bar by the middle of its column, and the last ones beyond the ends', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 120, max: 1400 }), (count, right) => {
        const { middle, indexAt, width, step } = barPlaces(count, 46, right);
        for (let i = 0; i < count; i++) expect(indexAt(middle(i))).toBe(i);
        expect([indexAt(0), indexAt(right + 50)]).toEqual([0, count - 1]);
        expect(width).toBeLessThanOrEqual(Math.max(2, step));
      }),
      { seed: 3 },
    );
  });

  it('name every bar of seven over 400 px, every fourth of 56', () => {
    expect([7, 56].map((count) => barPlaces(count, 0, 400).nameEvery)).toEqual([1, 4]);
  });
});
