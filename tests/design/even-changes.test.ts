import { describe, expect, it } from 'vitest';
import { arranged, shopChanges } from '../../src/design/even-changes.ts';
import { setValues } from '../../src/design/set-value.ts';
import { toEngine } from '../../src/design/to-engine.ts';
import { withArrangement } from '../../src/sim/study/even/arrangement.ts';
import { candidates } from '../../src/sim/study/even/candidates.ts';
import { MEANS, MEANS_BY_NAME, withShopItems } from '../../src/sim/study/even/means.ts';
import type { ShopItem } from '../../src/sim/study/even/means.ts';
import { modelOf } from '../helpers/engines.ts';
import { preset, sound } from './designs.ts';

describe('shopChanges', () => {
  it('puts every means into the design file as the study had it', () => {
    const lovage = preset('lovage-7');
    const engine = toEngine(lovage);
    const items: ShopItem[] = MEANS.map((means, i) => {
      const { now, step } = MEANS_BY_NAME[means];
      const from = now(engine.train, engine.train.rows[0]!.cylinders[i === 0 ? 3 : i]!);
      return { cylinder: i === 0 ? 3 : i, means, from, to: from + 2 * step };
    });
    const typed = toEngine(sound(setValues(lovage, shopChanges(lovage, items)))).train.rows[0]!.cylinders;
    const wanted = withShopItems(engine, items).train.rows[0]!.cylinders;
    typed.forEach((cylinder, j) => {
      for (const key of Object.keys(cylinder) as (keyof typeof cylinder)[]) {
        expect(cylinder[key] ?? 0, `${j} ${key}`).toBeCloseTo(wanted[j]![key] ?? 0, 5);
      }
      expect(cylinder.barrelOffset).toBeCloseTo(wanted[j]!.barrelOffset, 12);
    });
  });
});

describe('arranged', () => {
  const angelica = preset('angelica-14');
  const engine = toEngine(angelica);
  const ways = candidates(
    modelOf(engine),
    Array.from({ length: 14 }, (_, j) => j % 3),
  );

  it('makes of every candidate the design whose engine was studied, all ways of Angelica 14', () => {
    for (const { key, arrangement } of ways) {
      const made = toEngine(sound(arranged(angelica, engine, arrangement)));
      const wanted = withArrangement(engine, arrangement);
      const round = (value: unknown) =>
        JSON.stringify(value, (_, each: unknown) =>
          typeof each === 'number' ? Number(each.toPrecision(9)) || 0 : each,
        );
      expect(round(made), key).toBe(round(wanted));
    }
  });

  it('keeps the other corrections of a cylinder, and drops those that then say nothing', () => {
    const corrected = sound(
      setValues(angelica, [
        { path: 'crank.corrections[A3].barrel', text: '0.5' },
        { path: 'crank.corrections[A3].collector', text: '2' },
        { path: 'crank.corrections[A4].collector', text: '2' },
      ]),
    );
    const byRow = candidates(modelOf(toEngine(corrected))).find(({ grouping }) => grouping === 'by row')!;
    expect(sound(arranged(corrected, toEngine(corrected), byRow.arrangement)).crank.corrections).toEqual([
      { cylinder: 'A3', barrel_mm: 0.5 },
    ]);
  });
});
