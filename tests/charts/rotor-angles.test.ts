import { describe, expect, it } from 'vitest';
import { rotorAngles } from '../../src/charts/rotor-angles.ts';
import { matingAngle } from '../../src/sim/blower/rotors/mesh-gap.ts';

describe('rotorAngles', () => {
  it.each([2, 3, 4])('stand as the rotors of %i lobes mesh, seen with y downwards, at any angle', (lobes) => {
    for (let turned = 0; turned < 6; turned += 0.37) {
      const [left, right] = rotorAngles(turned, lobes);
      // Page angles run clockwise: the left rotor turned by -turned there is turned by +turned seen with y upwards.
      const pitch = (2 * Math.PI) / lobes;
      const off = (-right - matingAngle(-left, lobes)) / pitch;
      expect(off - Math.round(off)).toBeCloseTo(0, 10);
    }
  });
});
