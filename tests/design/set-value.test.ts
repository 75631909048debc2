import { describe, expect, it } from 'vitest';
import { readPath, valueAt } from '../../src/design/path.ts';
import { setValue, setValues } from '../../src/design/set-value.ts';
import { preset, sound } from './designs.ts';

const lovage = preset('lovage-7');
const at = (path: string, from: unknown) => valueAt(from, readPath(path)!);

const SET: [path: string, text: string, full: string, value: unknown][] = [
  ['cylinder.bore_mm', '42', 'cylinder.bore_mm', 42],
  ['cylinder.bore', '1.6 in', 'cylinder.bore_mm', 40.64],
  ['bore', '4,2 cm', 'cylinder.bore_mm', 42],
  ['lambda', '0,85', 'fuel.lambda', 0.85],
  ['oilShare', '3 %', 'fuel.oilShare', 0.03],
  ['spark', '20 BTDC', 'fuel.spark_degBTDC', 20],
  ['relief.cracking', '10 psi', 'plenum.relief.cracking_barGauge', 0.689475729317],
  ['surroundings.temperature', '50 °F', 'surroundings.temperature_C', 10],
  ['windows.transfer[1].width', '1/2 in', 'windows.transfer[1].width_mm', 12.7],
  ['gears[0].driver', '40', 'blower.gears[0].driver', 40],
  ['burning.enabled', 'no', 'fuel.burning.enabled', false],
  ['fuel.kind', 'Methanol', 'fuel.kind', 'methanol'],
  ['name', 'Mine = best', 'name', 'Mine = best'],
  [
    'rows[0].axes',
    '0, 50, 100, 155, 205, 260, 310',
    'crank.rows[0].axes_deg',
    [0, 50, 100, 155, 205, 260, 310],
  ],
  ['corrections[A3].barrel', '-0.5 mm', 'crank.corrections[0]', { cylinder: 'A3', barrel_mm: -0.5 }],
  ['restrictor.bore', '30mm', 'fuel.restrictor', { bore_mm: 30, discharge: 0.95, recovered: 0 }],
  ['relief', 'none', 'plenum.relief', null],
  ['lambda', 'default', 'fuel.lambda', 0.88],
  ['displacement', '110cc', 'blower.displacement_cc', 110],
];

describe('setValue', () => {
  it.each(SET)('sets %s to “%s”', (path, text, full, value) => {
    expect(at(full, sound(setValue(lovage, path, text)))).toEqual(value);
  });

  it('drops the angle of a window when its depth is set, and the depth when the angle is', () => {
    const depth = sound(setValue(lovage, 'windows.exhaust[0].top', '25.5mm'));
    expect(depth.windows.exhaust[0]).toMatchObject({ top_mm: 25.5 });
    expect(depth.windows.exhaust[0]).not.toHaveProperty('opens_degATDC');
    const angle = sound(setValue(depth, 'windows.exhaust[0].opens', '97°'));
    expect(angle.windows.exhaust[0]).not.toHaveProperty('top_mm');
  });

  it('leaves the design it was given as it was', () => {
    const before = structuredClone(lovage);
    sound(setValue(lovage, 'bore', '42'));
    expect(lovage).toEqual(before);
  });

  it.each([
    ['nothing', '1', 'there is no value'],
    ['bore..x', '1', 'is not a path'],
    ['windows.exhaust.width', '20', 'is in a list: say which one'],
    ['windows.exhaust[4].width', '20', 'has positions 0 to 0, not 4'],
    ['windows.exhaust[A1].width', '20', 'go by position'],
    ['discharge.forward', '1', 'there is no value'],
    ['forward', '1', 'write more of its path'],
    ['bore[0]', '20', 'is not a list'],
    ['bore', '5 cc', 'measures volume, not length'],
    ['bore', '5', 'allowed 15 to 150 mm'],
    ['fuel.kind', 'coal', 'one of petrol'],
    ['burning.enabled', 'perhaps', 'neither yes nor no'],
    ['gears[0].driver', '30.5', 'a whole number'],
    ['corrections[A9].barrel', '1', 'there is no cylinder A9'],
    ['relief', '3', 'holds several values'],
    ['minSpeed', '9600', 'allowed up to the highest'],
  ])('refuses %s = %s', (path, text, reason) => {
    const outcome = setValue(lovage, path, text);
    expect(outcome.ok ? '' : outcome.faults.map(({ message }) => message).join()).toContain(reason);
  });
});

describe('setValues', () => {
  it('checks once at the end, so that two values that only fit together can be changed', () => {
    const changes = [
      { path: 'minSpeed', text: '10000' },
      { path: 'wanted.maxSpeed', text: '11000' },
      { path: 'wanted.speed', text: '10500' },
    ];
    expect(sound(setValues(lovage, changes)).wanted).toMatchObject({
      minSpeed_rpm: 10000,
      maxSpeed_rpm: 11000,
    });
  });
});
