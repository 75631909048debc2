import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/run.ts';
import type { OperatingPoint, PointResult } from '../../src/sim/index.ts';
import { presetText } from '../design/designs.ts';

type Solver = Parameters<typeof run>[2];

/** Arguments, and last, where it is given, a solver to stand in for the real one. */
function ran(...all: (string | NonNullable<Solver>)[]) {
  let out = '';
  let err = '';
  const argv = all.filter((each) => typeof each === 'string');
  const solver = all.find((each) => typeof each === 'function');
  const code = run(argv, { out: (text) => (out += text), err: (text) => (err += text) }, solver);
  return { code, out, err };
}

const folder = mkdtempSync(join(tmpdir(), 'umbel-'));
const file = (name: string, text: string): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};

const SHAPE_KEYS = [
  'row',
  'number',
  'tdc_degCrank',
  'bdc_degCrank',
  'stroke_m',
  'exhaustOpens_degAfterOwnTdc',
  'exhaustCloses_degAfterOwnTdc',
  'transferOpens_degAfterOwnTdc',
  'transferCloses_degAfterOwnTdc',
];

describe('run point', () => {
  it('prints one object with every key of the contract, and leaves 0', () => {
    const { code, out, err } = ran(
      'point',
      'caraway-1',
      '--speed',
      '5000 rpm',
      '--throttle',
      '80%',
      '--json',
    );
    expect([code, err]).toEqual([0, '']);
    const point = JSON.parse(out);
    expect(Object.keys(point)).toEqual([
      'design',
      'speed_rpm',
      'converged',
      'cycles',
      'residuals',
      'engine',
      'blower',
      'plenum',
      'relief',
      'cylinders',
    ]);
    expect(point).toMatchObject({ design: 'Caraway 1', speed_rpm: 5000, converged: true });
    expect(Object.keys(point.residuals)).toEqual(['mass', 'energy', 'species', 'change']);
    expect(Object.keys(point.engine)).toEqual([
      'sweptVolume_m3',
      'airFlow_kg_per_s',
      'fuelFlow_kg_per_s',
      'lambda',
      'deliveryRatio',
      'scavengingEfficiency',
      'trappingEfficiency',
      'chargingEfficiency',
      'imep_Pa',
      'fmep_Pa',
      'bmep_Pa',
      'torque_N_m',
      'brakePower_W',
      'bsfc_kg_per_J',
      'wallHeat_W',
    ]);
    expect(Object.keys(point.blower)).toEqual([
      'displacement_m3_per_crankRev',
      'slipFraction',
      'shaftPower_W',
      'outletTemperature_K',
    ]);
    expect(Object.keys(point.plenum)).toEqual([
      'meanPressure_Pa',
      'minPressure_Pa',
      'maxPressure_Pa',
      'meanTemperature_K',
    ]);
    expect(Object.keys(point.cylinders[0])).toEqual([
      ...SHAPE_KEYS,
      'trappedMass_kg',
      'purity',
      'chargingEfficiency',
      'imep_Pa',
      'peakPressure_Pa',
    ]);
    // One plain cylinder: the torque is BMEP times swept volume over a turn.
    const { torque_N_m, bmep_Pa, sweptVolume_m3, brakePower_W } = point.engine;
    expect(torque_N_m / ((bmep_Pa * sweptVolume_m3) / (2 * Math.PI))).toBeCloseTo(1, 9);
    expect(brakePower_W / ((torque_N_m * 5000 * Math.PI) / 30)).toBeCloseTo(1, 9);
  });

  it('says in words, first, that the blower is big enough for Caraway 1, and not with two thirds of its displacement', () => {
    expect(ran('point', 'Caraway 1', '--speed', '5000').out).toMatch(/^The blower is big enough at 5000 rpm/);
    const small = ran('point', 'caraway-1', '--speed', '5000', '--set', 'displacement=24cc');
    expect(small.out).toMatch(/^The blower is not big enough at 5000 rpm.* % less than the 1\.00 wanted/);
  });
});

describe('run sweep', () => {
  it('prints as many points as from : to : step makes, as JSON and as CSV', () => {
    const json = JSON.parse(ran('sweep', 'caraway-1', '--speed', '4000:6000:1000', '--json').out);
    expect(Object.keys(json)).toEqual(['design', 'points']);
    expect(json.points.map((point: { speed_rpm: number }) => point.speed_rpm)).toEqual([4000, 5000, 6000]);
    const lines = ran('sweep', 'caraway-1', '--speed', '4000:6000:1000', '--csv').out.trimEnd().split('\n');
    expect(lines).toHaveLength(4);
    const [head, ...rows] = lines.map((line) => line.split(','));
    const column = head!.indexOf('engine.deliveryRatio');
    expect(rows.map((row) => Number(row[column]))).toEqual(
      json.points.map((point: { engine: { deliveryRatio: number } }) => point.engine.deliveryRatio),
    );
  });
});

describe('run geometry', () => {
  it('prints the geometric part of the same shape, cylinder by cylinder', () => {
    const { code, out } = ran('geometry', 'angelica-14', '--json');
    expect(code).toBe(0);
    const { design, cylinders, engine } = JSON.parse(out);
    expect(design).toBe('Angelica 14');
    expect(cylinders).toHaveLength(14);
    expect(Object.keys(cylinders[0])).toEqual(SHAPE_KEYS);
    expect(cylinders[7]).toMatchObject({ row: 'B', number: 1 });
    const bore = 0.04;
    const swept = cylinders.reduce((sum: number, each: { stroke_m: number }) => sum + each.stroke_m, 0);
    expect(engine.sweptVolume_m3 / ((swept * Math.PI * bore * bore) / 4)).toBeCloseTo(1, 9);
  });

  it('shows a symmetric port timing for a plain rod, and an unsymmetric one for an articulated rod', () => {
    const first = (name: string, index: number) =>
      JSON.parse(ran('geometry', name, '--json').out).cylinders[index];
    const plain = first('caraway-1', 0);
    expect(plain.exhaustOpens_degAfterOwnTdc).toBeCloseTo(98, 6);
    expect(plain.exhaustOpens_degAfterOwnTdc + plain.exhaustCloses_degAfterOwnTdc).toBeCloseTo(360, 6);
    const articulated = first('lovage-7', 3);
    expect(
      Math.abs(articulated.exhaustOpens_degAfterOwnTdc + articulated.exhaustCloses_degAfterOwnTdc - 360),
    ).toBeGreaterThan(2);
  });
});

describe('run check', () => {
  it('passes a sound file by its path, and names what is unusual', () => {
    const { code, out } = ran('check', file('sound.json', presetText('dill-3.json')), '--set', 'lambda=1.5');
    expect(code).toBe(0);
    expect(out).toContain('nothing is wrong with the file; 3 cylinders');
    expect(out).toContain('unusual: fuel.lambda: Mixture: λ is 1.5; usual are 0.75 to 1.1');
  });

  it('leaves 2 and tells every fault of a bad file on the error stream, nothing on the other', () => {
    const bad = file(
      'bad.json',
      '{"version":1,"cylinder":{"bore_mm":1e999},"crank":{"stroke_mm":"x"},"sparkle":1}',
    );
    const { code, out, err } = ran('check', bad);
    expect([code, out]).toEqual([2, '']);
    expect(err.trimEnd().split('\n')).toHaveLength(3);
    expect(err).toContain('cylinder.bore_mm: Bore is not a finite number; allowed 15 to 150 mm');
  });
});

const REFUSED: [argv: string, said: string][] = [
  ['', 'no command is given'],
  ['frobnicate x', 'there is no command “frobnicate”'],
  ['frobnicate x', 'backfire, start, turns, walls, blowers, spark, batch'],
  ['point', 'no design file or preset is given'],
  ['point nothing.json --speed 6000', 'no file “nothing.json” and no preset'],
  ['point lovage-7', '--speed: missing'],
  ['point lovage-7 --speed fast', 'does not begin with a number'],
  ['point lovage-7 --speed 6000:7000:100', 'give one speed'],
  ['point lovage-7 --speed 60', 'allowed 150 rpm to 20000 rpm'],
  ['point lovage-7 --speed 5mm', 'measures length, not rotation'],
  ['point lovage-7 --speed 6000 --throttle 120%', 'allowed 0 (shut) to 1 (open)'],
  ['point lovage-7 --speed 6000 --csv', 'point does not take this option'],
  ['point lovage-7 --speed 6000 --bogus', "Unknown option '--bogus'"],
  ['point lovage-7 --speed 6000 more', 'too much is given: more'],
  ['point lovage-7 --speed 6000 --set bore', 'is not path=value'],
  ['point lovage-7 --speed 6000 --set bore=1mm', 'cylinder.bore_mm: Bore is 1 mm; allowed 15 to 150 mm'],
  ['sweep lovage-7 --speed 6000', 'give from:to:step'],
  ['sweep lovage-7 --speed 6000:5000:100', 'give the lower speed first'],
  ['sweep lovage-7 --speed 5000:6000:0', 'the step is 0 rpm'],
  ['sweep lovage-7 --speed 1000:20000:1', 'allowed up to 1000'],
  ['sweep lovage-7 --speed 5000:6000:100 --json --csv', 'either --json or --csv'],
  ['geometry lovage-7 --speed 6000', 'geometry does not take this option'],
];

describe('run', () => {
  it.each(REFUSED)('leaves 2 for “%s”, and says why', (argv, said) => {
    const { code, out, err } = ran(...argv.split(' ').filter((each) => each !== ''));
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(said);
    expect(err).not.toMatch(/^\s+at /m);
  });

  it('leaves 1 with the reason for a point or a sweep without an answer, and prints no figure of it', () => {
    const unsolved = (_: unknown, { speed, throttle }: OperatingPoint): PointResult => ({
      speed,
      throttle,
      converged: false,
      reason: 'it was blocked',
      turnsPerPeriod: 1,
      cycles: 3,
      change: 0.5,
    });
    const point = ran('point', 'caraway-1', '--speed', '5000', '--json', unsolved);
    expect([point.code, point.err]).toEqual([1, 'no answer at 5000 rpm: it was blocked\n']);
    expect(JSON.parse(point.out)).toEqual({
      design: 'Caraway 1',
      speed_rpm: 5000,
      converged: false,
      reason: 'it was blocked',
      cycles: 3,
      residuals: { mass: null, energy: null, species: null, change: 0.5 },
    });
    const sweep = ran('sweep', 'caraway-1', '--speed', '5000:6000:1000', unsolved);
    expect(sweep.code).toBe(1);
    expect(sweep.out).toMatch(
      /^Whether the blower is big enough cannot be told: no answer at 500, 5000, 6000 rpm\./,
    );
    const csv = ran('sweep', 'caraway-1', '--speed', '5000:6000:1000', '--csv', unsolved).out;
    expect(csv).toBe('speed_rpm,converged,cycles\n5000,false,3\n6000,false,3\n');
  });

  it('prints help, with the cautions, and leaves 0', () => {
    const { code, out } = ran('--help');
    expect(code).toBe(0);
    for (const word of ['point', 'sweep', 'geometry', 'check', 'can explode', 'licensed'])
      expect(out).toContain(word);
  });
});
