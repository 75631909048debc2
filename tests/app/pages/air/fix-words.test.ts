import { describe, expect, it } from 'vitest';
import {
  fixCosts,
  fixFailure,
  fixName,
  fixValue,
  targetText,
  teethText,
} from '../../../../src/app/pages/air/fix-words.ts';
import type { Fix, FixFigures } from '../../../../src/sim/study/match/fix.ts';
import { mm, rpm } from '../../../../src/sim/units.ts';
import { metric, workshop } from '../solved.ts';

const before: FixFigures = {
  figure: 0.51,
  deliveryRatio: 0.51,
  brakePower: 14e3,
  blowerPower: 250,
  chargeTemperature: 312,
  rotorSpeed: 12000 * rpm,
  tipSpeed: 31.4,
};
const after: FixFigures = {
  ...before,
  figure: 1,
  blowerPower: 1760,
  chargeTemperature: 323,
  rotorSpeed: 24400 * rpm,
};
const fix: Fix = {
  vary: 'blower.driveRatio',
  reached: true,
  from: 1.5,
  to: 3.05,
  figures: after,
  gears: [{ driverTeeth: 61, drivenTeeth: 20, efficiency: 0.985 }],
  sameCentres: false,
  reason: null,
  beyond: ['rotor speed'],
};
const target = { figure: 'deliveryRatio', value: 1 } as const;

describe('fixName and fixValue', () => {
  it('say which way it goes, in whole teeth and in the reader’s unit', () => {
    expect(fixName(fix)).toBe('Drive the blower faster');
    expect(fixName({ ...fix, to: 1.2 })).toBe('Drive the blower slower');
    expect(teethText(fix)).toBe('61 : 20 teeth, other shaft centres');
    expect(fixValue(fix, 3.05, metric)).toBe('3.050 : 1');
    expect(fixValue({ vary: 'windows.transfer' }, -1.27 * mm, metric)).toBe('1.27\u00a0mm down');
    expect(fixValue({ vary: 'windows.transfer' }, 1.27 * mm, workshop)).toBe('0.0500\u00a0in up');
  });
});

describe('fixCosts', () => {
  it('gives each with its change, and marks what passes a limit', () => {
    const costs = fixCosts(after, before, fix.beyond, metric);
    const of = (label: string) => costs.find((cost) => cost.label === label)!;
    expect(of('blower takes')).toMatchObject({
      text: '1.76\u00a0kW',
      change: '+1.51\u00a0kW',
      beyond: false,
    });
    expect(of('charge').change).toBe('+11\u00a0°C');
    expect(of('rotors')).toMatchObject({ text: '24400\u00a0rpm', change: '+12400\u00a0rpm', beyond: true });
    expect(of('rotor tips').change).toBe('as now');
  });

  it('writes a change of temperature without the offset of the scale: 11 K are 20 °F', () => {
    const charge = fixCosts(after, before, [], workshop).find(({ label }) => label === 'charge')!;
    expect(charge.change).toBe('+20\u00a0°F');
  });
});

describe('fixFailure', () => {
  const range = {
    fix: { ...fix, reached: false, reason: 'gaps below 0.02 mm cannot be held warm' },
    solvedAt: 500 * rpm,
    before,
    everywhere: false,
    least: { speed: 500 * rpm, figure: 1 },
    unsolved: [],
    cost: null,
  };

  it('names the nearest value, where, and what stops it', () => {
    expect(fixFailure(range, target, 101325, metric)).toBe(
      'Nearest is 1.00 at 500\u00a0rpm, with 3.050 : 1: gaps below 0.02 mm cannot be held warm.',
    );
  });

  it('names the speed at which one that does it elsewhere falls short, and speeds without an answer', () => {
    const short = { ...range, fix, least: { speed: 8000 * rpm, figure: 0.9 } };
    expect(fixFailure(short, target, 101325, metric)).toMatch(/leaves 0\.900 at 8000\u00a0rpm/);
    expect(fixFailure({ ...short, unsolved: [150 * rpm] }, target, 101325, metric)).toMatch(
      /no answer at 150\u00a0rpm/,
    );
  });
});

describe('targetText', () => {
  it('counts a pressure from ambient, as it was asked for', () => {
    expect(targetText({ figure: 'plenumPressure', value: 0 }, 121325, 101325, metric)).toBe(
      '0.200\u00a0bar (2.90\u00a0psi)',
    );
  });
});
