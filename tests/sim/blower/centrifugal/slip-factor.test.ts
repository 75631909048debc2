import { describe, expect, it } from 'vitest';
import { stanitzSlipFactor, wiesnerSlipFactor } from '../../../../src/sim/blower/centrifugal/slip-factor.ts';

describe('wiesnerSlipFactor', () => {
  it('is 0.877 with 20 radial blades and 0.837 with 12 swept back by 30 degrees: by hand', () => {
    expect(wiesnerSlipFactor(20, 0)).toBeCloseTo(0.8772, 4);
    expect(wiesnerSlipFactor(12, Math.PI / 6)).toBeCloseTo(0.8366, 4);
  });

  it('tends to 1 with ever more blades', () => {
    expect(wiesnerSlipFactor(1e6, 0)).toBeGreaterThan(0.9999);
  });

  it('lies within 0.03 of the potential flow of Stanitz for 10 to 30 radial blades', () => {
    for (const blades of [10, 15, 20, 30])
      expect(Math.abs(wiesnerSlipFactor(blades, 0) - stanitzSlipFactor(blades))).toBeLessThan(0.03);
  });
});

describe('stanitzSlipFactor', () => {
  it('is 0.884 with 17 blades, 1 - 1.98/Z as usually printed', () => {
    expect(stanitzSlipFactor(17)).toBeCloseTo(0.884, 3);
  });
});
