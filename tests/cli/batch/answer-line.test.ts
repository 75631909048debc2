import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { answerLine, readAnswer } from '../../../src/cli/batch/answer-line.ts';
import { DesignShelf } from '../../../src/cli/batch/design-shelf.ts';
import { run } from '../../../src/cli/run.ts';
import type { Model, OperatingPoint, PointResult } from '../../../src/sim/index.ts';
import { rpm } from '../../../src/sim/units.ts';
import { presetText } from '../../design/designs.ts';

const folder = mkdtempSync(join(tmpdir(), 'umbel-study-'));
const shelf = new DesignShelf(folder);

/** What the solver was asked, for a line that needs no figures. */
function asked(line: object): { model: Model; operating: OperatingPoint } {
  let seen: { model: Model; operating: OperatingPoint } | null = null;
  const { text, standing } = answerLine(JSON.stringify(line), 1, shelf, (model, operating): PointResult => {
    seen = { model, operating };
    return {
      ...operating,
      converged: false,
      reason: 'not asked for',
      turnsPerPeriod: 1,
      cycles: 0,
      change: 1,
    };
  });
  expect(standing, text).toBe('unsolved');
  return seen!;
}

const faultsOf = (line: unknown, number = 1) => {
  const { text, standing } = answerLine(
    typeof line === 'string' ? line : JSON.stringify(line),
    number,
    shelf,
  );
  expect(standing).toBe('faulty');
  return JSON.parse(text);
};

const MESSAGES: [what: string, change: object, field: string, message: string][] = [
  ['a speed out of range', { speed_rpm: 60 }, 'speed_rpm', 'Speed is 60; allowed 150 to 20000 rpm'],
  ['a speed that is a text', { speed_rpm: '6000' }, 'speed_rpm', 'Speed is "6000"; allowed 150 to 20000 rpm'],
  ['no speed', { speed_rpm: undefined }, 'speed_rpm', 'Speed is missing; allowed 150 to 20000 rpm'],
  ['a throttle out of range', { throttle: 80 }, 'throttle', 'Throttle is 80; allowed 0 (shut) to 1 (open)'],
  ['a name that is no text', { name: 7 }, 'name', 'Name is 7; allowed: a text of its own for each line'],
  [
    'a key that nobody reads',
    { sped: 1 },
    'sped',
    'unknown key “sped”. Allowed here: name, design, set, speed_rpm, throttle',
  ],
  [
    'no design',
    { design: undefined },
    'design',
    'Design is missing; allowed: a preset, a file or a whole design { … }',
  ],
  [
    'a preset that is not there',
    { design: 'fennel-9' },
    'design',
    'there is no file “fennel-9” and no preset of that name',
  ],
  ['changes in a list', { set: ['bore=40'] }, 'set', 'Changes are ["bore=40"]; allowed: a group of values'],
  [
    'a value that is a group',
    { set: { crank: {} } },
    'crank',
    'is {}; allowed: a number, a text, true, false, null or [numbers]',
  ],
  ['a value out of range', { set: { lambda: 9 } }, 'fuel.lambda', 'Mixture: λ is 9; allowed 0.5 to 2'],
  ['a path to nothing', { set: { sparkle: 9 } }, 'sparkle', 'there is no value “sparkle”'],
  [
    'a fault in a whole design',
    { design: { version: 1, cylinder: { bore_mm: 400 } } },
    'cylinder.bore_mm',
    'Bore is 400 mm; allowed 15 to 150 mm',
  ],
];

describe('answerLine', () => {
  it('gives the figures that `point --json` gives, under the name of the line', () => {
    const line = { name: 'first', design: 'caraway-1', set: { lambda: 0.9 }, speed_rpm: 5000, throttle: 0.8 };
    const { text, standing } = answerLine(JSON.stringify(line), 1, shelf);
    let point = '';
    const argv = [
      'point',
      'caraway-1',
      '--speed',
      '5000',
      '--throttle',
      '0.8',
      '--set',
      'lambda=0.9',
      '--json',
    ];
    run(argv, { out: (words) => (point += words), err: () => undefined });
    expect(JSON.parse(text)).toEqual({ name: 'first', ...JSON.parse(point) });
    expect(standing).toBe('solved');
    expect(readAnswer(text)).toEqual({ name: 'first', standing: 'solved' });
  });

  it('runs with the throttle open unless it is said otherwise, at the speed of the line', () => {
    const { operating } = asked({ name: 'a', design: 'dill-3', speed_rpm: 4000 });
    expect(operating.throttle).toBe(1);
    expect(operating.speed / rpm).toBeCloseTo(4000, 9);
  });

  it('takes values as numbers in the unit of the key, as typed text, as none, and several at once', () => {
    const set = {
      'cylinder.bore_mm': 41,
      'crank.stroke': '1.6 in',
      'plenum.relief': null,
      'corrections[A2].barrel_mm': 0.25,
    };
    const { engine } = asked({ name: 'a', design: 'lovage-7', set, speed_rpm: 4000 }).model;
    expect(engine.cylinder.bore).toBeCloseTo(0.041, 12);
    expect(engine.train.crankRadius * 2).toBeCloseTo(1.6 * 0.0254, 12);
    expect(engine.plenum.relief).toBeNull();
  });

  it('looks for files beside the study, and takes a whole design in the line', () => {
    writeFileSync(join(folder, 'mine.json'), presetText('dill-3.json'));
    const whole = JSON.parse(presetText('dill-3.json'));
    const fromFile = asked({ name: 'a', design: 'mine.json', speed_rpm: 4000 }).model;
    const fromLine = asked({ name: 'a', design: whole, speed_rpm: 4000 }).model;
    expect(fromFile.engine).toEqual(fromLine.engine);
    expect(fromFile.geometry.cylinders).toHaveLength(3);
  });

  it.each(MESSAGES)('names field, value and what is allowed for %s', (_, change, field, message) => {
    const { name, faults } = faultsOf({ name: 'a', design: 'lovage-7', speed_rpm: 6000, ...change });
    expect(name).toBe(field === 'name' ? 'line 1' : 'a');
    expect(faults).toHaveLength(1);
    expect(faults[0].field).toBe(field);
    expect(faults[0].message).toContain(message);
  });

  it('tells all faults of a line together', () => {
    const { faults } = faultsOf({
      name: 'a',
      design: 'lovage-7',
      set: { lambda: 9 },
      speed_rpm: 1,
      throttle: 2,
    });
    expect(faults.map(({ field }: { field: string }) => field)).toEqual([
      'speed_rpm',
      'throttle',
      'fuel.lambda',
    ]);
  });

  it.each(['{"name": "a", "desi', '7', '[]', 'null'])(
    'names a line that is no group of values by its number: %s',
    (text) => {
      const answer = faultsOf(text, 12);
      expect(answer.name).toBe('line 12');
      expect(answer.faults[0].message).toMatch(/^the line is /);
    },
  );
});

describe('readAnswer', () => {
  it('tells answers by how they ended, and anything else from an answer', () => {
    expect(readAnswer('{"name":"a","converged":false,"reason":"…"}')).toEqual({
      name: 'a',
      standing: 'unsolved',
    });
    expect(readAnswer('{"name":"a","faults":[]}')).toEqual({ name: 'a', standing: 'faulty' });
    for (const text of ['{"name":"a"}', '{"converged":true}', '{"name":"a","conver', '7'])
      expect(readAnswer(text)).toBeNull();
  });
});
