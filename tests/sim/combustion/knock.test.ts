import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ignitionDelay, knockIntegral, octaneNeeded } from '../../../src/sim/combustion/knock.ts';
import { atm } from '../../../src/sim/units.ts';
import { presetEngine } from '../../helpers/engines.ts';

const { knock: law } = presetEngine('lovage-7');

describe('ignitionDelay', () => {
  // Worked out by hand from the law as printed: 17.68 ms (ON/100)^3.402 p^-1.7 exp(3800 K / T).
  it.each([
    [40, 800, 3.24e-3],
    [50, 850, 1.68e-3],
    [20, 700, 20.8e-3],
  ])('is as printed for octane 95 at %d atm and %d K', (pressure, temperature, delay) => {
    expect(ignitionDelay(law, pressure * atm, temperature, 95)).toBeCloseTo(delay, 4);
    expect(Math.abs(ignitionDelay(law, pressure * atm, temperature, 95) / delay - 1)).toBeLessThan(0.005);
  });
});

describe('knockIntegral', () => {
  it('of a steady state is time over delay', () => {
    const [p, T] = [30 * atm, 900];
    const integral = knockIntegral(law, 90, [0, 1e-3, 3e-3], [p, p, p], [T, T, T]);
    expect(integral).toBeCloseTo(3e-3 / ignitionDelay(law, p, T, 90), 12);
  });

  it('just reaches 1 with the octane number that is needed, whatever the history', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(
            fc.double({ min: 1, max: 80, noNaN: true }),
            fc.double({ min: 600, max: 1100, noNaN: true }),
          ),
          {
            minLength: 2,
            maxLength: 20,
          },
        ),
        fc.double({ min: 60, max: 120, noNaN: true }),
        (states, octane) => {
          const times = states.map((_, i) => i * 1e-4);
          const pressures = states.map(([p]) => p * atm);
          const temperatures = states.map(([, T]) => T);
          const of = (number: number) => knockIntegral(law, number, times, pressures, temperatures);
          expect(of(octaneNeeded(law, octane, of(octane)))).toBeCloseTo(1, 9);
        },
      ),
    );
  });
});
