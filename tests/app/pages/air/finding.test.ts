import { describe, expect, it } from 'vitest';
import { findingText } from '../../../../src/app/pages/air/finding.ts';
import type { AirFigures } from '../../../../src/sim/study/air/air-figures.ts';
import type { AirLimitFound } from '../../../../src/sim/study/air/find-limit.ts';
import { gram, mbar, rpm } from '../../../../src/sim/units.ts';
import { metric } from '../solved.ts';

const found = (by: AirLimitFound['limit']['by'], deliveryRatio: number): AirLimitFound => ({
  speed: 5000 * rpm,
  figures: {
    deliveryRatio,
    airFlow: 16 * gram,
    wantedAirFlow: 31 * gram,
    plenumPressure: 101325 + 26 * mbar,
    plenumGauge: 26 * mbar,
    plenumRipple: 15.7 * mbar,
  } as AirFigures,
  limit: { by, lifted: { slip: 0.56, throttle: 0.51, windows: null, exhaust: 0.52 }, shortBy: 1.9 },
  swallows: 101325 + 95 * mbar,
});

describe('findingText', () => {
  it('says flow, what is wanted, by how much it falls short, gauge with ripple, and the limit', () => {
    expect(findingText(found('displacement', 0.51), 1, metric)).toBe(
      'At 5000\u00a0rpm, where least is delivered, 16.0\u00a0g/s of air go through and 31.0\u00a0g/s are wanted: 15.0\u00a0g/s too little; ' +
        'the cylinders would swallow that with 0.0950\u00a0bar in the plenum. ' +
        'A gauge would show 0.026\u00a0bar (0.38\u00a0psi) there, swinging by 16\u00a0mbar. ' +
        'What limits it is the blower’s displacement: with slip, throttle, windows or exhaust out of the way it would still deliver 0.560 at most.',
    );
  });

  it('names the obstacle that limits, now or next', () => {
    expect(findingText(found('slip', 0.51), 0.55, metric)).toMatch(
      /What limits it there is slip back .*: out of the way, it would deliver 0\.560\.$/,
    );
    expect(findingText(found('slip', 0.58), 0.55, metric)).toMatch(/What limits it next is slip/);
    expect(findingText(found('displacement', 0.58), 0.55, metric)).toMatch(
      /to spare.*Only more displacement would bring more\.$/,
    );
  });
});
