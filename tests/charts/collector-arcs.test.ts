import { describe, expect, it } from 'vitest';
import { collectorArcs } from '../../src/charts/collector-arcs.ts';

const third = (2 * Math.PI) / 3;

describe('collectorArcs', () => {
  it('joins three even cylinders of one collector over two thirds of a turn', () => {
    const [arc, ...others] = collectorArcs([0, third, 2 * third].map((angle) => ({ angle, collector: 0 })));
    expect(others).toEqual([]);
    expect(arc!.sweep).toBeCloseTo(2 * third, 12);
  });

  it('goes the shorter way round: from 350° to 20° over the top, 30° long', () => {
    const deg = Math.PI / 180;
    const [arc] = collectorArcs([20, 350].map((angle) => ({ angle: angle * deg, collector: 4 })));
    expect(arc).toMatchObject({ collector: 4 });
    expect(arc!.from / deg).toBeCloseTo(350, 10);
    expect(arc!.sweep / deg).toBeCloseTo(30, 10);
  });

  it('gives each of two collectors its own arc, and one cylinder alone no length', () => {
    const arcs = collectorArcs([
      { angle: 0, collector: 1 },
      { angle: 1, collector: 0 },
      { angle: 2, collector: 0 },
    ]);
    expect(arcs.map(({ collector, sweep }) => [collector, Math.round(1e9 * sweep) / 1e9])).toEqual([
      [0, 1],
      [1, 0],
    ]);
  });
});
