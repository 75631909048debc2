import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { finishStudy } from '../../../../src/sim/index.ts';
import { firingOrder } from '../../../../src/sim/geometry/firing-order.ts';
import { alternatives } from '../../../../src/sim/study/even/alternatives.ts';
import { MEASURES, outdone, rank } from '../../../../src/sim/study/even/ranking.ts';
import type { Alternative } from '../../../../src/sim/study/even/ranking.ts';
import { collectorsShared, withArrangement } from '../../../../src/sim/study/even/arrangement.ts';
import { candidates } from '../../../../src/sim/study/even/candidates.ts';
import { withPlainRods } from '../../../../src/sim/study/even/switched-off.ts';
import { TURN, deg } from '../../../../src/sim/units.ts';
import { at, modelOf, presetEngine } from '../../../helpers/engines.ts';

const angelica = presetEngine('angelica-14');

/** Two rows of so many plain rods, as Angelica has them. */
function twoRows(count: number) {
  const plain = withPlainRods(angelica);
  const [row] = plain.train.rows;
  const cylinders = Array.from({ length: count }, (_, j) => ({
    ...row!.cylinders[row!.master]!,
    rodLength: plain.train.masterRodLength,
    axisAngle: (j * TURN) / count,
    knuckleAngle: (j * TURN) / count,
  }));
  const rows = [0, 1].map(() => ({ ...row!, master: 0, cylinders }));
  return modelOf({ ...plain, train: { ...plain.train, rows } });
}

const gapsOf = (engine: Parameters<typeof modelOf>[0]) =>
  firingOrder(modelOf(engine).geometry.cylinders.map(({ tdc }) => tdc)).map(({ interval }) => interval);

describe('candidates', () => {
  it('offers interleaved rows of 2 N plain rods that fire every 360/(2 N) degrees, at every stagger it offers', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 9 }), (count) => {
        const model = twoRows(count);
        const ways = candidates(model).filter(({ altered }) => altered === 'rows' || altered === 'nothing');
        const evenAt = new Set<number>();
        for (const { arrangement } of ways) {
          const gaps = gapsOf(withArrangement(model.engine, arrangement));
          const isEven = gaps.every((gap) => Math.abs(gap - TURN / (2 * count)) < 1e-9);
          if (isEven) evenAt.add(Math.round(arrangement.rows[1]!.staggerAngle / deg / 0.01));
        }
        const staggers = new Set(
          ways.map(({ arrangement }) => Math.round(arrangement.rows[1]!.staggerAngle / deg / 0.01)),
        );
        expect(evenAt).toEqual(staggers);
      }),
      { seed: 8, numRuns: 4 },
    );
  });

  it('names each way once, the one as built first, and that of Angelica 14 among the even ones', () => {
    const ways = candidates(modelOf(angelica));
    expect(ways[0]!.key).toBe('as built');
    expect(new Set(ways.map(({ key }) => key)).size).toBe(ways.length);
    const built = withArrangement(withPlainRods(angelica), ways[0]!.arrangement);
    for (const gap of gapsOf(built)) expect(gap / deg).toBeCloseTo(360 / 14, 6);
  });

  it('spreads two straight blowers half a pulse apart, and leaves phases out where the twist evens the ripple', () => {
    const straight = { ...angelica, blower: { ...angelica.blower, helixAngle: 0 } };
    const phases = candidates(modelOf(straight)).filter(({ altered }) => altered === 'phase');
    expect(Math.max(...phases.map(({ arrangement }) => arrangement.phaseStep / deg))).toBeCloseTo(30, 12);
    expect(candidates(modelOf(angelica)).some(({ altered }) => altered === 'phase')).toBe(false);
  });
});

describe('collectorsShared', () => {
  it('keeps volume, outlet and wall area where two collectors become one like them joined end to end', () => {
    const shared = collectorsShared(angelica.collectors, 4);
    const sum = (of: (each: (typeof shared)[number]) => number, list = shared) =>
      list.reduce((s, e) => s + of(e), 0);
    expect(sum((each) => each.volume)).toBeCloseTo(
      sum((each) => each.volume, angelica.collectors),
      15,
    );
    expect(sum((each) => each.outletArea)).toBeCloseTo(
      sum((each) => each.outletArea, angelica.collectors),
      15,
    );
  });
});

describe('alternatives', () => {
  const dill = modelOf(presetEngine('dill-3'));
  const ways = candidates(dill).slice(0, 3);
  const forwards = finishStudy(alternatives(dill, at(5000), ways));
  const backwards = finishStudy(alternatives(dill, at(5000), [...ways].reverse()));

  it('gives the same figures and the same ranking whatever is solved first', () => {
    expect(ways.length).toBeGreaterThan(1);
    expect(backwards).toEqual(forwards);
    for (const measure of MEASURES)
      expect(rank(backwards.ways, measure).map(({ key }) => key)).toEqual(
        rank(forwards.ways, measure).map(({ key }) => key),
      );
  });

  it('puts the way as built first in the list', () => {
    expect(forwards.ways[0]!.key).toBe('as built');
  });
});

describe('rank', () => {
  const way = (key: string, torqueRipple: number, chargeSpread: number): Alternative => ({
    ...candidates(modelOf(presetEngine('dill-3')))[0]!,
    key,
    reason: null,
    measures: {
      largestGap: 1,
      torqueRipple,
      chargeSpread,
      worstBackflow: 1,
      pinImbalance: 0,
      hiddenBarrels: 0,
      brakePower: 1,
    },
  });
  const list = [way('b', 1, 3), way('a', 1, 3), way('c', 0.5, 4), way('d', 1.00001, 2)];

  it('puts the least first, then by the other measures, then by name; differences below three figures are none', () => {
    expect(rank(list, 'torqueRipple').map(({ key }) => key)).toEqual(['c', 'd', 'a', 'b']);
    expect(rank([...list].reverse(), 'torqueRipple').map(({ key }) => key)).toEqual(['c', 'd', 'a', 'b']);
  });

  it('knows the ways that another outdoes in everything', () => {
    expect([...outdone(list)]).toEqual([
      ['a', 'd'],
      ['b', 'd'],
    ]);
  });
});
