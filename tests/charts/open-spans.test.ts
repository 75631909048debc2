import { describe, expect, it } from 'vitest';
import { openSpans } from '../../src/charts/open-spans.ts';

describe('openSpans', () => {
  it('finds the stretch with area above zero, from the last shut sample to the first shut one', () => {
    expect(openSpans([0, 1, 2, 3, 4, 5], [0, 0, 2, 3, 0, 0])).toEqual([{ from: 1, to: 4 }]);
  });

  it('finds two stretches when a window is open across the end of the turn', () => {
    expect(openSpans([0, 1, 2, 3, 4], [2, 0, 0, 0, 1])).toEqual([
      { from: 0, to: 1 },
      { from: 3, to: 4 },
    ]);
  });

  it('finds none in a window that stays shut', () => {
    expect(openSpans([0, 1, 2], [0, 0, 0])).toEqual([]);
  });
});
