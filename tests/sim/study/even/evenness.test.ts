import { describe, expect, it } from 'vitest';
import { finishStudy } from '../../../../src/sim/index.ts';
import { SHARE_FIGURES } from '../../../../src/sim/study/even/share-figures.ts';
import { evenness } from '../../../../src/sim/study/even/evenness.ts';
import { MEANS_BY_NAME, withShopItems } from '../../../../src/sim/study/even/means.ts';
import { withPlainRods } from '../../../../src/sim/study/even/switched-off.ts';
import { mm } from '../../../../src/sim/units.ts';
import { sound } from '../../../design/designs.ts';
import { at, modelOf, presetEngine } from '../../../helpers/engines.ts';

const dill = presetEngine('dill-3');
const evennessOf = (engine: typeof dill) => sound(finishStudy(evenness(modelOf(engine), at(5000))));
const articulated = evennessOf(dill);
const plain = withPlainRods({ ...dill, blower: { ...dill.blower, rippleDepth: 0 } });
const even = evennessOf(plain);

describe('evenness', () => {
  it('finds three plain rods evenly spaced alike: shapes to 1e-12, cycles to 1e-3 of the mean', () => {
    for (const figure of SHARE_FIGURES) {
      const { range, mean } = even.spreads[figure];
      const isCycle = [
        'deliveryRatio',
        'trappedMass',
        'purity',
        'imep',
        'peakPressure',
        'exhaustTemperature',
        'wallHeat',
      ];
      const allowed = isCycle.includes(figure) ? 1e-3 * mean : 1e-12;
      expect(range, figure).toBeLessThanOrEqual(allowed);
    }
  });

  it('puts dead centres of articulated rods off the even spacing, and those of plain rods on it', () => {
    expect(articulated.spreads.deadCentreShift.range).toBeGreaterThan(0.05);
    expect(even.spreads.deadCentreShift.range).toBeLessThan(1e-12);
  });

  it('lays the ranges of Dill 3, which has no trims, to its rods: parts and interplay add up to the range', () => {
    for (const figure of SHARE_FIGURES) {
      const { total, by, left, interplay } = articulated.origins![figure];
      expect(by.trims, figure).toBe(0);
      expect(Math.abs(total - by.rods - by.pulses - left - interplay), figure).toBeLessThanOrEqual(
        1e-12 * total,
      );
    }
    const { total, by, left } = articulated.origins!.trappedMass;
    expect(by.rods).toBeGreaterThan(0.95 * total);
    expect(left).toBeLessThan(1e-3 * articulated.spreads.trappedMass.mean);
  });

  it('lays the range of shapes to nothing but rods: pulses do not move an edge', () => {
    expect(articulated.origins!.exhaustOpening.by.pulses).toBe(0);
    expect(articulated.origins!.exhaustOpening.by.rods).toBeCloseTo(
      articulated.spreads.exhaustOpening.range,
      12,
    );
  });

  it('lays an exhaust edge 0.8 mm higher in one of three plain cylinders to the trims', () => {
    const [seat] = plain.train.rows[0]!.cylinders;
    const from = MEANS_BY_NAME.exhaustTrim.now(plain.train, seat!);
    const trimmed = withShopItems(plain, [{ cylinder: 1, means: 'exhaustTrim', from, to: from - 0.8 * mm }]);
    const { origins, spreads } = evennessOf(trimmed);
    const { by, total } = origins!.exhaustOpening;
    expect(by.trims).toBeCloseTo(total, 12);
    expect(by.rods).toBe(0);
    expect(total).toBe(spreads.exhaustOpening.range);
    expect(origins!.trappedMass.by.trims).toBeGreaterThan(0.8 * origins!.trappedMass.total);
  });
});
