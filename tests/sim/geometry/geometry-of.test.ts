import { describe, expect, it } from 'vitest';
import { buildGeometry } from '../../../src/sim/geometry/build-geometry.ts';
import { geometryOf } from '../../../src/sim/geometry/geometry-of.ts';
import { changed, presetEngine } from '../../helpers/engines.ts';

const lovage = presetEngine('lovage-7');

describe('geometryOf', () => {
  it('builds what buildGeometry builds', () => {
    expect(geometryOf(lovage)).toEqual(buildGeometry(lovage));
  });

  it('gives the same geometry while the shape is the same, whatever else changes', () => {
    const first = geometryOf(lovage);
    expect(geometryOf(changed(lovage, { plenum: { volume: 2 * lovage.plenum.volume } }))).toBe(first);
  });

  it('builds another for another bore, and forgets the oldest of many', () => {
    const first = geometryOf(lovage);
    for (const share of [0.99, 0.98, 0.97, 0.96, 0.95]) {
      const cylinder = { bore: share * lovage.cylinder.bore };
      const other = geometryOf(changed(lovage, { cylinder }));
      if (!first.ok || !other.ok) throw new Error('no geometry');
      expect(other.value.sweptVolume / first.value.sweptVolume).toBeCloseTo(share ** 2, 12);
    }
    expect(geometryOf(lovage)).not.toBe(first);
    expect(geometryOf(lovage)).toEqual(first);
  });

  it('names the faults of an unsound shape every time', () => {
    const unsound = changed(lovage, { cylinder: { bore: NaN } });
    const [once, again] = [geometryOf(unsound), geometryOf(unsound)];
    expect(once.ok).toBe(false);
    expect(again).toEqual(once);
  });
});
