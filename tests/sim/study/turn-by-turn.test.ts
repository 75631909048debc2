import { describe, expect, it } from 'vitest';
import { solveToEnd } from '../../../src/sim/cycle/solve.ts';
import { atRest } from '../../../src/sim/cycle/start.ts';
import { CycleSystem } from '../../../src/sim/cycle/system.ts';
import { turnByTurn } from '../../../src/sim/study/turn-by-turn.ts';
import type { Turn } from '../../../src/sim/study/turn-by-turn.ts';
import { rpm } from '../../../src/sim/units.ts';
import { at, changed, modelOf, presetEngine } from '../../helpers/engines.ts';

function take(turns: Generator<Turn, unknown>, count: number): Turn[] {
  const taken: Turn[] = [];
  for (const turn of turns) {
    taken.push(turn);
    if (taken.length === count) break;
  }
  return taken;
}

describe('turnByTurn', () => {
  it('yields no work on the first turn of cranking, full of air, and fires above 3 bar within twenty', () => {
    const model = modelOf(presetEngine('lovage-7'));
    const turns = take(turnByTurn(model, at(500)), 20);
    const imep = turns.map(({ figures }) => figures.engine.imep);
    expect(imep[0]).toBeLessThan(0);
    expect(imep[19]).toBeGreaterThan(3e5);
    for (const { figures } of turns) {
      expect(figures.residuals.mass).toBeLessThan(1e-9);
      expect(figures.residuals.energy).toBeLessThan(1e-9);
      expect(figures.residuals.species).toBeLessThan(1e-9);
    }
  });

  it('settles where the periodic solution stands: IMEP, plenum and delivery within 0.1 % after 60 turns', () => {
    const model = modelOf(presetEngine('dill-3'));
    const point = at(3000);
    const { result, next } = solveToEnd(model, point);
    if (!result.converged || !next) throw new Error('dill-3 must solve');
    // From a start that is off: the same engine at another speed.
    const other = solveToEnd(model, at(2500)).next!;
    const last = take(turnByTurn(model, point, { start: other }), 60)[59].figures;
    expect(last.engine.imep / result.engine.imep).toBeCloseTo(1, 2.7);
    expect(last.plenum.meanPressure / result.plenum.meanPressure).toBeCloseTo(1, 2.7);
    expect(last.engine.deliveryRatio / result.engine.deliveryRatio).toBeCloseTo(1, 2.7);
  });

  it('four-strokes where the charge is too stale: turns that fire and turns that do not take turns', () => {
    const model = modelOf(changed(presetEngine('parsley-5'), { combustion: { misfireResidual: 0.3 } }));
    const point = at(4000);
    const start = solveToEnd(modelOf(presetEngine('parsley-5')), point).next!;
    const turns = take(turnByTurn(model, point, { start }), 30).slice(10);
    const firstCylinder = turns.map(({ figures }) => figures.cylinders[0].imep);
    expect(Math.max(...firstCylinder)).toBeGreaterThan(2e5);
    expect(Math.min(...firstCylinder)).toBeLessThan(0.5e5);
  });

  it('ends with a reason where the gas leaves the accepted range: air at ambient state in a cylinder whose piston then goes down', () => {
    const cold = { crownTemperature: 250, headTemperature: 250, linerTemperature: 250 };
    const model = modelOf(changed(presetEngine('caraway-1'), { cylinderHeat: cold }));
    const system = new CycleSystem(model, at(4000));
    const start = atRest(system);
    system.gas.pack(start.state, model.network.at.cylinders[0]!, 101_325, 293, [1, 0, 0]);
    const step = turnByTurn(model, at(4000), { start }).next();
    expect(step.done).toBe(true);
    expect((step.value as { reason: string }).reason).toMatch(/left the range the model accepts/);
  });

  it('goes from speed to speed as it is told, and conserves mass, species and energy in every turn', () => {
    const model = modelOf(presetEngine('dill-3'));
    const faster = ({ figures }: Turn) => 1.3 * figures.speed;
    const turns = take(turnByTurn(model, at(600), { speedAfter: faster }), 5);
    turns.forEach(({ figures }, i) => {
      expect(figures.speed / rpm).toBeCloseTo(600 * 1.3 ** i, 6);
      for (const defect of [figures.residuals.mass, figures.residuals.species, figures.residuals.energy])
        expect(defect).toBeLessThan(1e-9);
    });
  });
});
