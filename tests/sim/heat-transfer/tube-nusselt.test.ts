import { describe, expect, it } from 'vitest';
import { gasConductivity } from '../../../src/sim/heat-transfer/gas-transport.ts';
import { tubeCoefficient, tubeNusselt } from '../../../src/sim/heat-transfer/tube-nusselt.ts';

describe('tubeNusselt', () => {
  it('is 3.66 in laminar flow, at rest too', () => {
    for (const Re of [0, 500, 2300]) expect(tubeNusselt(Re, 0.7)).toBe(3.66);
  });

  it('agrees with 0.022 Re^0.8 Pr^0.5 for gases (Kays & Crawford 1980) within 5 % from 20 000 to 500 000', () => {
    for (const Re of [2e4, 1e5, 5e5])
      expect(Math.abs(tubeNusselt(Re, 0.7) / (0.022 * Re ** 0.8 * 0.7 ** 0.5) - 1)).toBeLessThan(0.05);
  });

  it('rises steadily through the transition, value and slope continuous at 2300 and 4000', () => {
    for (let Re = 2300; Re < 8000; Re += 10)
      expect(tubeNusselt(Re + 10, 0.7)).toBeGreaterThan(tubeNusselt(Re, 0.7));
    const slope = (Re: number) => (tubeNusselt(Re + 0.01, 0.7) - tubeNusselt(Re - 0.01, 0.7)) / 0.02;
    for (const Re of [2300, 4000]) {
      expect(Math.abs(tubeNusselt(Re + 1e-6, 0.7) - tubeNusselt(Re, 0.7))).toBeLessThan(1e-6);
      expect(Math.abs(slope(Re + 0.1) - slope(Re - 0.1))).toBeLessThan(1e-5);
    }
  });
});

describe('tubeCoefficient', () => {
  it('is enhancement x 3.66 k / D without flow', () => {
    expect(tubeCoefficient(0.02, 0, 320, 2)).toBeCloseTo((2 * 3.66 * gasConductivity(320)) / 0.02, 12);
  });

  it('is 73 W/(m² K) within 2 % for 20 kg/(s m²) in 20 mm at 320 K', () => {
    // By hand: mu 20.0e-6 Pa s, Re 20 010; f/8 0.00327, Nu 51.4; k 0.0285 W/(m K).
    expect(Math.abs(tubeCoefficient(0.02, 20, 320, 1) / 73.3 - 1)).toBeLessThan(0.02);
  });
});
