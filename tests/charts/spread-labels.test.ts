import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spreadLabels } from '../../src/charts/spread-labels.ts';

describe('spreadLabels', () => {
  it('leaves labels where they belong when they are 14 apart', () => {
    expect(spreadLabels([80, 20, 50], 14, 0, 100)).toEqual([80, 20, 50]);
  });

  it('parts two labels at one place by the gap, half to each side', () => {
    expect(spreadLabels([50, 50], 14, 0, 100)).toEqual([43, 57]);
  });

  it('keeps every gap and stays inside while there is room, for any 1 to 6 labels', () => {
    const wanted = fc.array(fc.double({ min: -20, max: 120, noNaN: true }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(wanted, (labels) => {
        const places = spreadLabels(labels, 14, 0, 100).sort((a, b) => a - b);
        expect(places[0]).toBeGreaterThanOrEqual(-1e-9);
        expect(places.at(-1)).toBeLessThanOrEqual(100 + 1e-9);
        places.slice(1).forEach((place, i) => expect(place - places[i]!).toBeGreaterThanOrEqual(14 - 1e-9));
      }),
    );
  });
});
