import { describe, expect, it } from 'vitest';
import { byName } from '../../../src/app/pin/by-name.ts';

describe('byName', () => {
  it('puts the values of A1 A2 B1 under B1 A1, and a gap under a cylinder the others lack', () => {
    expect(byName(['B1', 'A1', 'C1'], ['A1', 'A2', 'B1'], [1, 2, 3])).toEqual([3, 1, NaN]);
  });
});
