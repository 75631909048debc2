import { describe, expect, it } from 'vitest';
import { flameOf, flameSpeed } from '../../../src/sim/combustion/flame.ts';
import { FLAME_SPEED_LAWS, laminarFlameSpeed } from '../../../src/sim/combustion/flame-speed.ts';
import { atm } from '../../../src/sim/units.ts';

const blended = (share: number) => flameOf({ fuel: 'isooctane', blend: { fuel: 'methanol', share } });
const alone = (fuel: 'isooctane' | 'methanol') =>
  laminarFlameSpeed(FLAME_SPEED_LAWS[fuel], 650, 8 * atm, 0.95, 0.1);
const speed = (share: number) => flameSpeed(blended(share), 650, 8 * atm, 0.95, 0.1);

describe('flameSpeed', () => {
  it('is the harmonic mean of two fuels that give the same heat', () => {
    const fast = { ...FLAME_SPEED_LAWS.isooctane, peak: 0.4, curvature: 1 };
    const slow = { ...fast, peak: 0.3 };
    const flame = [fast, slow].map((law) => ({ law, energyShare: 0.5 }));
    expect(flameSpeed(flame, 298, atm, 1 / fast.fastestPhi, 0)).toBeCloseTo(2 / (1 / 0.4 + 1 / 0.3), 12);
  });

  it('is that of either fuel alone at the ends, and rises between them with the faster one', () => {
    expect(speed(0)).toBe(alone('isooctane'));
    expect(speed(1)).toBe(alone('methanol'));
    const speeds = [0, 0.2, 0.5, 0.8, 1].map(speed);
    expect(speeds).toEqual([...speeds].sort((a, b) => a - b));
    expect(new Set(speeds).size).toBe(5);
  });
});

describe('flameOf', () => {
  it('weighs fuels by their heat: 10 % ethanol give 6.8 % of that of E10', () => {
    // 79.4 g x 26.8 MJ/kg of 2.13 + 670.5 g x 43.4 MJ/kg.
    const [, ethanol] = flameOf({ fuel: 'petrol', blend: { fuel: 'ethanol', share: 0.1 } });
    expect(ethanol!.energyShare).toBeCloseTo((79.4 * 26.8) / (79.4 * 26.8 + 670.5 * 43.4), 3);
  });
});
