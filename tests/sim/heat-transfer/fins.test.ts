import { describe, expect, it } from 'vitest';
import {
  finAirCoefficient,
  finEfficiency,
  finnedCoefficient,
  mixedCoefficient,
} from '../../../src/sim/heat-transfer/fins.ts';
import { kmPerHour, mm } from '../../../src/sim/units.ts';

const fins = { height: 20 * mm, thickness: 1.5 * mm, space: 5 * mm, conductivity: 150 };

describe('finEfficiency', () => {
  it('is tanh(mL)/(mL): 0.76159 at 1, 1/(mL) for a long fin, 1 for none', () => {
    expect(finEfficiency(1)).toBeCloseTo(0.761594155955765, 14);
    expect(finEfficiency(50)).toBeCloseTo(1 / 50, 14);
    expect(finEfficiency(0)).toBe(1);
  });

  it('joins its series 1 - x²/3 without a step at 1e-4', () => {
    expect(finEfficiency(0.999999e-4)).toBeCloseTo(finEfficiency(1.000001e-4), 13);
  });
});

describe('finAirCoefficient', () => {
  // Fins of 20 mm, 6 mm apart, by hand: 20^0.8 = 10.986, 6^0.4 = 2.0477; 241.7 (0.0247 - 0.00794) = 4.051; 40^0.73 = 14.77 …
  it.each([
    [40, 60],
    [60, 80],
    [90, 108],
  ])('gives at %d km/h %d W/(m² K) between fins of 20 mm, 6 mm apart', (speed, expected) => {
    const found = finAirCoefficient({ height: 20 * mm, space: 6 * mm }, speed * kmPerHour);
    expect(Math.abs(found - expected)).toBeLessThan(0.6);
  });

  it('is nothing in still air, where natural convection is left', () => {
    expect(finAirCoefficient(fins, 0)).toBe(0);
    expect(mixedCoefficient(0, 8)).toBeCloseTo(8, 12);
    expect(mixedCoefficient(80, 8)).toBeCloseTo(80, 1);
  });
});

describe('finnedCoefficient', () => {
  // Biermann & Pinkel's equation by hand for 1.5 mm fins of 20 mm, 5 mm apart, on a root radius of 32 mm, k 150.
  it.each([
    [60, 514],
    [80, 671],
    [100, 822],
  ])('makes of %d W/(m² K) at the fins %d of root area', (q, expected) => {
    expect(Math.abs(finnedCoefficient(q, fins, 32 * mm) - expected)).toBeLessThan(0.6);
  });

  it('is q of a bare wall where the fins have no height and no thickness, and q times the area ratio where they conduct perfectly', () => {
    const none = { ...fins, height: 0, thickness: 1e-12 };
    expect(finnedCoefficient(80, none, 32 * mm)).toBeCloseTo(80, 6);
    const perfect = { ...fins, conductivity: 1e12 };
    const sides = 2 * (fins.height + fins.thickness / 2);
    const expected = (80 * (sides + fins.space)) / (fins.space + fins.thickness);
    expect(finnedCoefficient(80, perfect, Infinity) / expected).toBeCloseTo(1, 9);
  });
});
