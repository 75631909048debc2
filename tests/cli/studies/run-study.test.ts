import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { isStudy, runStudy } from '../../../src/cli/studies/run-study.ts';
import { run } from '../../../src/cli/run.ts';

function ran(...argv: string[]) {
  let out = '';
  let err = '';
  const code = runStudy(argv, { out: (text) => (out += text), err: (text) => (err += text) });
  return { code, out, err };
}

describe('run pulses', () => {
  it('tells Dill 3’s firing, torque, balance and loads, with what they are no proof of', () => {
    const { code, out, err } = ran('pulses', 'dill-3', '--speed', '5000', '--set', 'load.gearRatio=2');
    expect([code, err]).toEqual([0, '']);
    for (const said of [
      'dead centres     112.9 to 123.6° apart; even would be 120.0°',
      'harmonics, amplitude in N m',
      'speed swings by',
      'throw A:',
      'main bearing 2',
      'knuckle pin',
      'output shaft, 23.5 mm',
      'teeth on the crank',
      'early fire: ',
      'no strength proof',
    ])
      expect(out).toContain(said);
    expect(out).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('prints an object whose mean torques belong together, numbers throughout', () => {
    const json = JSON.parse(ran('pulses', 'parsley-5', '--speed', '4000', '--json').out);
    const { gas, blower, friction, total } = json.torque_N_m.mean;
    expect(gas - blower - friction).toBeCloseTo(total, 9);
    expect(json.dial.events).toHaveLength(5);
    expect(json.harmonics_N_m[4].order).toBe(5);
    expect(
      json.loads.rods.filter((rod: { knucklePin_N: unknown }) => rod.knucklePin_N === null),
    ).toHaveLength(1);
    expect(JSON.stringify(json.torque_N_m) + JSON.stringify(json.balance)).not.toContain('null');
  });

  it('asks for a speed, and leaves 2 without one', () => {
    const { code, err } = ran('pulses', 'dill-3');
    expect(code).toBe(2);
    expect(err).toContain('--speed: missing; give one speed, as 6000');
  });
});

describe('run fit', () => {
  it('finds Lovage 7 to go together, with every check, each crown, the outer size and what it cannot know', () => {
    const { code, out, err } = ran('fit', 'lovage-7');
    expect([code, err]).toEqual([0, '']);
    for (const said of [
      'Lovage 7: It goes together: the tightest are crown 1 and head 1, 1.00 mm at 0°',
      'Knuckle eyes side by side',
      'diameter 335.0 mm',
      'heat growth',
    ])
      expect(out).toContain(said);
    expect(out.match(/^crown \d/gm)).toHaveLength(7);
    expect(out).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('names the parts that collide, says where, and leaves 1', () => {
    const { code, out } = ran('fit', 'lovage-7', '--set', 'piston.length=50mm');
    expect(code).toBe(1);
    expect(out).toMatch(
      /It does not go together: skirt \d and skirt \d overlap by \d\.\d\d mm at \d+(\.\d)?°\./,
    );
    const json = JSON.parse(ran('fit', 'angelica-14', '--set', 'rowSpacing=60mm', '--json').out);
    expect(json.goesTogether).toBe(false);
    const fins = json.checks.find(({ kind }: { kind: string }) => kind === 'fins');
    expect(fins).toMatchObject({ verdict: 'collides', parts: ['fins A1', 'fins B1'], angle_deg: null });
  });
});

describe('run rotors', () => {
  it('draws Lovage 7’s rotors in true size, and tells gaps, displacement, leaks, ripple and growth', () => {
    const folder = mkdtempSync(join(tmpdir(), 'umbel-'));
    const [svg, dxf] = [join(folder, 'rotors.svg'), join(folder, 'rotors.dxf')];
    const { code, out, err } = ran('rotors', 'lovage-7', '--svg', svg, '--dxf', dxf);
    expect([code, err]).toEqual([0, '']);
    for (const said of [
      'through a full mesh turn',
      'leaks',
      'ripple',
      'kg m²',
      'CAUTION: gaps when cold must allow',
    ])
      expect(out).toContain(said);
    expect(readFileSync(svg, 'utf8')).toMatch(/^<\?xml[\s\S]*<g id="OUTLINE"[\s\S]*from 20 °C on, tips lose/);
    const drawn = readFileSync(dxf, 'latin1');
    expect(drawn).toContain('AC1009');
    expect(drawn).toContain('from 20 %%dC on, tips lose');
  });

  it('prints an object whose section fills the tip circle less its displacement', () => {
    const json = JSON.parse(ran('rotors', 'parsley-5', '--json').out);
    const circle = (Math.PI / 4) * json.tipDiameter_m ** 2;
    expect(json.sweptVolume_m3 / (2 * (circle - json.sectionArea_m2) * json.length_m)).toBeCloseTo(1, 9);
    expect(json.outline_m.length).toBeGreaterThan(100);
    expect(json.heat.gapLoss_m.tip).toBeGreaterThan(0);
  });

  it('leaves 2 for rotors that cannot mesh, and says where', () => {
    const close = ran(
      'rotors',
      'lovage-7',
      '--set',
      'displacement=100cc',
      '--set',
      'blower.centreDistance=40mm',
    );
    expect([close.code, close.out]).toEqual([2, '']);
    expect(close.err).toMatch(
      /blower\.tipDiameter_mm: the rotors cannot mesh: .* on the pitch circle, 20\.00 mm from the axis/,
    );
    const untyped = ran('rotors', 'lovage-7', '--set', 'blower.centreDistance=40mm');
    expect(untyped.code).toBe(2);
    expect(untyped.err).toMatch(/blower\.centreDistance_mm: .*cannot mesh/);
  });

  it('leaves 2 where a drawing cannot be written', () => {
    const { code, err } = ran('rotors', 'caraway-1', '--svg', '/nowhere/at/all.svg');
    expect(code).toBe(2);
    expect(err).toContain('--svg: /nowhere/at/all.svg cannot be written');
  });
});

describe('run leak', () => {
  it('tells the clearance from what the gauge holds, and what to set: a blower of that clearance holds just that', () => {
    const { code, out } = ran('leak', 'lovage-7', '--speed', '1000', '--holds', '0.05bar');
    expect(code).toBe(0);
    const [, setting] = /--set (blower\.clearanceArea_mm2=[\d.]+)/.exec(out)!;
    const again = JSON.parse(
      ran('leak', 'lovage-7', '--speed', '1000', '--holds', '0.05bar', '--set', setting!, '--json').out,
    );
    expect(again.clearanceArea_m2 / again.designClearanceArea_m2).toBeCloseTo(1, 5);
  });

  it('finds less clearance where more is held, and twice the clearance at twice the speed', () => {
    const area = (speed: string, holds: string): number =>
      JSON.parse(ran('leak', 'lovage-7', '--speed', speed, '--holds', holds, '--json').out).clearanceArea_m2;
    expect(area('1000', '0.1bar')).toBeLessThan(area('1000', '0.05bar'));
    expect(area('2000', '0.05bar') / area('1000', '0.05bar')).toBeCloseTo(2, 9);
  });

  it.each([
    ['leak lovage-7 --speed 1000', /--holds: missing; give a reading/],
    ['leak lovage-7 --speed 1000 --holds=-1psi', /--holds: is -1psi; allowed above 0, up to 3 bar/],
    ['leak lovage-7 --holds 0.1bar', /--speed: missing/],
    ['leak lovage-7 --speed 1000 --holds 0.1bar --gas 900C', /--gas: .*200 to 800 K/],
  ])('leaves 2 for %s', (line, told) => {
    const { code, out, err } = ran(...line.split(' '));
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(told);
  });
});

describe('run air', () => {
  it('prints the sentence first, then a line for every speed, cranking among them, in bar, psi and inHg', () => {
    const { code, out } = ran('air', 'caraway-1', '--speed', '4000:6000:2000');
    expect(code).toBe(0);
    const lines = out.split('\n');
    expect(lines[0]).toMatch(/^The blower is (not )?big enough.*A gauge on the plenum shows .* psi/);
    const head = lines.findIndex((line) => line.startsWith('rpm'));
    expect(lines[head]).toMatch(/gauge bar\s+psi\s+inHg\s+slip\s+blower kW\s+of brake/);
    expect(lines.slice(head + 1, head + 4).map((line) => line.split(/\s+/)[0])).toEqual([
      '500',
      '4000',
      '6000',
    ]);
    for (const said of [
      'Does boost stay in?',
      'l/h',
      'bearings need their own',
      'burned shut in',
      'uncorrected',
      'can explode',
    ])
      expect(out).toContain(said);
  });

  it('prints an object with pressures in every unit, and what one more tooth brings', () => {
    const json = JSON.parse(ran('air', 'caraway-1', '--speed', '5000:5000:1000', '--json').out);
    expect(json.points).toHaveLength(2);
    const point = json.points[1];
    expect(point.plenumGauge_psi / point.plenumGauge_bar).toBeCloseTo(14.5038, 3);
    expect(point.plenumGauge_inHg / point.plenumGauge_bar).toBeCloseTo(29.53, 2);
    expect(point.oneMoreTooth.nextRatio).toBeGreaterThan(point.oneMoreTooth.ratio);
    expect(point.brakePowerCorrected_W / point.brakePowerUncorrected_W).toBeCloseTo(
      json.correction.factor,
      9,
    );
  });

  it('warns of gear pairs that are hardly to be had', () => {
    const { out } = ran(
      'air',
      'caraway-1',
      '--speed',
      '5000:5000:1',
      '--set',
      'gears[0].driver=50',
      '--set',
      'gears[0].driven=7',
      '--set',
      'displacement=15cc',
    );
    expect(out).toContain('caution: blower.gears[0]: the pair 50 : 7 has a wheel of 7 teeth');
    expect(out).toContain('steps by 7.14 at once');
  });
});

describe('run match', () => {
  it('solves for one thing in the terms of the design, with values to set that do it', () => {
    const asked = [
      'match',
      'caraway-1',
      '--target',
      'deliveryRatio=1.4',
      '--speed',
      '5000',
      '--vary',
      'blower.driveRatio',
    ];
    const { code, out } = ran(...asked);
    expect(code).toBe(0);
    expect(out).toMatch(/Caraway 1 has deliveryRatio 1\.2\d+ at 5000 rpm; 1\.4000 is asked for/);
    const [, path, value] = /--set (blower\.gears\[0\]\.\w+)=(\d+)/.exec(out)!;
    const sets = [...out.matchAll(/--set (\S+)/g)].flatMap(([, set]) => ['--set', set!]);
    expect(path).toBeDefined();
    expect(Number.isInteger(Number(value))).toBe(true);
    let after = '';
    run(['point', 'caraway-1', '--speed', '5000', '--json', ...sets], {
      out: (text) => (after += text),
      err: () => undefined,
    });
    expect(JSON.parse(after).engine.deliveryRatio).toBeGreaterThan(1.4 - 1e-4);
  });

  it('takes a plenum pressure above ambient and says so', () => {
    const { out } = ran(
      'match',
      'caraway-1',
      '--target',
      'plenumPressure=2psi',
      '--speed',
      '5000',
      '--vary',
      'blower.displacement',
    );
    expect(out).toContain('0.1379 bar above ambient is asked for');
    const [, reached] = /✓ displacement of a blower.*: ([\d.]+) bar above ambient/.exec(out)!;
    expect(Number(reached)).toBeGreaterThan(0.1378);
    expect(Number(reached)).toBeLessThan(0.16);
  });
});

describe('run match over a range', () => {
  it('finds one displacement for all speeds, solved where most is asked for, that leaves none short', () => {
    const asked = ['match', 'caraway-1', '--target', 'deliveryRatio=1.35', '--speed', '4000:6000:2000'];
    const { code, out } = ran(...asked, '--vary', 'blower.displacement', '--json');
    expect(code).toBe(0);
    const [fix] = JSON.parse(out).fixes;
    expect(fix).toMatchObject({
      vary: 'blower.displacement',
      reached: true,
      everywhere: true,
      unsolved_rpm: [],
    });
    expect(fix.least.figure).toBeGreaterThanOrEqual(1.35);
    const set = fix.set.map(({ path, text }: { path: string; text: string }) => `${path}=${text}`);
    let swept = '';
    run(
      [
        'sweep',
        'caraway-1',
        '--speed',
        '4000:6000:2000',
        '--json',
        ...set.flatMap((each: string) => ['--set', each]),
      ],
      {
        out: (text) => (swept += text),
        err: () => undefined,
      },
    );
    for (const point of JSON.parse(swept).points)
      expect(point.engine.deliveryRatio).toBeGreaterThan(1.35 - 1e-4);
  });
});

describe('runStudy', () => {
  it.each([
    ['air', 'no design file or preset is given'],
    ['air caraway-1 --speed 5000', 'give from:to:step'],
    ['air caraway-1 --set surroundings.humidity=120%', 'humidity'],
    ['air caraway-1 more', 'too much is given: more'],
    ['match caraway-1 --speed 5000', '--target: missing'],
    ['match caraway-1 --speed 5000 --target power=3', '--target: is “power=3”; give deliveryRatio'],
    ['match caraway-1 --speed 5000 --target deliveryRatio=40', 'deliveryRatio is 40; allowed 0.05 to 4'],
    ['match caraway-1 --target deliveryRatio=1', '--speed: missing'],
    [
      'match caraway-1 --speed 5000 --target deliveryRatio=1 --vary luck',
      '“luck” cannot be varied; allowed: blower.driveRatio',
    ],
    ['rotors nothing.json', 'no file “nothing.json” and no preset'],
    ['rotors caraway-1 --speed slow', 'does not begin with a number'],
    ['rotors caraway-1 --bogus', "Unknown option '--bogus'"],
    ['rotors caraway-1 --set lobes=9', 'blower.lobes'],
  ])('leaves 2 for “%s”, and says why', (argv, said) => {
    const { code, out, err } = ran(...argv.split(' '));
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(said);
  });

  it('knows its studies and prints help', () => {
    expect(['air', 'match', 'rotors', 'point', undefined, 'toString'].map(isStudy)).toEqual([
      true,
      true,
      true,
      false,
      false,
      false,
    ]);
    expect(ran('air', '--help').out).toContain('umbel match FILE');
  });
});

describe('run backfire', () => {
  it('tells what each space reaches if it burns, the relief that would hold the plenum, and cautions', () => {
    const { code, out, err } = ran('backfire', 'dill-3', '--crankcase', '300cc', '--speed', '3000');
    expect([code, err]).toEqual([0, '']);
    for (const said of [
      'plenum',
      'passages',
      'crankcase',
      'relief valve',
      'EN 14994',
      'snapped shut',
      'detonation',
    ])
      expect(out).toContain(said);
    expect(out).not.toMatch(/NaN|undefined/);
  });

  it('refuses a crankcase and a pressure out of range, by option', () => {
    const { code, err } = ran('backfire', 'dill-3', '--crankcase', '0');
    expect([code, err]).toEqual([2, '--crankcase: is 0; allowed 1 cc to 100 l\n']);
    expect(ran('backfire', 'dill-3', '--holds', '90bar').err).toContain(
      '--holds: is 90bar; allowed 0.1 to 20 bar',
    );
  });
});

describe('run start', () => {
  it('says in which turn Dill 3 catches, with a line for every turn, and cautions', () => {
    const { code, out, err } = ran('start', 'dill-3', '--speed', '600');
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^Cranked at 600\srpm it .*catches in turn \d+, after \d\.\d\ss\./);
    expect(out).toMatch(/\n1 +600 .*\n2 +600 /);
    for (const said of ['richest λ', 'film of fuel', 'stand clear']) expect(out).toContain(said);
    expect(out).not.toMatch(/NaN|undefined/);
  });
});

describe('run turns', () => {
  it('tells which turns fire, turn by turn, with burned gas at every spark, and why some skip', () => {
    const { code, out, err } = ran(
      'turns',
      'caraway-1',
      '--speed',
      '4000',
      '--turns',
      '20',
      '--set',
      'misfireResidual=0.1',
    );
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/Charges that skip hold .* of burned gas at the spark, and above 10.% none burns/);
    expect(out).toContain('Of the last 10 turns each fires');
    expect(out).not.toMatch(/NaN|undefined|Infinity/);
    const { turns } = JSON.parse(
      ran('turns', 'caraway-1', '--speed', '4000', '--turns', '6', '--rest', '--json').out,
    );
    expect(turns).toHaveLength(6);
    const [first] = turns[0].cylinders;
    expect(first.fired).toBe(false);
    expect(first.lambda ?? Infinity).toBeGreaterThan(1.5);
  });

  it('refuses a count of turns that is none', () => {
    const { code, err } = ran('turns', 'caraway-1', '--speed', '4000', '--turns', 'many');
    expect(code).toBe(2);
    expect(err).toContain('--turns: is many; allowed whole numbers from 4 to 2000');
  });
});

describe('run spark', () => {
  it('finds the spark of most torque and of the octane number, and leaves an even cam alone where rods are plain', () => {
    const { code, out, err } = ran('spark', 'caraway-1', '--speed', '6000', '--set', 'octaneOffset=-25');
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/Most torque at \d+° before top dead centre; .*octane number .*the design has \d+°/);
    expect(out).toContain('All rods are plain: an even cam fires every cylinder where it should.');
    expect(out).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('refuses a knock integral beyond where end gas lights', () => {
    const { code, err } = ran('spark', 'caraway-1', '--speed', '6000', '--integral', '1.5');
    expect(code).toBe(2);
    expect(err).toContain('--integral: is 1.5; allowed above 0 to 1');
  });
});
