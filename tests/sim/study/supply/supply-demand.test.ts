import { describe, expect, it } from 'vitest';
import { solveToEnd } from '../../../../src/sim/index.ts';
import { solveHeld, withHeldPlenum } from '../../../../src/sim/study/supply/held-plenum.ts';
import { supplyDemand } from '../../../../src/sim/study/supply/supply-demand.ts';
import { finishStudy } from '../../../../src/sim/study/study-step.ts';
import { sound } from '../../../design/designs.ts';
import { at, changed, modelOf, presetEngine, solved } from '../../../helpers/engines.ts';

const caraway = presetEngine('caraway-1');

describe('solveHeld', () => {
  const held = withHeldPlenum(modelOf(caraway));
  const swallow = (pressure: number) =>
    solved(finishStudy(solveHeld(held, at(5000), { pressure, temperature: 310, purity: 1 }, null)).result);

  it('loses no mass, energy or species though the plenum is a reservoir', () => {
    const { residuals, plenum } = swallow(1.12e5);
    expect(Math.max(residuals.mass, residuals.energy, residuals.species)).toBeLessThan(1e-9);
    expect(plenum.minPressure).toBe(1.12e5);
    expect(plenum.maxPressure).toBe(1.12e5);
    expect(plenum.meanTemperature).toBeCloseTo(310, 9);
  });

  it('swallows more, and keeps more, the higher the plenum is held', () => {
    const [low, middle, high] = [1.06e5, 1.12e5, 1.2e5].map(swallow);
    expect(middle!.engine.deliveryRatio).toBeGreaterThan(low!.engine.deliveryRatio);
    expect(high!.engine.deliveryRatio).toBeGreaterThan(middle!.engine.deliveryRatio);
    expect(high!.engine.chargingEfficiency).toBeGreaterThan(middle!.engine.chargingEfficiency);
  });

  it('is what a cycle tends to as its plenum grows: within 0.1 % at thirty times the volume', () => {
    const wide = modelOf(changed(caraway, { plenum: { volume: 30 * caraway.plenum.volume } }));
    const cycle = solved(solveToEnd(wide, at(5000)).result);
    const { meanPressure: pressure, meanTemperature: temperature } = cycle.plenum;
    const purity = cycle.traces.plenum.purity[0]!;
    const plenum = { pressure, temperature, purity };
    const { result } = finishStudy(solveHeld(withHeldPlenum(wide), at(5000), plenum, null));
    expect(Math.abs(solved(result).engine.deliveryRatio / cycle.engine.deliveryRatio - 1)).toBeLessThan(1e-3);
  });
});

describe('supplyDemand', () => {
  const study = sound(finishStudy(supplyDemand(modelOf(caraway), at(5000))));

  it('has supply falling and demand rising with pressure, meeting once between their ends', () => {
    const flows = (curve: readonly { airFlow: number }[]) => curve.map((each) => each.airFlow);
    const falling = flows(study.supply);
    const rising = flows(study.demand);
    for (let i = 1; i < falling.length; i++) expect(falling[i]).toBeLessThan(falling[i - 1]!);
    for (let i = 1; i < rising.length; i++) expect(rising[i]).toBeGreaterThan(rising[i - 1]!);
    expect(study.meeting!.pressure).toBeGreaterThan(study.demand[0]!.pressure);
    expect(study.meeting!.pressure).toBeLessThan(study.demand.at(-1)!.pressure);
    expect(study.gaps).toEqual([]);
  });

  it('meets within 1 % of the converged cycle’s flow at 5000 rpm, and says by how much it is off', () => {
    const { meeting, cycle, explanation } = study;
    expect(cycle.airFlow / meeting!.airFlow).toBeCloseTo(1, 2);
    expect(explanation).toMatch(/steady supply and demand meet at \+\d+\.\d mbar gauge/);
    expect(explanation).toContain(`swings by ${(cycle.ripple / 100).toFixed(1)} mbar`);
  });

  it('lies far from the cycle where one cylinder drains its plenum at cranking speed: pulsation', () => {
    const cranking = sound(finishStudy(supplyDemand(modelOf(caraway), at(500))));
    expect(cranking.meeting).not.toBeNull();
    // The cycle fills its plenum between two openings; held steady the cylinder drinks at a tenth of that gauge pressure.
    const ambient = caraway.ambient.pressure;
    expect(cranking.meeting!.pressure - ambient).toBeLessThan(0.5 * (cranking.cycle.pressure - ambient));
    expect(cranking.drawnPressure).not.toBeCloseTo(cranking.cycle.pressure, -1);
  });
});
