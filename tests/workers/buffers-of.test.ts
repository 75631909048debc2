import { describe, expect, it } from 'vitest';
import { buffersOf } from '../../src/workers/buffers-of.ts';

describe('buffersOf', () => {
  it('finds typed arrays at any depth, and a buffer under two of them once', () => {
    const shared = new Float64Array(8);
    const alone = new Float64Array(3);
    const value = {
      a: shared.subarray(0, 4),
      list: [{ b: shared.subarray(4) }, { c: alone }],
      n: 1,
      none: null,
    };
    expect(buffersOf(value)).toEqual([shared.buffer, alone.buffer]);
  });
});
