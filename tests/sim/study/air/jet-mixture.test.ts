import { describe, expect, it } from 'vitest';
import { boostKept } from '../../../../src/sim/study/air/boost-kept.ts';
import { withFeed } from '../../../../src/sim/study/air/fuel-feed.ts';
import { referenceAirFlow } from '../../../../src/sim/study/air/air-figures.ts';
import { finishStudy } from '../../../../src/sim/study/study-step.ts';
import { mm, rpm } from '../../../../src/sim/units.ts';
import { sound } from '../../../design/designs.ts';
import { at, changed, modelOf, presetEngine, solveAt, solved } from '../../../helpers/engines.ts';

const SPEED = 5000;
const jetted = changed(presetEngine('caraway-1'), {
  intake: { venturi: { bore: 16 * mm, dischargeCoefficient: 0.9, recovered: 0.6 } },
  charge: { jet: { bore: 1.05 * mm, dischargeCoefficient: 0.75, lift: 5 * mm } },
});
const model = modelOf(jetted);
const point = solved(solveAt(jetted, SPEED));

describe('an engine with a jet', () => {
  it('traps the mixture that its jet gives, not the stated one', () => {
    const kept = boostKept(model, point);
    expect(kept.suppliedLambda).toBe(point.engine.lambda);
    expect(kept.trappedLambda).toBeCloseTo(point.engine.lambda, 5);
    expect(Math.abs(kept.suppliedLambda - jetted.charge.lambda)).toBeGreaterThan(0.02);
  });

  it('is set beside injection of the same mixture: fuel for the air shut in at that λ', () => {
    const injected = sound(finishStudy(withFeed(model, at(SPEED), 'cylinders')));
    const air = injected.chargingEfficiency * referenceAirFlow(model, SPEED * rpm);
    const airFuelRatio = point.engine.lambda * model.mixture.stoichiometricAirFuelRatio;
    expect(injected.fuelFlow / (air / airFuelRatio)).toBeGreaterThan(0.95);
    expect(injected.fuelFlow / (air / airFuelRatio)).toBeLessThan(1.01);
  });
});
