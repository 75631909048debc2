import { describe, expect, it } from 'vitest';
import { withinTurn } from '../../../src/sim/geometry/angles.ts';
import { TURN } from '../../../src/sim/units.ts';

describe('withinTurn', () => {
  it('brings any angle into [0, 2 pi)', () => {
    expect(withinTurn(-1)).toBeCloseTo(TURN - 1, 14);
    expect(withinTurn(3 * TURN + 2)).toBeCloseTo(2, 13);
    expect(withinTurn(1)).toBe(1);
  });

  it('takes what falls short of a whole turn by round-off as 0', () => {
    expect([0, TURN, -1e-15, TURN - 1e-14, 5 * TURN, 1e-14].map(withinTurn)).toEqual([0, 0, 0, 0, 0, 0]);
  });
});
