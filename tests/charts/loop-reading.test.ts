import { describe, expect, it } from 'vitest';
import { loopScrub, readLoop } from '../../src/charts/loop-reading.ts';

const moved: number[] = [];
const cursor = {
  value: 118,
  name: 'crank angle',
  min: 0,
  max: 360,
  step: 1,
  format: (value: number) => `${value}°`,
  onmove: (value: number) => moved.push(value),
};
const along = [0, 60, 120, 180, 240, 300];

describe('readLoop', () => {
  it('reads the point nearest to the cursor while nothing is pointed at, and says where the cursor is', () => {
    expect(readLoop(along, cursor, null)).toEqual({ now: 2, index: 2, place: 'at 118°' });
  });

  it('reads the point that is pointed at, and says where that is', () => {
    expect(readLoop(along, cursor, 4)).toEqual({ now: 2, index: 4, place: 'at 240°' });
  });

  it('finds no point on a loop without any', () => {
    expect(readLoop([], cursor, null).index).toBe(-1);
  });
});

describe('loopScrub', () => {
  const hovers: (number | null)[] = [];
  const scrub = loopScrub(
    along,
    cursor,
    () => 0,
    (index) => hovers.push(index),
  );

  it('reads the point under the pointer, and none where none is or the pointer has left', () => {
    [4, -1, null].forEach(scrub.onhover);
    expect(hovers.splice(0)).toEqual([4, null, null]);
  });

  it('takes the cursor to the point pressed, and nowhere when there is none; nothing is pointed at then', () => {
    [5, -1].forEach((index) => scrub.onmove!(index));
    expect(moved).toEqual([300]);
    expect(hovers).toEqual([null, null]);
  });
});
