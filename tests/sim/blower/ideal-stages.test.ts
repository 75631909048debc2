import { describe, expect, it } from 'vitest';
import { idealRootsStages } from '../../../src/sim/blower/ideal-stages.ts';

describe('idealRootsStages', () => {
  it('has an isentropic efficiency of 56.7 % at pressure ratio 4 in one stage, gamma 1.4', () => {
    expect(idealRootsStages(4, 1, false).efficiency).toBeCloseTo(0.567, 3);
  });

  it('has 74.4 % in two equal stages, 85.0 % where the gas is cooled to inlet temperature between them', () => {
    expect(idealRootsStages(4, 2, false).efficiency).toBeCloseTo(0.744, 3);
    expect(idealRootsStages(4, 2, true).efficiency).toBeCloseTo(0.85, 3);
  });

  it('heats by the work that it takes: T2/T1 = 1 + work (gamma - 1)/gamma without cooling, for any stages', () => {
    for (const stages of [1, 2, 3]) {
      const { work, heating } = idealRootsStages(2.5, stages, false);
      expect(heating).toBeCloseTo(1 + (work * 0.4) / 1.4, 12);
    }
  });

  it('nears isentropic compression as stages grow, and is 1 where there is nothing to compress', () => {
    expect(idealRootsStages(4, 400, false).efficiency).toBeCloseTo(1, 2);
    expect(idealRootsStages(1, 1, false).efficiency).toBe(1);
  });
});
