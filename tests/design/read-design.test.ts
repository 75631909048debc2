import { describe, expect, it } from 'vitest';
import { readDesign, writeDesign } from '../../src/design/read-design.ts';
import { faultPaths, presetText, PRESETS, sound } from './designs.ts';

const read = (data: unknown) => readDesign(JSON.stringify(data));
const messages = (data: unknown) => {
  const outcome = read(data);
  return outcome.ok ? [] : outcome.faults.map(({ path, message }) => `${path}: ${message}`);
};

describe('readDesign', () => {
  it.each(PRESETS)('reads %s, and reads what it writes to the same design', (name) => {
    const design = sound(readDesign(presetText(name)));
    expect(sound(readDesign(writeDesign(design)))).toEqual(design);
    expect(design.note.length).toBeGreaterThan(80);
  });

  it('fills every default into a file that holds only its version', () => {
    const design = sound(read({ version: 1 }));
    expect(design.wanted.deliveryRatio).toBe(1);
    expect(design.crank.rows).toHaveLength(1);
  });

  it('says where a text stops being JSON', () => {
    const outcome = readDesign('{ "version": 1, ');
    expect(outcome.ok ? '' : outcome.faults[0]!.message).toMatch(/not JSON/);
  });

  it.each([['[]'], ['3'], ['null'], ['"x"']])('refuses %s, which is no group of values', (text) => {
    const outcome = readDesign(text);
    expect(outcome.ok ? '' : outcome.faults[0]!.message).toMatch(/group of values/);
  });

  it('names path, value and what is allowed for a value out of range', () => {
    expect(messages({ version: 1, cylinder: { bore_mm: 400 } })).toEqual([
      'cylinder.bore_mm: Bore is 400 mm; allowed 15 to 150 mm',
    ]);
  });

  it('refuses a number that JSON reads as infinite', () => {
    const outcome = readDesign('{"version":1,"cylinder":{"bore_mm":1e999}}');
    expect(outcome.ok ? '' : outcome.faults[0]!.message).toBe(
      'Bore is not a finite number; allowed 15 to 150 mm',
    );
  });

  it('suggests the right key for an unknown one with another unit', () => {
    expect(messages({ version: 1, cylinder: { bore_cm: 4 } })[0]).toMatch(
      /unknown key “bore_cm”; did you mean bore_mm\?/,
    );
  });

  it('refuses keys that every object inherits', () => {
    expect(faultPaths(read({ version: 1, toString: 1, crank: { constructor: 2 } }))).toEqual([
      'crank.constructor',
      'toString',
    ]);
  });

  it('reports faults of every kind at once', () => {
    const paths = faultPaths(
      read({
        version: 1,
        crank: { stroke_in: 1, rows: [{ master: 9 }, 5] },
        cylinder: { bore_mm: null, compressionRatio: '7' },
        windows: { exhaust: [{ top_mm: 30, opens_degATDC: 90 }], transfer: [] },
        blower: [],
        fuel: { kind: 'coal', burning: { enabled: 1 } },
        exhaust: { collectors: { volume_cc: 3 } },
        wanted: { minSpeed_rpm: 9000, maxSpeed_rpm: 8000 },
      }),
    );
    expect(paths).toEqual([
      'blower',
      'crank.rows[0].master',
      'crank.rows[1]',
      'crank.stroke_in',
      'cylinder.bore_mm',
      'cylinder.compressionRatio',
      'exhaust.collectors',
      'fuel.burning.enabled',
      'fuel.kind',
      'wanted.minSpeed_rpm',
      'windows.exhaust[0]',
      'windows.transfer',
    ]);
  });

  it('does not blame a combination on a value that is itself at fault', () => {
    const data = { version: 1, wanted: { minSpeed_rpm: 8500, maxSpeed_rpm: 1e6, speed_rpm: 8600 } };
    expect(faultPaths(read(data))).toEqual(['wanted.maxSpeed_rpm']);
  });

  it('leads faults of rods and windows back to the file, in the units of the file', () => {
    const short = messages({ version: 1, crank: { masterRod_mm: 19 } });
    expect(short[0]).toMatch(/^crank\.masterRod_mm: .*19 mm/);
    const corrected = { cylinder: 'A3', rod_mm: 6 };
    const rod = messages({ version: 1, crank: { knuckleRadius_mm: 23, corrections: [corrected] } });
    expect(rod[0]).toMatch(/^crank\.corrections\[0\]\.rod_mm: .*6 mm/);
    const low = messages({ version: 1, windows: { transfer: [{ top_mm: 60 }] } });
    expect(low[0]).toMatch(/^windows\.transfer\[0\]\.top_mm: .*60 mm/);
  });
});

const COMBINATIONS: [what: string, data: object, path: string][] = [
  ['a mouth within the bore', { cylinder: { barrel: { mouth_mm: 39 } } }, 'cylinder.barrel.mouth_mm'],
  ['a skirt all wall', { cylinder: { piston: { skirtWall_mm: 20 } } }, 'cylinder.piston.skirtWall_mm'],
  [
    'a crown thicker than the piston is long',
    { cylinder: { piston: { length_mm: 20, crownThickness_mm: 21 } } },
    'cylinder.piston.length_mm',
  ],
  ['a window without a top edge', { windows: { transfer: [{ width_mm: 10 }] } }, 'windows.transfer[0]'],
  [
    'a master rod in a cylinder that is not there',
    { crank: { rows: [{ cylinders: 3, master: 4 }] } },
    'crank.rows[0].master',
  ],
  [
    'too few axis angles',
    { crank: { rows: [{ cylinders: 3, axes_deg: [0, 120] }] } },
    'crank.rows[0].axes_deg',
  ],
  [
    'two cylinders on one axis',
    { crank: { rows: [{ cylinders: 2, axes_deg: [0, 360] }] } },
    'crank.rows[0].axes_deg[1]',
  ],
  [
    'a correction of a cylinder that is not there',
    { crank: { corrections: [{ cylinder: 'B1' }] } },
    'crank.corrections[0].cylinder',
  ],
  [
    'a cylinder corrected twice',
    { crank: { corrections: [{ cylinder: 'A2' }, { cylinder: 'A2' }] } },
    'crank.corrections[1].cylinder',
  ],
  [
    'a knuckle angle for the master',
    { crank: { corrections: [{ cylinder: 'A1', knuckle_deg: 3 }] } },
    'crank.corrections[0].knuckle_deg',
  ],
  ['a row’s collector that is not there', { crank: { rows: [{ collector: 2 }] } }, 'crank.rows[0].collector'],
  [
    'a cylinder’s collector that is not there',
    { crank: { corrections: [{ cylinder: 'A2', collector: 3 }] } },
    'crank.corrections[0].collector',
  ],
  [
    'a relief valve that shuts at more than it opens at',
    { plenum: { relief: { cracking_barGauge: 0.6, reseating_barGauge: 0.7 } } },
    'plenum.relief.reseating_barGauge',
  ],
  [
    'a relief valve open before it opens',
    { plenum: { relief: { cracking_barGauge: 0.9, fullOpen_barGauge: 0.5 } } },
    'plenum.relief.fullOpen_barGauge',
  ],
  ['a lowest speed above the highest', { wanted: { minSpeed_rpm: 9500 } }, 'wanted.minSpeed_rpm'],
  ['a first speed above the highest', { wanted: { speed_rpm: 9500 } }, 'wanted.speed_rpm'],
  [
    'a table without numbers',
    { windows: { scavenging: { law: 'table', inside: [0, 1] } } },
    'windows.scavenging.leaving',
  ],
  [
    'a falling table',
    { windows: { scavenging: { law: 'table', inside: [0, 0.6, 0.5, 1], leaving: [0, 0.1, 0.2, 1] } } },
    'windows.scavenging.inside',
  ],
  [
    'tables of two lengths',
    { windows: { scavenging: { law: 'table', inside: [0, 1], leaving: [0, 0.2, 1] } } },
    'windows.scavenging.leaving',
  ],
  [
    'openings that do not reach the whole window',
    { windows: { exhaustTable: { openings: [0, 0.2, 0.5, 0.9] } } },
    'windows.exhaustTable.openings',
  ],
  [
    'pressure ratios that fall',
    { windows: { exhaustTable: { pressureRatios: [1, 1.9, 1.3, 8] } } },
    'windows.exhaustTable.pressureRatios',
  ],
  [
    'a table with a coefficient missing',
    { windows: { transferTable: { forward: [0.8, 0.8, 0.77, 0.77, 0.7, 0.7, 0.68] } } },
    'windows.transferTable.forward',
  ],
  [
    'a table of λ whose speeds fall',
    { fuel: { mixture: 'over speed', lambdaTable: { speeds_rpm: [6000, 3000, 9000] } } },
    'fuel.lambdaTable.speeds_rpm',
  ],
  [
    'a table of λ with one speed',
    { fuel: { mixture: 'over speed', lambdaTable: { speeds_rpm: [6000], lambdas: [0.9] } } },
    'fuel.lambdaTable.speeds_rpm',
  ],
  [
    'a table of λ with one missing',
    { fuel: { mixture: 'over speed', lambdaTable: { speeds_rpm: [3000, 6000], lambdas: [0.9] } } },
    'fuel.lambdaTable.lambdas',
  ],
  ['a main jet where injectors feed', { fuel: { mixture: 'main jet', feed: 'passages' } }, 'fuel.mixture'],
  ['a gear train out of all proportion', { blower: { gears: [{ driver: 200, driven: 8 }] } }, 'blower.gears'],
  [
    'a gap wider than the rotor bears',
    { blower: { tipDiameter_mm: 15, tipGap_mm: 0.9 } },
    'blower.tipGap_mm',
  ],
];

describe('crossCheck', () => {
  it.each(COMBINATIONS)('refuses %s', (_, data, path) => {
    expect(faultPaths(read({ version: 1, ...data }))).toEqual([path]);
  });
});
