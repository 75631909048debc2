import { describe, expect, it } from 'vitest';
import type { Engine } from '../../../../src/sim/index.ts';
import { finishStudy } from '../../../../src/sim/index.ts';
import type { Collector } from '../../../../src/sim/engine.ts';
import { reach } from '../../../../src/sim/study/even/reach.ts';
import { withPlainRods } from '../../../../src/sim/study/even/switched-off.ts';
import { sound } from '../../../design/designs.ts';
import { at, modelOf, presetEngine } from '../../../helpers/engines.ts';

const engine = presetEngine('dill-3');
const three = withPlainRods({ ...engine, blower: { ...engine.blower, rippleDepth: 0 } });

/** Every cylinder on a collector of its own. */
const apartOn = (collector: Collector): Engine => ({
  ...three,
  collectors: [0, 1, 2].map(() => collector),
  train: {
    ...three.train,
    rows: three.train.rows.map((row) => ({
      ...row,
      cylinders: row.cylinders.map((each, j) => ({ ...each, collector: j })),
    })),
  },
});

describe('reach', () => {
  const shared = sound(finishStudy(reach(modelOf(three), at(5000)))).from.map((each) => each!.trappedMass);

  it('finds the same effect all round an even engine: what each does to the next, and to the one before, within 5e-4', () => {
    for (const [k, effects] of shared.entries()) {
      expect(effects[k]).toBe(0);
      expect(Math.abs(effects[(k + 1) % 3]! - shared[0]![1]!)).toBeLessThan(5e-4);
      expect(Math.abs(effects[(k + 2) % 3]! - shared[0]![2]!)).toBeLessThan(5e-4);
    }
  });

  it('reaches the one before, whose exhaust is about to shut, and keeps charge in it: more than twice what it does without a shared collector', () => {
    // It blows down when the one before stands a third of a turn further, some 40 degrees ahead of closing.
    const alone = sound(finishStudy(reach(modelOf(apartOn(three.collectors[0]!)), at(5000)))).from.map(
      (each) => each!.trappedMass,
    );
    const worst = (effects: readonly (readonly number[])[]) => Math.max(...effects.flat().map(Math.abs));
    expect(worst(shared)).toBeGreaterThan(2 * worst(alone));
    expect(Math.max(...shared[1]!)).toBe(shared[1]![0]);
  });

  it('has an answer where every cylinder has a tail pipe of its own: hardly any reach, through the plenum alone', () => {
    const [collector] = three.collectors;
    const pipe = { length: 0.3, area: collector!.outletArea, friction: 0.02 };
    const { from } = sound(finishStudy(reach(modelOf(apartOn({ ...collector!, pipe })), at(5000))));
    for (const [k, effects] of from.entries()) {
      expect(effects!.trappedMass[k]).toBe(0);
      expect(Math.max(...effects!.trappedMass.map(Math.abs))).toBeLessThan(
        Math.max(...shared.flat().map(Math.abs)),
      );
    }
  });
});
