import { describe, expect, it } from 'vitest';
import { nextByKey } from '../../src/charts/next-by-key.ts';

const reach = { value: 20, min: 0, max: 25, step: 2 };

describe('nextByKey', () => {
  it('moves by a step with arrows, by ten with page keys, to the ends with Home and End', () => {
    const keys = ['ArrowRight', 'ArrowDown', 'PageDown', 'Home', 'End'];
    expect(keys.map((key) => nextByKey(key, reach))).toEqual([22, 18, 0, 0, 25]);
  });

  it('stops at the ends', () => {
    expect(nextByKey('PageUp', reach)).toBe(25);
  });

  it('leaves every other key alone', () => {
    expect(['a', 'Tab', 'Enter', 'constructor'].map((key) => nextByKey(key, reach))).toEqual([
      null,
      null,
      null,
      null,
    ]);
  });
});
