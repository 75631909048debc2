import { describe, expect, it } from 'vitest';
import {
  dilutionFactor,
  FLAME_SPEED_LAWS,
  laminarFlameSpeed,
} from '../../../src/sim/combustion/flame-speed.ts';
import { atm } from '../../../src/sim/units.ts';

const { petrol, isooctane, methanol } = FLAME_SPEED_LAWS;

describe('laminarFlameSpeed', () => {
  // Peaks and stoichiometric speeds at 298 K, 1 atm: Metghalchi & Keck 1982; Rhodes & Keck 1985 [m/s].
  it.each([
    ['petrol', 1.21, 0.305],
    ['isooctane', 1.13, 0.263],
    ['methanol', 1.11, 0.369],
    ['isooctane', 1, 0.2487],
    ['petrol', 1, 0.2808],
  ] as const)('gives %s at phi %d the published %d m/s at 298 K and 1 atm', (fuel, phi, speed) => {
    expect(laminarFlameSpeed(FLAME_SPEED_LAWS[fuel], 298, atm, 1 / phi, 0)).toBeCloseTo(speed, 4);
  });

  it('rises as T^2.18 and falls as p^-0.16 for stoichiometric isooctane', () => {
    const at = (T: number, p: number) => laminarFlameSpeed(isooctane, T, p, 1, 0);
    expect(at(596, atm) / at(298, atm)).toBeCloseTo(2 ** 2.18, 10);
    expect(at(298, 10 * atm) / at(298, atm)).toBeCloseTo(10 ** -0.16, 10);
  });

  it('stays positive from lambda 0.5 to 2.5, and falls away from the fastest mixture, its continuation included', () => {
    for (const law of [petrol, isooctane, methanol]) {
      const cold = (phi: number) => laminarFlameSpeed(law, 298, atm, 1 / phi, 0);
      for (let phi = 0.4; phi < 2; phi += 0.02) {
        expect(cold(phi)).toBeGreaterThan(0);
        if (phi + 0.02 < law.fastestPhi) expect(cold(phi + 0.02)).toBeGreaterThan(cold(phi));
        if (phi > law.fastestPhi) expect(cold(phi + 0.02)).toBeLessThan(cold(phi));
      }
    }
  });
});

describe('dilutionFactor', () => {
  it('leaves 1, 0.65 and 0.29 of the speed at 0, 10 and 25 % of burned gas by mole (Rhodes & Keck 1985)', () => {
    expect(dilutionFactor(0)).toBe(1);
    expect(dilutionFactor(0.1)).toBeCloseTo(0.65, 2);
    expect(dilutionFactor(0.25)).toBeCloseTo(0.29, 2);
  });

  it('leaves all of it where round-off has left less burned gas than none', () => {
    expect(dilutionFactor(-7.5e-8)).toBe(1);
  });

  it('goes over into its continuation with the same value and slope, and stays positive to 1', () => {
    const h = 1e-6;
    const slopeBelow = (dilutionFactor(0.25) - dilutionFactor(0.25 - h)) / h;
    const slopeAbove = (dilutionFactor(0.25 + h) - dilutionFactor(0.25)) / h;
    expect(Math.abs(slopeAbove / slopeBelow - 1)).toBeLessThan(1e-4);
    for (let x = 0; x < 0.99; x += 0.01) expect(dilutionFactor(x + 0.01)).toBeLessThan(dilutionFactor(x));
    expect(dilutionFactor(1)).toBeGreaterThan(0);
  });
});
