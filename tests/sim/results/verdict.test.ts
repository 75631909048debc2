import { describe, expect, it } from 'vitest';
import type { PointResult } from '../../../src/sim/results/point-result.ts';
import { judgeBlower } from '../../../src/sim/results/verdict.ts';
import { rpm } from '../../../src/sim/units.ts';

const wanted = { deliveryRatio: 1, crankingSpeed: 500 * rpm };

/** Only what the verdict looks at. */
const at = (speed_rpm: number, deliveryRatio: number | null): PointResult =>
  (deliveryRatio === null
    ? { speed: speed_rpm * rpm, converged: false, reason: 'made up' }
    : { speed: speed_rpm * rpm, converged: true, engine: { deliveryRatio } }) as PointResult;

describe('judgeBlower', () => {
  it('says that the blower is big enough at one speed, and by how much', () => {
    const verdict = judgeBlower([at(6000, 1.044)], wanted);
    expect(verdict).toMatchObject({ enough: true, short: [], unsolved: [] });
    expect(verdict.margin).toBeCloseTo(0.044, 12);
    expect(verdict.text).toBe(
      'The blower is big enough at 6000 rpm: it delivers 1.04 times the swept volume of ambient air, 4.4 % more than the 1.00 wanted.',
    );
  });

  it('counts a delivery ratio equal to the wanted one as enough, and one just below as short by its percentage', () => {
    expect(judgeBlower([at(6000, 1)], wanted)).toMatchObject({ enough: true, margin: 0 });
    const short = judgeBlower([at(6000, 0.9996)], wanted);
    expect(short.enough).toBe(false);
    expect(short.text).toMatch(/is not big enough at 6000 rpm.*0\.04 % less than the 1\.00 wanted/);
  });

  it('names the ranges where it is short, in order of speed, and that cranking is among them', () => {
    const points = [at(4000, 1.1), at(500, 0.6), at(1000, 0.9), at(8000, 0.97), at(6000, 1.02)];
    const verdict = judgeBlower(points, wanted);
    expect(verdict.short.map(({ from, to }) => [from / rpm, to / rpm].map(Math.round))).toEqual([
      [500, 1000],
      [8000, 8000],
    ]);
    expect(verdict.speed).toBe(500 * rpm);
    expect(verdict.text).toBe(
      'The blower is not big enough at 500 to 1000 rpm and 8000 rpm, cranking included: it delivers least, 0.60 at 500 rpm, 40 % less than the 1.00 wanted.',
    );
  });

  it('says where cranking is enough though working speeds are not, and where cranking was not worked out', () => {
    expect(judgeBlower([at(500, 1.1), at(4000, 0.9)], wanted).text).toContain('though it is for cranking');
    expect(judgeBlower([at(1000, 1.1), at(4000, 1.2)], wanted).text).toMatch(
      /every speed.*Cranking was not worked out\.$/,
    );
  });

  it('names speeds without an answer, and judges nothing where there is none', () => {
    const some = judgeBlower([at(500, null), at(4000, 1.2), at(6000, 1.1)], wanted);
    expect(some).toMatchObject({ enough: true, cranking: false });
    expect(some.text).toMatch(/No answer at 500 rpm\.$/);
    const none = judgeBlower([at(500, null), at(900, null)], wanted);
    expect(none).toMatchObject({ enough: null, margin: null, speed: null });
    expect(none.text).toContain('no answer at 500, 900 rpm');
  });
});
