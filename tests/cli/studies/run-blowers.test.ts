import { describe, expect, it } from 'vitest';
import { runStudy } from '../../../src/cli/studies/run-study.ts';

function ran(...argv: string[]) {
  let out = '';
  let err = '';
  const code = runStudy(argv, { out: (text) => (out += text), err: (text) => (err += text) });
  return { code, out, err };
}

describe('run blowers', () => {
  it('puts three kinds side by side at three speeds, the sentence first, cautions last', () => {
    const { code, out, err } = ran('blowers', 'caraway-1', '--speed', '6000');
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^Caraway 1: kinds of blower\nAt 6000 rpm, .* takes least of the crank/);
    expect(out.match(/^(Roots|internal compression|centrifugal) +(500|6000|9000) /gm)).toHaveLength(9);
    expect(out).toMatch(/centrifugal: wheel of \d+ mm at \d+\.\d times crank speed/);
    expect(out).toMatch(/A plenum of mixture can explode/);
    expect(out).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('refuses a throttle beyond 100 %, and a speed that is missing', () => {
    const { code, err } = ran('blowers', 'caraway-1', '--throttle', '120%');
    expect(code).toBe(2);
    expect(err).toMatch(/--throttle.*allowed 0/);
    expect(err).toMatch(/--speed.*missing/);
  });
});
