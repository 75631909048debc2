import { describe, expect, it } from 'vitest';
import { findRoot } from '../../../src/sim/numerics/find-root.ts';
import { stepwiseRoot } from '../../../src/sim/study/stepwise-root.ts';
import { finishStudy } from '../../../src/sim/study/study-step.ts';

const f = (x: number) => Math.exp(x) - 3;

describe('stepwiseRoot', () => {
  it('finds what findRoot finds, asking for every place once and yielding in between', () => {
    const asked: number[] = [];
    const plain: number[] = [];
    const run = stepwiseRoot(
      function* (x: number): Generator<string, number> {
        asked.push(x);
        yield 'working';
        return f(x);
      },
      0,
      2,
      1e-10,
    );
    const root = finishStudy(run);
    const direct = findRoot((x) => (plain.push(x), f(x)), 0, 2, 1e-10);
    expect(root).toBe(direct);
    expect(root).toBeCloseTo(Math.log(3), 9);
    expect(asked).toEqual(plain);
  });

  it('does not ask again for what is known', () => {
    const asked: number[] = [];
    finishStudy(
      stepwiseRoot(
        function* (x: number): Generator<string, number> {
          asked.push(x);
          yield 'working';
          return f(x);
        },
        0,
        2,
        1e-6,
        new Map([
          [0, f(0)],
          [2, f(2)],
        ]),
      ),
    );
    expect(asked).not.toContain(0);
    expect(asked).not.toContain(2);
  });

  it('passes on what goes wrong in the function', () => {
    const broken = stepwiseRoot(
      function* (): Generator<string, number> {
        yield 'working';
        throw new Error('broken');
      },
      0,
      1,
      1e-6,
    );
    expect(() => finishStudy(broken)).toThrow('broken');
  });
});
