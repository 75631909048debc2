import { describe, expect, it } from 'vitest';
import { changed, presetEngine, solveAt, solved } from '../../helpers/engines.ts';

const lovage = presetEngine('lovage-7');
const SPEED_RPM = 6000;
/** A table that says everywhere what the constant coefficients say. */
const flat = ({ forward, backward }: { forward: number; backward: number }) => ({
  openings: [0, 1],
  pressureRatios: [1, 8],
  forward: [forward, forward, forward, forward],
  backward: [backward, backward, backward, backward],
});
const { exhaustDischarge, transferDischarge } = lovage.windows;
const withTables = (exhaustTable: ReturnType<typeof flat>) =>
  changed(lovage, { windows: { exhaustTable, transferTable: flat(transferDischarge) } });

const constant = solved(solveAt(lovage, SPEED_RPM));
const tabled = solved(solveAt(withTables(flat(exhaustDischarge)), SPEED_RPM));
const short = { ...flat(exhaustDischarge), pressureRatios: [1, 2] };
const left = solved(solveAt(withTables(short), SPEED_RPM));

describe('Windows with discharge tables', () => {
  it('flow as with constant coefficients where the table says the same everywhere: delivery ratio and mean effective pressure to 1e-6', () => {
    expect(Math.abs(tabled.engine.deliveryRatio / constant.engine.deliveryRatio - 1)).toBeLessThan(1e-6);
    expect(Math.abs(tabled.engine.imep / constant.engine.imep - 1)).toBeLessThan(1e-6);
  });

  it('say nothing within a table, and name the table, its end and how far the cycle goes where it is left', () => {
    const said = ({ notes }: typeof left) => notes.filter(({ text }) => /discharge table/i.test(text));
    expect(said(tabled)).toEqual([]);
    expect(said(left)).toHaveLength(1);
    const [, reached] = /exhaust windows is left: pressure ratios reach ([\d.]+), it ends at 2\./.exec(
      said(left)[0]!.text,
    )!;
    // Blowdown of this engine begins at 3 to 6 bar.
    expect(Number(reached)).toBeGreaterThan(3);
    expect(Number(reached)).toBeLessThan(8);
  });

  it('still balance mass and energy to 1e-9', () => {
    expect(left.residuals.mass).toBeLessThan(1e-9);
    expect(left.residuals.energy).toBeLessThan(1e-9);
  });
});
