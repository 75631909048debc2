import { describe, expect, it } from 'vitest';
import { lambdaAt } from '../../../src/sim/gas/lambda-at.ts';

const table = { speeds: [200, 600, 800], lambdas: [0.8, 0.9, 0.86] };
const at = (speed: number) => lambdaAt({ lambda: 1.5, lambdaOverSpeed: table }, speed);

describe('lambdaAt', () => {
  it('goes straight from place to place: 0.85 half way from 0.8 to 0.9', () => {
    expect([200, 400, 600, 700, 800].map(at)).toEqual([0.8, expect.closeTo(0.85, 12), 0.9, 0.88, 0.86]);
  });

  it('holds the ends beyond them', () => {
    expect([20, 2000].map(at)).toEqual([0.8, 0.86]);
  });

  it('is the stated one at every speed without a table', () => {
    expect(lambdaAt({ lambda: 0.88, lambdaOverSpeed: null }, 300)).toBe(0.88);
  });
});
