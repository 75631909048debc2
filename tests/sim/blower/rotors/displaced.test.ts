import { describe, expect, it } from 'vitest';
import { cycloidDisplacement, cycloidRipple } from '../../../../src/sim/blower/cycloid-rotors.ts';
import { displacedRipple, displacedVolume } from '../../../../src/sim/blower/rotors/displaced.ts';
import { halfPitch } from '../../../../src/sim/blower/rotors/profile.ts';
import type { RotorSection } from '../../../../src/sim/blower/rotors/profile.ts';
import { LOBES, SECTIONS, nameOf, sectionAt } from './sections.ts';

describe('displacedVolume', () => {
  it('of full cycloids is 0.785 D²L with two lobes, 0.638 with three, 0.534 with four, the closed form to 3e-6', () => {
    for (const [lobes, share] of [
      [2, 0.785],
      [3, 0.638],
      [4, 0.534],
    ] as const) {
      const section = sectionAt('cycloidal', lobes, 1);
      const D = 2 * section.tipRadius;
      const V = displacedVolume(section, 0.05);
      expect(V / (D * D * 0.05)).toBeCloseTo(share, 3);
      expect(Math.abs(V / cycloidDisplacement(D, 0.05, lobes) - 1)).toBeLessThan(3e-6);
    }
  });

  it('of arcs lies above that of cycloids of the same tips, as high as the 13 % that Ware measured (NACA TR 230)', () => {
    const more = (share: number) => {
      const section = sectionAt('circular arc', 2, share);
      return displacedVolume(section, 1) / cycloidDisplacement(2 * section.tipRadius, 1, 2) - 1;
    };
    expect(more(0.9)).toBeGreaterThan(0.1);
    expect(more(0.9)).toBeLessThan(0.13);
    expect(more(1)).toBeGreaterThan(0.13);
  });
});

/** Displaced in a turn by summing what the touching profiles sweep, angle by angle. */
function sweptByContact(section: RotorSection): number {
  const { lobes, tipRadius, pitchRadius } = section;
  let swept = 0;
  for (const piece of halfPitch(section)) {
    const steps = 2000;
    const at = (k: number) => {
      const { x, y, pitchAngle } = piece(k / steps);
      const [ix, iy] = [pitchRadius * Math.cos(pitchAngle), pitchRadius * Math.sin(pitchAngle)];
      const rho2 = (x * x + y * y + (x - 2 * ix) ** 2 + (y - 2 * iy) ** 2) / 2;
      return { pitchAngle, rate: tipRadius ** 2 - rho2 };
    };
    for (let k = 1; k <= steps; k++) {
      const [a, b] = [at(k - 1), at(k)];
      swept += ((b.pitchAngle - a.pitchAngle) * (a.rate + b.rate)) / 2;
    }
  }
  return 2 * lobes * swept;
}

describe('displacedRipple', () => {
  it.each(SECTIONS.map((section) => [nameOf(section), section] as const))(
    '%s: the flow past the touching profiles adds up to the displacement',
    (_, section) => {
      expect(sweptByContact(section) / displacedVolume(section, 1)).toBeCloseTo(1, 4);
    },
  );

  it('of full cycloids is a pure cosine of amplitude 1/(4 z + 1)', () => {
    for (const lobes of LOBES) {
      const { depth, swing } = displacedRipple(sectionAt('cycloidal', lobes, 1));
      expect(depth).toBeCloseTo(cycloidRipple(lobes), 5);
      expect(swing).toBeCloseTo(2 * cycloidRipple(lobes), 4);
    }
  });
});
