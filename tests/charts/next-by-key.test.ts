import { describe, expect, it } from 'vitest';
import { nextByKey, nextRound } from '../../src/charts/next-by-key.ts';

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

describe('nextRound', () => {
  const dial = { min: 0, max: 360, step: 1 };

  it('goes on from the first value past the last one, and from the last one below the first', () => {
    expect(nextRound('ArrowRight', { ...dial, value: 359 })).toBe(0);
    expect(nextRound('PageUp', { ...dial, value: 355 })).toBe(5);
    expect(nextRound('ArrowDown', { ...dial, value: 0 })).toBe(359);
    expect(nextRound('PageDown', { min: 90, max: 110, step: 1, value: 95 })).toBe(105);
  });

  it('starts over with Home, and knows no end to go to', () => {
    expect(nextRound('Home', { ...dial, value: 200 })).toBe(0);
    expect(nextRound('End', { ...dial, value: 200 })).toBeNull();
    expect(nextRound('Tab', { ...dial, value: 200 })).toBeNull();
  });
});
