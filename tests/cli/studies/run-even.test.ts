import { describe, expect, it } from 'vitest';
import { run } from '../../../src/cli/run.ts';
import { runStudy } from '../../../src/cli/studies/run-study.ts';

function ran(argv: readonly string[], by = runStudy) {
  let out = '';
  let err = '';
  const code = by(argv, { out: (text) => (out += text), err: (text) => (err += text) });
  return { code, out, err };
}

const AT = ['--speed', '5000'];

describe('run even', () => {
  it('says first which cylinder of Dill 3 runs hottest, then the figures, their causes and a shop list', () => {
    const { code, out, err } = ran(['even', 'dill-3', ...AT]);
    expect([code, err]).toEqual([0, '']);
    expect(out.split('\n')[0]).toMatch(
      /^A[123] runs hottest: its walls take \d+ W, \d(\.\d)? % more than the mean\.$/,
    );
    expect(out).toMatch(/the articulated rods make it so/);
    for (const said of ['trapped mass, mg', 'interplay', 'barrel spacer', 'crown below deck, mm'])
      expect(out).toContain(said);
    expect(out).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('gives a shop list in the steps asked for that the design file takes, and that evens the masses as it said', () => {
    const options = [
      '--means',
      'transferTrim,head',
      '--step',
      'transferTrim=0.1mm',
      '--weigh',
      'compression=0',
      '--json',
    ];
    const first = JSON.parse(ran(['even', 'dill-3', ...AT, ...options]).out);
    expect(first.evenOut.reached).toBe(true);
    for (const { means, from, to } of first.evenOut.items)
      if (means === 'transferTrim') expect(Math.abs(((to - from) / 1e-4) % 1)).toBeLessThan(1e-6);
    const set = first.evenOut.set.flatMap(({ path, text }: { path: string; text: string }) => [
      '--set',
      `${path}=${text}`,
    ]);
    const point = ran(['point', 'dill-3', ...AT, '--json', ...set], run);
    const masses: number[] = JSON.parse(point.out).cylinders.map(
      (each: { trappedMass_kg: number }) => each.trappedMass_kg,
    );
    const claimed: { trappedMass: number }[] = first.evenOut.after;
    masses.forEach((mass, j) => expect(mass / claimed[j]!.trappedMass).toBeCloseTo(1, 3));
    expect(Math.max(...masses) - Math.min(...masses)).toBeLessThan(first.spreads.trappedMass.range / 3);
  });

  it('ranks alternatives by a measure, each with the design that it makes', () => {
    const { ways } = JSON.parse(
      ran([
        'even',
        'dill-3',
        ...AT,
        '--alternatives',
        '--by',
        'chargeSpread',
        '--grouping',
        '1,1,2',
        '--json',
      ]).out,
    );
    const spreads = ways.map((way: { measures: { chargeSpread: number } }) =>
      Number(way.measures.chargeSpread.toPrecision(3)),
    );
    expect([...spreads].sort((a, b) => a - b)).toEqual(spreads);
    const typed = ways.find((way: { way: string }) => way.way === '2 collectors, as typed');
    expect(typed.design.exhaust.collectors).toHaveLength(2);
  });

  it('prints whose exhaust reaches whom', () => {
    const { code, out } = ran(['even', 'dill-3', ...AT, '--reach']);
    expect(code).toBe(0);
    expect(out).toMatch(/A1 +· +[−\d.]+ +[−\d.]+/);
  });

  it.each([
    [['--means', 'piston'], '--means: there is no “piston”; allowed: knuckle'],
    [['--step', 'barrel=0'], '--step: barrel is 0; allowed above 0, up to 1.5 mm'],
    [['--limit', 'barrel=1:2'], '--limit: barrel is 1:2; allowed from:to about 0'],
    [['--tolerance', 'trappedMass=90%'], '--tolerance: trappedMass is 90%; allowed 0.001 to 0.5'],
    [['--weigh', 'compression=0', '--weigh', 'trappedMass=0'], '--weigh: nothing weighs'],
    [['--by', 'torqueRipple'], '--by: goes with --alternatives'],
    [['--alternatives', '--by', 'noise'], '--by: is “noise”; allowed: largestGap'],
    [
      ['--alternatives', '--grouping', '1,3,3'],
      '--grouping: is “1,3,3”; give a collector for each of 3 cylinders',
    ],
    [['--alternatives', '--reach'], '--reach: give either --alternatives or --reach'],
  ])('refuses %j and says what is allowed', (options, message) => {
    const { code, out, err } = ran(['even', 'dill-3', ...AT, ...options]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(message);
  });
});
