import { describe, expect, it } from 'vitest';
import { changed, presetEngine, solveAt, solved } from '../../helpers/engines.ts';

const point = (products: 'frozen' | 'equilibrium', lambda: number) =>
  solved(solveAt(changed(presetEngine('caraway-1'), { combustion: { products }, charge: { lambda } }), 6000));

describe('burned gas in equilibrium', () => {
  const [frozen, dissociating] = [point('frozen', 1), point('equilibrium', 1)];
  const rich = [point('frozen', 0.8), point('equilibrium', 0.8)] as const;
  const peak = ({ cylinders: [first] }: typeof frozen) => first!;

  it('lowers peak temperature, peak pressure and IMEP, by a few per cent at the most', () => {
    const share = (of: (each: typeof frozen) => number) => of(dissociating) / of(frozen) - 1;
    for (const each of [
      share((p) => peak(p).peakTemperature),
      share((p) => peak(p).peakPressure),
      share((p) => p.engine.imep),
    ]) {
      expect(each).toBeLessThan(-0.002);
      expect(each).toBeGreaterThan(-0.06);
    }
  });

  it('does less where a rich mixture holds CO and H2 already', () => {
    const loss = (a: typeof frozen, b: typeof frozen) =>
      1 - peak(b).peakTemperature / peak(a).peakTemperature;
    expect(loss(...rich)).toBeLessThan(0.7 * loss(frozen, dissociating));
  });

  it('conserves mass, species and energy as frozen gas does', () => {
    for (const { mass, species, energy } of [dissociating.residuals, rich[1].residuals])
      for (const defect of [mass, species, energy]) expect(defect).toBeLessThan(1e-9);
    const { fuel, brake, friction, blower, cylinderWalls, otherWalls, exhaustSensible, unburned } =
      dissociating.engine.balance;
    const spent = brake + friction + blower + cylinderWalls + otherWalls + exhaustSensible + unburned;
    expect(spent / fuel).toBeCloseTo(1, 4);
  });

  it('says what it takes off', () => {
    expect(dissociating.notes.some(({ text }) => text.includes('in equilibrium above 1500'))).toBe(true);
    expect(frozen.notes.some(({ text }) => text.includes('kept from dissociating'))).toBe(true);
  });
});

describe('CO and H2 of a rich mixture', () => {
  it('are counted once: the share unburned is their energy for what burned, and the whole heating value for what did not', () => {
    // Nothing short-circuits into this: compare what is lost at completeness 1 and 0.97, all else alike.
    const at = (completeness: number) => {
      const engine = changed(presetEngine('caraway-1'), {
        combustion: { completeness },
        charge: { lambda: 0.8 },
      });
      const { engine: figures } = solved(solveAt(engine, 6000));
      return figures.balance.unburned / figures.balance.fuel;
    };
    const [whole, less] = [at(1), at(0.97)];
    const trapping = point('frozen', 0.8).engine.trappingEfficiency;
    expect(less).toBeGreaterThan(whole);
    // Of the trapped share, 3 % goes unburned instead of leaving only its CO and H2 behind (22 % of its energy at λ 0.8).
    expect((less - whole) / (0.03 * trapping * (1 - 0.23))).toBeGreaterThan(0.75);
    expect((less - whole) / (0.03 * trapping * (1 - 0.23))).toBeLessThan(1.25);
  });
});
