import { describe, expect, it } from 'vitest';
import { turnSpans } from '../../src/charts/turn-spans.ts';

describe('turnSpans', () => {
  it('is one piece inside the turn, also when it is counted a turn on', () => {
    expect(turnSpans(98, 262, 360)).toEqual([{ from: 98, to: 262 }]);
    expect(turnSpans(458, 622, 360)).toEqual([{ from: 98, to: 262 }]);
  });

  it('is two pieces, 164° together, when it runs across the end', () => {
    expect(turnSpans(300, 464, 360)).toEqual([
      { from: 0, to: 104 },
      { from: 300, to: 360 },
    ]);
  });

  it('is nothing for a window that never opens and the whole axis for one that never closes', () => {
    expect(turnSpans(180, 180, 360)).toEqual([]);
    expect(turnSpans(NaN, NaN, 360)).toEqual([]);
    expect(turnSpans(10, 370, 360)).toEqual([{ from: 0, to: 360 }]);
  });
});
