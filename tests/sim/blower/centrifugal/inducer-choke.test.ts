import { describe, expect, it } from 'vitest';
import { inducerChoke } from '../../../../src/sim/blower/centrifugal/inducer-choke.ts';
import { orificeMassFlow } from '../../../../src/sim/exchange/orifice.ts';

const R = 287;
const T = 300;
const sound = Math.sqrt(1.4 * R * T);
const density = 1e5 / (R * T);

describe('inducerChoke', () => {
  it('is the choked orifice where nothing turns', () => {
    const orifice = orificeMassFlow(1e-3, 1e5, T, 0, 1.4, R);
    expect(inducerChoke(1e-3, 0, density, sound, 1.4) / orifice).toBeCloseTo(1, 12);
  });

  it('passes (2.4/2.4)^3 = 1 times density, speed of sound and area where blades run at the speed of sound', () => {
    expect(inducerChoke(1e-3, sound, density, sound, 1.4) / (1e-3 * density * sound)).toBeCloseTo(1, 12);
  });
});
