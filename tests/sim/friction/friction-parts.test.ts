import { describe, expect, it } from 'vitest';
import { frictionParts, rollingFmep } from '../../../src/sim/friction/friction-parts.ts';
import { bar, cc, mm, rpm, TURN } from '../../../src/sim/units.ts';
import { changed, presetEngine, solveAt, solved } from '../../helpers/engines.ts';

const { friction } = presetEngine('caraway-1');

describe('rollingFmep', () => {
  // 105 S n, Blair 1996: stroke 50 mm at 6000 and 8000, 54 mm at 10 000 rpm.
  it.each([
    [50, 6000, 0.315],
    [50, 8000, 0.42],
    [54, 10_000, 0.567],
  ])('of a stroke of %d mm at %d rpm is %d bar', (stroke, speed, expected) => {
    expect(rollingFmep(stroke * mm, speed * rpm) / bar).toBeCloseTo(expected, 10);
  });
});

describe('frictionParts', () => {
  it('divides the law and adds what oil pump and starter ask: 2 π T / V_s', () => {
    const whole = { ...friction, law: 'stroke times speed', oilPumpTorque: 0.1, starterTorque: 0.2 } as const;
    const parts = frictionParts(whole, 40 * bar, 50 * mm, 6000 * rpm, 100 * cc);
    expect(parts.rings + parts.bearings + parts.windage).toBeCloseTo(0.315 * bar, 6);
    expect(parts.bearings).toBeCloseTo(0.25 * 0.315 * bar, 6);
    expect(parts.oilPump).toBeCloseTo((TURN * 0.1) / (100 * cc), 6);
    expect(parts.starter).toBeCloseTo(2 * parts.oilPump, 6);
  });

  it('takes its accessories from the brake torque and leaves the energy balance closed', () => {
    const plain = presetEngine('caraway-1');
    const loaded = changed(plain, { friction: { oilPumpTorque: 0.05, starterTorque: 0.1 } });
    const [without, withIt] = [plain, loaded].map((engine) => solved(solveAt(engine, 6000)).engine);
    expect(without!.torque - withIt!.torque).toBeCloseTo(0.15 * plain.friction.outputGearEfficiency, 9);
    expect(withIt!.balance.brake + withIt!.balance.friction).toBeCloseTo(
      without!.balance.brake + without!.balance.friction,
      6,
    );
  });
});
