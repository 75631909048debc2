import { describe, expect, it } from 'vitest';
import { AIR } from '../../../src/sim/gas/air.ts';
import { entropy } from '../../../src/sim/gas/polynomial.ts';
import { followEndGas } from '../../../src/sim/results/end-gas.ts';
import { deg, rpm, TURN } from '../../../src/sim/units.ts';
import { presetEngine, solveAt, solved } from '../../helpers/engines.ts';

const angle = Float64Array.from({ length: 721 }, (_, i) => (i * TURN) / 720);
/** Highest at 10 degrees, so that the burn reaches over the end of the period. */
const pressure = angle.map((theta) => 1e5 * (20 + 19 * Math.cos(theta - 10 * deg)));
const temperature = angle.map(() => 650);
const span = { trapped: 260 * deg, burning: 350 * deg, ends: 370 * deg };

describe('followEndGas', () => {
  const gas = followEndGas({ angle, pressure, temperature }, [{ gas: AIR, share: 1 }], span, 6000 * rpm);

  it('lasts from trapping to the end of the span, over the end of the period', () => {
    expect(gas.times.at(-1)).toBeCloseTo((110 * deg) / (6000 * rpm), 12);
    expect(gas.pressures.at(-1)).toBeCloseTo(39e5, 0);
    expect(gas.times.every((time, i) => i === 0 || time > gas.times[i - 1]!)).toBe(true);
  });

  it('has the temperature of the cylinder until burning begins, and keeps its entropy from there', () => {
    const from = gas.times.findIndex((time) => time > (90 * deg) / (6000 * rpm) + 1e-12) - 1;
    expect([...gas.temperatures.subarray(0, from + 1)].every((T) => T === 650)).toBe(true);
    const change = entropy(AIR, gas.temperatures.at(-1)!) - entropy(AIR, 650);
    expect(change).toBeCloseTo(AIR.gasConstant * Math.log(gas.pressures.at(-1)! / gas.pressures[from]!), 3);
  });
});

describe('knock of Lovage 7', () => {
  const lovage = presetEngine('lovage-7');
  const spark = (more: number) => ({
    ...lovage,
    train: {
      ...lovage.train,
      rows: lovage.train.rows.map((row) => ({
        ...row,
        cylinders: row.cylinders.map((each) => ({ ...each, sparkAdvance: each.sparkAdvance + more })),
      })),
    },
  });
  const margin = (engine: typeof lovage): number => solved(solveAt(engine, 3000)).engine.knockMargin!;
  const usual = margin(lovage);

  it('goes away with less spark advance', () => {
    const less = margin(spark(-8 * deg));
    expect(less).toBeGreaterThan(usual + 1);
    expect(margin(spark(-12 * deg))).toBeGreaterThan(less + 1);
  });

  it('follows the octane numbers of the design one for one', () => {
    expect(margin({ ...lovage, knock: { ...lovage.knock, octaneOffset: -5 } })).toBeCloseTo(usual - 5, 6);
  });
});
