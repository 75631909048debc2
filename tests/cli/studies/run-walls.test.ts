import { describe, expect, it } from 'vitest';
import { runStudy } from '../../../src/cli/studies/run-study.ts';

function ran(...argv: string[]) {
  let out = '';
  let err = '';
  const code = runStudy(argv, { out: (text) => (out += text), err: (text) => (err += text) });
  return { code, out, err };
}

describe('run walls', () => {
  it('tells Dill 3’s walls, the air that holds a limit, the coating and how it warms', () => {
    const { code, out, err } = ran('walls', 'dill-3', '--head', '130C', '--coating');
    expect([code, err]).toEqual([0, '']);
    for (const said of [
      /^The crown of A\d runs hottest, at \d+ °C on the mean: \d+ K below the 300 °C set for it\./,
      /To hold every head to 130 °C takes [\d.]+ m\/s of air before the front row/,
      /a ceramic layer of 0\.20 mm on the crowns/,
      /A\d from cold at this speed: nine tenths of the crown’s rise after \d+/,
      /stopped from there in still air: the liner comes to \d+ °C/,
    ])
      expect(out).toMatch(said);
    expect(out).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('prints an object whose paths carry away what the gas gives', () => {
    const json = JSON.parse(ran('walls', 'caraway-1', '--json').out);
    const [only] = json.cylinders;
    const { throughRings_W, crownToCrankcase_W, bodyToCrankcase_W, headToAir_W, barrelToAir_W } = only;
    expect(headToAir_W + barrelToAir_W).toBeGreaterThan(10 * (crownToCrankcase_W + bodyToCrankcase_W));
    expect(throughRings_W).toBeGreaterThan(crownToCrankcase_W + bodyToCrankcase_W);
    expect(json.airNeeded).toBeNull();
    expect(json.course.warming.crown_K).toHaveLength(json.course.warming.time_s.length);
  });

  it('refuses two limits, and one that is colder than the air', () => {
    const two = ran('walls', 'caraway-1', '--crown', '280C', '--head', '200C');
    expect(two.code).toBe(2);
    expect(two.err).toContain('--head: give one limit, of crown, head or liner');
    expect(ran('walls', 'caraway-1', '--liner', '10C').err).toContain('--liner: is no warmer than the air');
  });
});
