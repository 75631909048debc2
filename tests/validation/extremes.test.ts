import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Engine, PointResult } from '../../src/sim/index.ts';
import { solveToEnd } from '../../src/sim/index.ts';
import type { Collector, Row } from '../../src/sim/engine.ts';
import type { Changes } from '../helpers/engines.ts';
import { at, changed, modelOf, notFinite, presetEngine } from '../helpers/engines.ts';

const dill = presetEngine('dill-3');
const lovage = presetEngine('lovage-7');

/** Either figures, all finite and conserving, or a reason a reader can use. */
function expectAnswerOrReason(result: PointResult): void {
  if (result.converged) {
    expect(notFinite(result)).toEqual([]);
    expect(result.residuals.mass).toBeLessThan(1e-9);
    expect(result.residuals.species).toBeLessThan(1e-9);
    expect(result.residuals.energy).toBeLessThan(1e-9);
    expect(result.residuals.change).toBeLessThan(1e-6);
    for (const { text } of result.notes) expect(text).not.toMatch(/NaN|undefined|Infinity/);
  } else {
    expect(result.reason).toMatch(/^(no periodic state after \d+ periods|the gas in [\w ]+ left the range)/);
    expect(result.reason).not.toMatch(/NaN|undefined|Infinity/);
    expect(notFinite({ ...result })).toEqual([]);
  }
}

/** Patient enough for what settles; what does not is to say so soon. */
const answer = (engine: Engine, speed_rpm: number, throttle = 1): PointResult =>
  solveToEnd(modelOf(engine), at(speed_rpm, throttle), { mostCycles: 120 }).result;

function expectConverged(engine: Engine, speed_rpm: number, throttle = 1): void {
  const result = answer(engine, speed_rpm, throttle);
  expect(result.converged ? '' : result.reason).toBe('');
  expectAnswerOrReason(result);
}

const SHUT = { forward: 0, backward: 0 };
const collectors = (engine: Engine, changes: Changes<Collector>): readonly Collector[] =>
  engine.collectors.map((collector) => changed(collector, changes));

/** A row of plain rods, evenly spaced; the first cylinder as in Dill 3. */
function plainRow(cylinders: number, staggerAngle = 0): Row {
  const [row] = dill.train.rows;
  return {
    ...row,
    staggerAngle,
    master: 0,
    cylinders: Array.from({ length: cylinders }, (_, j) => ({
      ...row.cylinders[row.master],
      axisAngle: (2 * Math.PI * j) / cylinders,
      knuckleAngle: (2 * Math.PI * j) / cylinders,
      rodLength: dill.train.masterRodLength,
    })),
  };
}
const plainRows = (rows: readonly Row[]): Engine => changed(dill, { train: { knuckleRadius: 0, rows } });

describe('solveToEnd at the edge of what can be asked', () => {
  it.each([150, 20_000])('answers Dill 3 at %i rpm, or says why not', (speed_rpm) => {
    expectAnswerOrReason(answer(dill, speed_rpm));
  });

  it('solves every kind of engine at 150 rpm', () => {
    for (const name of ['caraway-1', 'dill-3', 'lovage-7', 'parsley-5'] as const)
      expectConverged(presetEngine(name), 150);
  });

  it.each([0, 0.05, 0.3])(
    'answers a throttle opened by %f of its travel, at 1000 and 6000 rpm',
    (throttle) => {
      expectAnswerOrReason(answer(dill, 1000, throttle));
      expectAnswerOrReason(answer(dill, 6000, throttle));
    },
  );

  it('answers a throttle closed without any leak', () => {
    const tight = changed(dill, { intake: { throttle: { leakShare: 0 } } });
    expectAnswerOrReason(answer(tight, 3000, 0));
  });

  it('answers windows that pass nothing: all of them, the transfer ones, the exhaust ones', () => {
    for (const windows of [
      { transferDischarge: SHUT, exhaustDischarge: SHUT },
      { transferDischarge: SHUT },
      { exhaustDischarge: SHUT },
    ])
      expectAnswerOrReason(answer(changed(dill, { windows }), 3000));
  });

  it('answers a collector that is all but blocked, and one that is wide open', () => {
    const { outletArea } = dill.collectors[0];
    for (const share of [1e-3, 0.02, 20])
      expectAnswerOrReason(
        answer(changed(dill, { collectors: collectors(dill, { outletArea: share * outletArea }) }), 3000),
      );
  });

  it.each([0.05, 0.3, 2, 5])(
    'answers a blower of %f times its displacement, at 400 and 5000 rpm',
    (share) => {
      const engine = changed(dill, { blower: { displacement: share * dill.blower.displacement } });
      expectAnswerOrReason(answer(engine, 400));
      expectAnswerOrReason(answer(engine, 5000));
    },
  );

  it('answers vast clearances and none', () => {
    for (const clearanceArea of [0, 50 * dill.blower.clearanceArea])
      expectAnswerOrReason(answer(changed(dill, { blower: { clearanceArea } }), 1000));
  });

  it('answers tiny and vast volumes of passage, plenum, inlet box and collector', () => {
    for (const share of [0.05, 20]) {
      const { passages, plenum, intake } = dill;
      const engine = changed(dill, {
        passages: { volume: share * passages.volume },
        plenum: { volume: share * plenum.volume },
        intake: { boxVolume: share * intake.boxVolume },
        collectors: collectors(dill, { volume: share * dill.collectors[0].volume }),
      });
      expectAnswerOrReason(answer(engine, 3000));
    }
  });

  it('answers icy and scorching air, thin and dense', () => {
    for (const ambient of [
      { temperature: 233, pressure: 50_000 },
      { temperature: 328, pressure: 108_000 },
    ])
      expectAnswerOrReason(answer(changed(dill, { ambient }), 3000));
  });
});

describe('solveToEnd over P turns', () => {
  /** A straight, strongly pulsing rotor pair. */
  const geared = (driverTeeth: number, drivenTeeth: number, lobes: number): Engine =>
    changed(dill, {
      blower: {
        displacement: (dill.blower.displacement * drivenTeeth) / driverTeeth,
        gears: [{ driverTeeth, drivenTeeth, efficiency: 0.98 }],
        lobes,
        helixAngle: 0,
        rippleDepth: 0.1,
      },
    });

  it.each([
    // 2 lobes ratio pulses a turn: whole after so many turns.
    [36, 18, 2, 1],
    [3, 2, 3, 1],
    [11, 8, 2, 2],
    [33, 16, 2, 4],
    [37, 20, 2, 5],
  ])('solves gears %i : %i with %i lobes over %i turns', (driver, driven, lobes, turns) => {
    const result = answer(geared(driver, driven, lobes), 3000);
    expect(result.turnsPerPeriod).toBe(turns);
    expect(result.converged).toBe(true);
    expectAnswerOrReason(result);
    if (!result.converged) return;
    const { angle } = result.traces;
    expect(angle.at(-1)).toBeCloseTo(2 * Math.PI * turns, 9);
  });

  it('averages the pulses over their phase, and says so, where they would repeat only after 17 turns', () => {
    const result = answer(geared(36, 17, 2), 3000);
    if (!result.converged) throw new Error(result.reason);
    expect(result.turnsPerPeriod).toBe(1);
    expect(result.notes.filter(({ kind }) => kind === 'assumption').map(({ text }) => text)).toContainEqual(
      expect.stringContaining('after 17 turns'),
    );
  });

  it('gives nearly the same mean figures whether the pulses are followed or averaged: within 2 %', () => {
    const [followed, averaged] = [
      [37, 20],
      [35, 19],
    ].map(([driver, driven]) => {
      const result = answer(geared(driver, driven, 2), 3000);
      if (!result.converged) throw new Error(result.reason);
      return result;
    });
    expect(followed.turnsPerPeriod).toBe(5);
    expect(averaged.turnsPerPeriod).toBe(1);
    expect(Math.abs(followed.engine.deliveryRatio / averaged.engine.deliveryRatio - 1)).toBeLessThan(0.02);
    expect(Math.abs(followed.engine.imep / averaged.engine.imep - 1)).toBeLessThan(0.02);
  });
});

describe('solveToEnd of other layouts', () => {
  it.each([1, 2, 3])('solves a row of %i on plain rods', (cylinders) => {
    const engine = plainRows([plainRow(cylinders)]);
    const share = cylinders / 3;
    expectConverged(changed(engine, { blower: { displacement: share * dill.blower.displacement } }), 3000);
  });

  it('solves four rows of three, staggered by 30 degrees', () => {
    const rows = [0, 1, 2, 3].map((r) => plainRow(3, (r * Math.PI) / 6));
    const { plenum, intake, blower } = dill;
    const engine = changed(plainRows(rows), {
      blower: { count: 4 * blower.count },
      plenum: { volume: 4 * plenum.volume },
      intake: { boxVolume: 4 * intake.boxVolume, throttle: { bore: 2 * intake.throttle.bore } },
      collectors: collectors(dill, {
        volume: 4 * dill.collectors[0].volume,
        outletArea: 4 * dill.collectors[0].outletArea,
      }),
    });
    const result = answer(engine, 3000);
    if (!result.converged) throw new Error(result.reason);
    expectAnswerOrReason(result);
    expect(result.cylinders).toHaveLength(12);
  });

  it.each(['petrol', 'isooctane', 'methanol', 'ethanol'])('solves Dill 3 on %s', (fuel) => {
    expectConverged(changed(dill, { charge: { fuel } }), 3000);
  });

  it('solves every scavenging law', () => {
    const laws: Engine['scavenging']['law'][] = [
      { kind: 'perfect mixing' },
      { kind: 'perfect displacement' },
      { kind: 'displacement then mixing', displacedShare: 0.5 },
      { kind: 'table', inside: [0, 0.4, 0.7, 1], leaving: [0, 0.1, 0.6, 1] },
    ];
    for (const law of laws) expectConverged(changed(dill, { scavenging: { law } }), 3000);
  });

  it('answers when nothing burns, at 500 and 9000 rpm', () => {
    for (const speed_rpm of [500, 9000])
      expectConverged(changed(lovage, { combustion: { enabled: false } }), speed_rpm);
  });
});

describe('solveToEnd of random engines', () => {
  // Evenly drawn: the library's own numbers crowd at the ends of their range.
  const share = fc.integer({ min: 0, max: 1000 }).map((i) => i / 1000);
  const uniform = (min: number, max: number) => share.map((x) => min + x * (max - min));
  const log = (min: number, max: number) => share.map((x) => min * (max / min) ** x);
  const arbitrary = fc.record({
    base: fc.constantFrom('caraway-1' as const, 'dill-3' as const, 'parsley-5' as const),
    displacement: log(0.3, 3),
    clearance: log(0.1, 5),
    lobes: fc.integer({ min: 2, max: 4 }),
    ripple: uniform(0, 0.15),
    passage: log(0.3, 4),
    plenum: log(0.2, 5),
    box: log(0.2, 5),
    collector: log(0.2, 5),
    outlet: log(0.2, 3),
    bore: log(0.4, 1.5),
    lambda: uniform(0.75, 1.3),
    fuel: fc.constantFrom('petrol', 'isooctane', 'methanol', 'ethanol'),
    displaced: uniform(0, 1),
    shortCircuit: uniform(0, 0.3),
    temperature: uniform(253, 318),
    speed_rpm: log(150, 15_000),
    throttle: uniform(0.02, 1),
    enabled: fc.oneof(
      { weight: 4, arbitrary: fc.constant(true) },
      { weight: 1, arbitrary: fc.constant(false) },
    ),
  });

  it('converges with finite figures that conserve, or gives a reason: 25 drawn engines', () => {
    let converged = 0;
    fc.assert(
      fc.property(arbitrary, (drawn) => {
        const base = presetEngine(drawn.base);
        const engine = changed(base, {
          blower: {
            displacement: drawn.displacement * base.blower.displacement,
            clearanceArea: drawn.clearance * base.blower.clearanceArea,
            lobes: drawn.lobes,
            rippleDepth: drawn.ripple,
          },
          passages: { volume: drawn.passage * base.passages.volume },
          plenum: { volume: drawn.plenum * base.plenum.volume },
          intake: {
            boxVolume: drawn.box * base.intake.boxVolume,
            throttle: { bore: drawn.bore * base.intake.throttle.bore },
          },
          collectors: collectors(base, {
            volume: drawn.collector * base.collectors[0].volume,
            outletArea: drawn.outlet * base.collectors[0].outletArea,
          }),
          charge: { lambda: drawn.lambda, fuel: drawn.fuel },
          scavenging: {
            law: { kind: 'displacement then mixing', displacedShare: drawn.displaced },
            shortCircuitShare: drawn.shortCircuit,
          },
          ambient: { temperature: drawn.temperature },
          combustion: { enabled: drawn.enabled },
        });
        const result = answer(engine, drawn.speed_rpm, drawn.throttle);
        if (result.converged) converged++;
        expectAnswerOrReason(result);
      }),
      { numRuns: 25, seed: 20, endOnFailure: true },
    );
    // Most of what can be drawn is an engine that runs, if badly.
    expect(converged).toBeGreaterThan(15);
  });
});
