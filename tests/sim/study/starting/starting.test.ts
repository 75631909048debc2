import { describe, expect, it } from 'vitest';
import type { Engine } from '../../../../src/sim/index.ts';
import { movingRows } from '../../../../src/sim/study/pulses/moving-row.ts';
import { inertiasOf } from '../../../../src/sim/study/pulses/pulses.ts';
import { starting } from '../../../../src/sim/study/starting/starting.ts';
import type { Starting } from '../../../../src/sim/study/starting/starting.ts';
import { startingSentence } from '../../../../src/sim/study/starting/starting-sentence.ts';
import { finishStudy } from '../../../../src/sim/study/study-step.ts';
import { turnByTurn } from '../../../../src/sim/study/turn-by-turn.ts';
import { cc, rpm } from '../../../../src/sim/units.ts';
import { sound } from '../../../design/designs.ts';
import { at, changed, modelOf, presetEngine } from '../../../helpers/engines.ts';
import { airGamma } from '../../../helpers/vessel.ts';
import { sealedEngine } from '../../../helpers/sealed.ts';

const dill = modelOf(presetEngine('dill-3'));
const start = sound(finishStudy(starting(dill, at(400))));

function turnsOf(engine: Engine, count: number) {
  const run = turnByTurn(modelOf(engine), at(400));
  return Array.from({ length: count }, () => {
    const next = run.next();
    if (next.done) throw new Error(next.value?.reason);
    return next.value;
  });
}

describe('turnByTurn of a plenum that is shut', () => {
  // Next to no fuel: air alone has the one exponent.
  const sealed = changed(sealedEngine(), {
    plenum: { relief: null },
    charge: { lambda: 1e6, oilShare: 0 },
    ambient: { humidity: 0 },
  });
  const { ambient, blower, plenum } = sealed;
  const [gear] = blower.gears;
  const perTurn = (blower.count * blower.displacement * gear.driverTeeth) / gear.drivenTeeth;

  it('fills it to p₀ (γ exp((γ−1) N V_d/V) − 1)/(γ − 1) after N turns, no heat lost, γ held at its mean, to 0.3 %', () => {
    // d(pV)/(γ−1) = V_d (γ p₀/(γ−1) + p − p₀) dN: enthalpy drawn in at p₀ and work against the rise.
    const turns = turnsOf(sealed, 8);
    const hottest = turns.at(-1)!.figures.traces.plenum.temperature.at(-1)!;
    const gamma = (airGamma(ambient.temperature) + airGamma(hottest)) / 2;
    turns.forEach(({ figures }, i) => {
      const { traces } = figures;
      const share = ((gamma - 1) * (i + 1) * perTurn) / plenum.volume;
      const closed = (ambient.pressure / (gamma - 1)) * (gamma * Math.exp(share) - 1);
      expect(Math.abs(traces.plenum.pressure.at(-1)! / closed - 1)).toBeLessThan(3e-3);
    });
  });

  it('fuels the inlet box ahead of it as 1 − exp(−N V_d/V_box): a well-stirred volume that is flushed, to 2 %', () => {
    const vast = changed(sealed, { plenum: { volume: 1 }, intake: { boxVolume: 200 * cc } });
    turnsOf(vast, 6).forEach(({ fuelled }, i) => {
      const flushed = 1 - Math.exp((-(i + 1) * perTurn) / (200 * cc));
      expect(Math.abs(fuelled.box / flushed - 1)).toBeLessThan(0.02);
    });
  });
});

describe('starting', () => {
  const { leanLimit } = dill.engine.combustion;

  it('fires Dill 3 no sooner than a charge is rich enough, which takes longer than the blower needs to displace what is wetted', () => {
    expect(start.combustible).toBe(start.firstFiring);
    expect(start.firstFiring!).toBeGreaterThan(start.turnsToDisplace);
    for (const { turn, richest, fired } of start.turns)
      if (turn < start.firstFiring!) {
        expect(fired).toEqual([]);
        expect(richest === null || richest > leanLimit).toBe(true);
      }
    expect(start.catches).not.toBeNull();
  });

  it('wets box, plenum and passages: 1405 cc', () => {
    const { intake, plenum, passages } = dill.engine;
    expect(start.wettedVolume).toBeCloseTo(intake.boxVolume + plenum.volume + 3 * passages.volume, 12);
    expect(start.wettedVolume / cc).toBeCloseTo(1405, 9);
  });

  it('needs a torque of gas, friction and blower; friction twice the warm engine’s 0.6 N m or so; the peak far above the mean', () => {
    for (const { torque } of start.turns)
      expect(torque.needed).toBeCloseTo(torque.gas + torque.friction + torque.blower, 12);
    const [first] = start.turns;
    expect(first!.torque.gas).toBeGreaterThan(0);
    expect(start.torqueNeeded).toBeGreaterThanOrEqual(first!.torque.needed);
    expect(start.peakTorque).toBeGreaterThan(3 * start.torqueNeeded);
    const doubled = changed(dill.engine, { wanted: { coldFriction: 4 } });
    const again = sound(finishStudy(starting(modelOf(doubled), at(400), { mostTurns: 1 })));
    expect(again.turns[0]!.torque.friction / first!.torque.friction).toBeCloseTo(2, 12);
  });

  it('holds cranking speed until it fires, then gains what its surplus gives the crank: J (w₂² − w₁²)/2 = −T 2π', () => {
    const inertia = inertiasOf(dill, movingRows(dill)).total;
    start.turns.forEach(({ speed, torque, turn }, i) => {
      if (turn <= start.firstFiring!) expect(speed).toBeCloseTo(400 * rpm, 9);
      const after = start.turns[i + 1];
      if (!after || torque.needed >= 0) return;
      const gained = (inertia * (after.speed ** 2 - speed ** 2)) / 2;
      expect(gained / (-2 * Math.PI * torque.needed)).toBeCloseTo(1, 9);
    });
  });

  it('delivers a delivery ratio of air near that of cranking from the first turn on, while fuel follows', () => {
    const air = start.turns.map((turn) => turn.air);
    for (const each of air.slice(0, start.firstFiring!)) expect(each / air[0]!).toBeCloseTo(1, 1);
    const fuel = start.turns.map((turn) => turn.fuel);
    for (let i = 1; i < start.firstFiring!; i++) expect(fuel[i]).toBeGreaterThan(fuel[i - 1]!);
  });

  it('fires in the first turn where fuel joins the air in the cylinders, and tells the torque of an unlit turn', () => {
    const injected = modelOf(changed(dill.engine, { charge: { feed: 'cylinders' } }));
    const atOnce = sound(finishStudy(starting(injected, at(400))));
    expect([atOnce.wettedVolume, atOnce.firstFiring, atOnce.catches]).toEqual([0, 1, 1]);
    // What evaporates in the cylinder cools what is compressed, and spares work; friction stays.
    expect(atOnce.torqueNeeded).toBeGreaterThan(start.turns[0]!.torque.friction);
    expect(atOnce.torqueNeeded).toBeLessThan(start.torqueNeeded);
  });

  it('does not fire with the throttle shut: no air is drawn past the jet to carry fuel', () => {
    const shut = sound(finishStudy(starting(dill, at(400, 0), { mostTurns: 8 })));
    expect([shut.firstFiring, shut.catches]).toEqual([null, null]);
    expect(startingSentence(shut, dill.engine)).toMatch(/does not fire within 8 turns/);
  });
});

describe('startingSentence', () => {
  // Figures are held together with their units.
  const engine = dill.engine;
  const say = (changes: Partial<Starting>, starterTorque: number | null = null) =>
    startingSentence(
      { ...start, torqueNeeded: 2, peakTorque: 9, slowest: 300 * rpm, ...changes },
      changed(engine, { wanted: { starterTorque } }),
    ).replaceAll('\u00a0', ' ');

  it('names the turn in which it fires and the one in which it catches', () => {
    expect(say({ firstFiring: 5, catches: 7 })).toMatch(
      /^Cranked at 400 rpm it fires first in turn 5 and catches in turn 7, after 1\.\d s\./,
    );
    expect(say({ firstFiring: 6, catches: 6 })).toMatch(/^Cranked at 400 rpm it catches in turn 6/);
    expect(say({ catches: null })).toContain('does not turn itself');
  });

  it('tells whether the starter turns it, and what carries it over a compression', () => {
    expect(say({})).toMatch(
      /takes 2 N m on the mean of a turn and 9 N m at the peak; what turns carries it over, slowing to 300 rpm\.$/,
    );
    expect(say({ slowest: null })).toContain('the starter must give the peak');
    expect(say({}, 1)).toContain('the starter’s 1 N m do not turn it');
    expect(say({}, 4)).toContain('the starter gives 4 N m, and what turns');
    expect(say({}, 12)).toContain('the starter’s 12 N m give that');
  });
});
