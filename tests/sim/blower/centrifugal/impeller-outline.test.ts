import { describe, expect, it } from 'vitest';
import { impellerOutline } from '../../../../src/sim/blower/centrifugal/impeller-outline.ts';

describe('impellerOutline', () => {
  it('reaches the tip radius with every blade, and none beyond', () => {
    const radii = impellerOutline({ blades: 9, backsweep: 0.6 }, 0.03).map(({ x, y }) => Math.hypot(x, y));
    expect(Math.max(...radii)).toBeCloseTo(0.03, 12);
    expect(radii.filter((r) => r > 0.03 - 1e-9)).toHaveLength(18);
  });

  it('bends blades back against the rotation, and leaves radial ones straight', () => {
    const angles = (backsweep: number) =>
      impellerOutline({ blades: 6, backsweep }, 1)
        .slice(0, 9)
        .map(({ x, y }) => Math.atan2(y, x));
    expect(angles(0.8)[8]).toBeLessThan(angles(0.8)[0]! - 0.2);
    const straight = angles(0);
    for (const angle of straight) expect(Math.abs(angle)).toBeLessThan(0.08);
  });
});
