import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fourierSums } from '../../../src/sim/numerics/fourier-sums.ts';
import { TURN } from '../../../src/sim/units.ts';

describe('fourierSums', () => {
  it('finds the cosines and sines that a curve is made of, and none that it is not', () => {
    const amplitude = fc.double({ min: -10, max: 10, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(amplitude, amplitude), { minLength: 3, maxLength: 3 }),
        amplitude,
        (made, mean) => {
          const values = Float64Array.from({ length: 96 }, (_, j) =>
            made.reduce((sum, [re, im], i) => {
              const angle = (TURN * j * (i + 1)) / 96;
              return sum + re * Math.cos(angle) + im * Math.sin(angle);
            }, mean),
          );
          fourierSums(values, 6).forEach(({ re, im }, i) => {
            expect(re).toBeCloseTo(made[i]?.[0] ?? 0, 10);
            expect(im).toBeCloseTo(made[i]?.[1] ?? 0, 10);
          });
        },
      ),
      { seed: 7, numRuns: 50 },
    );
  });
});
