import { describe, expect, it } from 'vitest';
import { openGap, warmGaps } from '../../../../src/sim/blower/slip/warm-gap.ts';
import { changed, presetEngine } from '../../../helpers/engines.ts';

const { blower } = presetEngine('lovage-7');

describe('warmGaps', () => {
  it('loses R (23e-6 x 80 - 23e-6 x 40) at the tips with gas of 100 degrees and air of 20, all aluminium: 0.026 mm', () => {
    const { tip } = warmGaps(blower, 0, true, 293.15);
    const lost = tip.lost + 80 * tip.perKelvin;
    expect(lost).toBeCloseTo((blower.tipDiameter / 2) * 23e-6 * 40, 12);
  });

  it('loses nothing where heat is left out, and a film takes its share', () => {
    const { tip } = warmGaps(blower, 0.2, false, 293.15);
    expect(openGap(tip, 400)).toBeCloseTo(0.8 * blower.rotors.gaps.tip, 15);
  });

  it('closes more in a casing of steel', () => {
    const steel = changed(blower, { rotors: { casingMaterial: 'steel' } });
    const open = (each: typeof blower) => openGap(warmGaps(each, 0, true, 293.15).end, 340);
    expect(open(steel)).toBeLessThan(open(blower));
  });
});

describe('openGap', () => {
  const gap = { cold: 5e-5, lost: 0, perKelvin: 1e-6 };
  it('is the cold gap at 20 degrees to a quarter of a percent, and never closes', () => {
    expect(openGap(gap, 293.15) / 5e-5).toBeCloseTo(1, 2);
    expect(openGap(gap, 600)).toBeGreaterThan(0);
    expect(openGap(gap, 600)).toBeLessThan(1e-6);
  });
});
