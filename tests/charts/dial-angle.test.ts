import { describe, expect, it } from 'vitest';
import { dialAngle, nameEvery } from '../../src/charts/dial-angle.ts';

describe('dialAngle', () => {
  it('counts clockwise from the top: up 0°, right 90°, down 180°, left 270°', () => {
    const angles = [
      [0, -5],
      [5, 0],
      [0, 5],
      [-5, 0],
    ].map(([x, y]) => dialAngle(x!, y!));
    expect(angles).toEqual([0, 90, 180, 270]);
  });
});

describe('nameEvery', () => {
  it('names all of 7 on a circle of radius 130, and every third of 56 with 20 px each', () => {
    expect(nameEvery(130, 7, 20)).toBe(1);
    expect(nameEvery(65, 56, 20)).toBe(3);
  });
});
