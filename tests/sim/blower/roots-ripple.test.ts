import { describe, expect, it } from 'vitest';
import { cycloidDisplacement, cycloidRipple } from '../../../src/sim/blower/cycloid-rotors.ts';
import { helixAttenuation, ripplesTogether, rootsRipple } from '../../../src/sim/blower/roots-ripple.ts';
import { deg } from '../../../src/sim/units.ts';

/** Mean of f over equal steps of [0, to). */
function mean(f: (x: number) => number, to: number, steps: number): number {
  let sum = 0;
  for (let i = 0; i < steps; i++) sum += f((i * to) / steps);
  return sum / steps;
}

describe('rootsRipple', () => {
  it('has a mean of exactly 1 over a turn of the rotor', () => {
    for (const lobes of [2, 3, 4])
      expect(mean((phi) => rootsRipple(phi, lobes, 0.2), 2 * Math.PI, 64 * lobes)).toBeCloseTo(1, 14);
  });

  it('pulses 2 x lobes times a turn: repeats after pi/lobes, opposes itself half way', () => {
    for (const lobes of [2, 3, 4]) {
      expect(rootsRipple(0.3 + Math.PI / lobes, lobes, 0.2)).toBeCloseTo(rootsRipple(0.3, lobes, 0.2), 12);
      expect(rootsRipple(0.3 + Math.PI / (2 * lobes), lobes, 0.2) - 1).toBeCloseTo(
        1 - rootsRipple(0.3, lobes, 0.2),
        12,
      );
    }
  });

  it('is the volume swept between tip seals and the point of contact on the generating circles, cycloids of 2 to 4 lobes', () => {
    for (const z of [2, 3, 4]) {
      const a = 1 / (2 * z);
      const R = 1 + 1 / z;
      /** Displaced per radian and length, axes one pitch radius either side of the pitch point. */
      const swept = (phi: number) => {
        const beta = phi / a; // the contact goes once round a generating circle in one pulse
        const [x, y] = [a - a * Math.cos(beta), a * Math.sin(beta)];
        const rho2 = (axis: number) => (x - axis) ** 2 + y ** 2;
        return R * R - (rho2(1) + rho2(-1)) / 2;
      };
      const average = mean(swept, Math.PI / z, 200);
      expect(2 * Math.PI * average).toBeCloseTo(cycloidDisplacement(2 * R, 1, z), 10);
      for (const phi of [0, 0.1, 0.4, 1])
        expect(swept(phi) / average).toBeCloseTo(rootsRipple(phi, z, cycloidRipple(z)), 10);
    }
  });
});

describe('helixAttenuation', () => {
  it('leaves a straight rotor alone and evens a twist of one pulse wholly', () => {
    for (const lobes of [2, 3, 4]) {
      expect(helixAttenuation(lobes, 0)).toBe(1);
      expect(helixAttenuation(lobes, 1e-9)).toBeCloseTo(1, 12);
      expect(helixAttenuation(lobes, Math.PI / lobes)).toBeCloseTo(0, 12);
    }
  });

  it('is the average of slices twisted along the rotor: 60 degrees on two lobes', () => {
    const twist = Math.PI / 3;
    const slices = 4000;
    const averaged = mean(
      (s) => rootsRipple(0.2 + s - twist / 2 + twist / (2 * slices), 2, 1) - 1,
      twist,
      slices,
    );
    expect(averaged).toBeCloseTo(helixAttenuation(2, twist) * (rootsRipple(0.2, 2, 1) - 1), 6);
  });
});

describe('ripplesTogether', () => {
  const delivery = (share: number, phase: number, phi: number, lobes: number) =>
    rootsRipple(phase + phi, lobes, 0.2 * share);

  it('is the mean of the single ripples at every angle, three blowers of two lobes 17° apart', () => {
    const blowers = { count: 3, lobes: 2, phase: 0.3, phaseStep: 17 * deg };
    const { share, phase } = ripplesTogether(blowers);
    for (const phi of [0, 0.4, 1.3, 2.9]) {
      const each = [0, 1, 2].map((k) => rootsRipple(0.3 + k * 17 * deg + phi, 2, 0.2));
      expect(delivery(share, phase, phi, 2)).toBeCloseTo((each[0]! + each[1]! + each[2]!) / 3, 14);
    }
  });

  it('vanishes for two blowers half a pulse apart, 90° over the lobes', () => {
    expect(ripplesTogether({ count: 2, lobes: 3, phase: 0.1, phaseStep: 30 * deg }).share).toBeLessThan(
      1e-15,
    );
  });

  it('is the single ripple where all stand alike', () => {
    expect(ripplesTogether({ count: 4, lobes: 3, phase: 0.2, phaseStep: 0 })).toEqual({
      share: 1,
      phase: 0.2,
    });
  });
});
