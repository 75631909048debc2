import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mixingRate, shiftByInflow, shiftByOutflow } from '../../../src/sim/scavenging/zone-law.ts';

const R = 287;
const share = () => fc.double({ min: 0.01, max: 0.99, noNaN: true });

/**
 * A vessel of constant volume and pressure, full of gas at `hot`, that cold gas drives out unmixed: what leaves is of the hot zone.
 * Classical Runge-Kutta in the mass that enters; whatever volume enters leaves.
 */
function displaced(hot: number, cold: number, volumeShare: number, steps = 2000) {
  const pV = R * hot; // one kilogram to begin with
  const entering = (volumeShare * pV) / (R * cold);
  const slope = ([fresh, old, delta]: readonly number[]): number[] => {
    const mass = fresh! + old!;
    const xi = fresh! / mass;
    const phi = xi + delta!;
    const T = pV / (mass * R);
    const hotZone = ((1 - phi) / (1 - xi)) * T;
    const leaving = cold / hotZone;
    return [
      1,
      -leaving,
      shiftByInflow(cold / T, R, R, phi, xi, mass * R) +
        (xi > 0 ? leaving * shiftByOutflow(0, xi, phi, xi, mass) : 0),
    ];
  };
  let y = [0, 1, 0];
  const h = entering / steps;
  const beside = (k: number[], by: number) => y.map((v, i) => v + by * k[i]!);
  for (let i = 0; i < steps; i++) {
    const a = slope(y);
    const b = slope(beside(a, h / 2));
    const c = slope(beside(b, h / 2));
    const d = slope(beside(c, h));
    y = y.map((v, k) => v + (h / 6) * (a[k]! + 2 * b[k]! + 2 * c[k]! + d[k]!));
  }
  const [fresh, old, delta] = y as [number, number, number];
  const phi = fresh / (fresh + old) + delta;
  return { phi, freshTemperature: (phi * pV) / (fresh * R), oldTemperature: ((1 - phi) * pV) / (old * R) };
}

describe('shiftByInflow', () => {
  it('is nothing between gases of one temperature: the isothermal limits stay as they are', () => {
    fc.assert(
      fc.property(share(), share(), (xi, fresh) => {
        expect(shiftByInflow(1, fresh * R, R, xi, xi, R)).toBe(0);
      }),
    );
  });

  it('gives a first breath of fresh gas at T_i its volume: (T_i/T − 1) F_i / (m R) per kilogram', () => {
    expect(shiftByInflow(0.3, R, R, 0, 0, 2 * R)).toBeCloseTo(-0.7 / 2, 14);
  });

  it('leaves the fresh zone its temperature where gas staler than the old one comes in as hot as the whole', () => {
    // T_f/T = phi/phi_m stays: d phi / phi = d phi_m / phi_m.
    const [phi, mixed] = [0.2, 0.5];
    const shift = shiftByInflow(1, -0.3 * R, R, phi, mixed, R);
    const ofMixed = -0.3 - mixed;
    expect(shift + ofMixed).toBeCloseTo((phi / mixed) * -0.3 - phi, 14);
  });
});

describe('shiftByOutflow', () => {
  it('is nothing where the bulk leaves, whatever the temperatures', () => {
    fc.assert(
      fc.property(share(), share(), (xi, phi) => {
        expect(Math.abs(shiftByOutflow(xi, xi, phi, xi, 1))).toBeLessThan(1e-12);
      }),
    );
  });

  it('with cold gas at 330 K driving out hot at 1100 K, holds both temperatures to 1e-6 and fills the volume in proportion', () => {
    for (const volume of [0.1, 0.5, 0.9]) {
      const { phi, freshTemperature, oldTemperature } = displaced(1100, 330, volume);
      expect(Math.abs(phi / volume - 1)).toBeLessThan(1e-6);
      expect(Math.abs(freshTemperature / 330 - 1)).toBeLessThan(1e-6);
      expect(Math.abs(oldTemperature / 1100 - 1)).toBeLessThan(1e-6);
    }
  });
});

describe('mixingRate', () => {
  it('is nothing while burned gas alone leaves, or fresh gas alone, and the highest rate where the bulk leaves', () => {
    expect(mixingRate(0, 0.3, 50, 1000)).toBe(0);
    expect(mixingRate(1, 0.3, 50, 1000)).toBe(0);
    expect(mixingRate(0.3, 0.3, 50, 1000)).toBe(1000);
  });

  it('turns the zones over once a filling where what leaves is half of the bulk, half of one zone: q, the highest rate being far off', () => {
    expect(mixingRate(0.2, 0.4, 50, 1e9)).toBeCloseTo(50, 4);
  });

  it('stays between 0 and the highest rate', () => {
    fc.assert(
      fc.property(share(), share(), fc.double({ min: 0, max: 1e4, noNaN: true }), (beta, xi, q) => {
        const k = mixingRate(beta, xi, q, 1000);
        expect(k).toBeGreaterThanOrEqual(0);
        expect(k).toBeLessThanOrEqual(1000 * (1 + 1e-12));
      }),
    );
  });
});
