import { describe, expect, it } from 'vitest';
import { gasWork } from '../../../src/sim/results/gas-work.ts';
import { changed, presetEngine, solveAt, solved } from '../../helpers/engines.ts';

const plain = presetEngine('caraway-1');
const whole = changed(plain, {
  friction: { oilPumpTorque: 0.02, starterTorque: 0.05, outputGearEfficiency: 0.97 },
});
const point = solved(solveAt(whole, 6000));
const parts = gasWork(point);
const power = (what: string): number => parts.find((each) => each.what === what)!.power;

describe('gasWork', () => {
  it('finds where the whole work of the gas goes', () => {
    const { imep, sweptVolume } = point.engine;
    const gas = (imep * sweptVolume * point.speed) / (2 * Math.PI);
    const sum = parts.reduce((total, each) => total + each.power, 0);
    expect(Math.abs(sum / gas - 1)).toBeLessThan(1e-12);
    expect(parts.reduce((total, { share }) => total + share!, 0)).toBeCloseTo(1, 12);
  });

  it('takes T ω for oil pump and starter, and 3 % of what comes to the gears for the gears', () => {
    expect(power('oilPump')).toBeCloseTo(0.02 * point.speed, 9);
    expect(power('starter')).toBeCloseTo(0.05 * point.speed, 9);
    expect(power('outputGears') / (power('outputGears') + power('brake'))).toBeCloseTo(0.03, 9);
  });

  it('has no share where the gas does no work', () => {
    const cold = solved(solveAt(changed(plain, { combustion: { enabled: false } }), 6000));
    for (const { share } of gasWork(cold)) expect(share).toBeNull();
  });
});
