import { describe, expect, it } from 'vitest';
import { outletWithPipe } from '../../../src/sim/cycle/assembly/inertia.ts';
import type { Engine } from '../../../src/sim/index.ts';
import { changed, presetEngine, solveAt, solved } from '../../helpers/engines.ts';
import { AMBIENT_AIR, EMPTYING, TURN_TIME, vessel, VOLUME, watch } from '../../helpers/vessel.ts';
import type { Moment } from '../../helpers/vessel.ts';
import { AIR } from '../../../src/sim/gas/air.ts';

/** The vessel with a pipe on its opening. */
function withPipe(engine: Engine, length: number, area: number): Engine {
  const [first] = engine.collectors;
  return changed(engine, { collectors: [changed(first, { pipe: { length, area, friction: 0 } })] });
}

const { pressure: p0, temperature: T0, gamma } = AMBIENT_AIR;
const speedOfSound = Math.sqrt(gamma * AIR.gasConstant * T0);

/** Times at which the pressure passes that of the surroundings, by straight lines between steps [s]. */
function crossings(moments: readonly Moment[]): number[] {
  return moments.slice(1).flatMap(({ time, p }, i) => {
    const before = moments[i];
    if (p >= p0 === before.p >= p0) return [];
    return [before.time + ((p0 - before.p) / (p - before.p)) * (time - before.time)];
  });
}

describe('InertialPassages', () => {
  it.each([
    [0.5, 0.02],
    [0.1, 0.012],
  ])(
    'lets a litre with a neck of %s m and a bore of %s m swing at (c/2π) √(A/(V L)), to 1 %%',
    (length, bore) => {
      const area = (Math.PI / 4) * bore ** 2;
      const times = crossings(watch(withPipe(vessel(area), length, area), 1.001 * p0, T0));
      const closed = (speedOfSound / (2 * Math.PI)) * Math.sqrt(area / (VOLUME * length));
      expect(times.length).toBeGreaterThan(4);
      const found = (times.length - 1) / 2 / (times.at(-1)! - times[0]!);
      expect(Math.abs(found / closed - 1)).toBeLessThan(0.01);
    },
  );

  it('empties a vessel as the orifice alone does where the column is five millimetres long, choked and beyond, to 2e-3', () => {
    const bare = vessel(EMPTYING.CdA, { pressure: EMPTYING.outside, temperature: 293.15 });
    const [without, with_] = [bare, withPipe(bare, 5e-3, EMPTYING.CdA)].map((engine) =>
      watch(engine, EMPTYING.pressure, EMPTYING.temperature),
    );
    const at = (moments: readonly Moment[], time: number): number => {
      const after = moments.findIndex((each) => each.time >= time);
      const [a, b] = [moments[Math.max(0, after - 1)]!, moments[after]!];
      return b.time === a.time ? b.p : a.p + ((b.p - a.p) * (time - a.time)) / (b.time - a.time);
    };
    for (const share of [0.2, 0.5, 0.9])
      expect(Math.abs(at(with_!, share * TURN_TIME) / at(without!, share * TURN_TIME) - 1)).toBeLessThan(
        2e-3,
      );
  });

  it('adds the friction of a pipe to the loss of its outlet: (f l/d) ρ w²/2', () => {
    const area = 1e-3;
    const bore = Math.sqrt((4 * area) / Math.PI);
    const [first] = presetEngine('lovage-7').collectors;
    const CdA = outletWithPipe({
      ...first,
      outletArea: area,
      outletDischarge: { forward: 1, backward: 0.5 },
      pipe: { length: 30 * bore, area, friction: 0.1 },
    });
    // One dynamic pressure at the outlet and three of friction.
    expect(CdA.forward).toBeCloseTo(area / 2, 12);
    expect(CdA.backward).toBeCloseTo(area / Math.sqrt(4 + 3), 12);
  });
});

const SPEED_RPM = 6000;
const lovage = presetEngine('lovage-7');
const columns = (length: number, pipe: number): Engine =>
  changed(lovage, {
    passages: { length },
    collectors: lovage.collectors.map((collector) =>
      changed(collector, { pipe: { length: pipe, area: collector.outletArea, friction: 0 } }),
    ),
  });
const plain = solved(solveAt(lovage, SPEED_RPM));
const weightless = solved(solveAt(columns(1e-4, 1e-4), SPEED_RPM));
const heavy = solved(solveAt(columns(0.06, 0.3), SPEED_RPM));

describe('an engine with columns of gas', () => {
  it('is that without where they are a tenth of a millimetre long: delivery ratio, mean effective and plenum pressure, to 1e-3', () => {
    expect(Math.abs(weightless.engine.deliveryRatio / plain.engine.deliveryRatio - 1)).toBeLessThan(1e-3);
    expect(Math.abs(weightless.engine.imep / plain.engine.imep - 1)).toBeLessThan(1e-3);
    expect(Math.abs(weightless.plenum.meanPressure / plain.plenum.meanPressure - 1)).toBeLessThan(1e-3);
  });

  it('are said to matter, or not, by what they weigh beside what passes in a turn', () => {
    const number = ({ notes }: typeof heavy) =>
      Number(/inertance number ([\d.e-]+)/.exec(notes.map(({ text }) => text).join(' '))?.[1]);
    const [cylinder] = heavy.cylinders;
    const { entryArea, entryDischarge } = lovage.passages;
    const density = heavy.plenum.meanPressure / (287 * heavy.plenum.meanTemperature);
    const perTurn = (heavy.engine.airFlow + heavy.engine.fuelFlow) / (SPEED_RPM / 60) / 7;
    const expected = (2 * entryDischarge.forward ** 2 * density * entryArea * 0.06) / perTurn;
    expect(cylinder!.deliveryRatio).toBeGreaterThan(0.5);
    expect(Math.abs(number(heavy) / expected - 1)).toBeLessThan(0.1);
    expect(number(weightless)).toBeLessThan(0.01);
    expect(number(plain)).toBeNaN();
  });

  it('balances mass, energy and constituents to 1e-9 with them', () => {
    const { mass, energy, species } = heavy.residuals;
    expect(Math.max(mass, energy, species)).toBeLessThan(1e-9);
  });

  it('does not depend on the step: half of it changes delivery ratio and mean effective pressure by less than 1e-3', () => {
    const halved = solved(solveAt(columns(0.06, 0.3), SPEED_RPM, { parts: 2 }));
    expect(Math.abs(halved.engine.deliveryRatio / heavy.engine.deliveryRatio - 1)).toBeLessThan(1e-3);
    expect(Math.abs(halved.engine.imep / heavy.engine.imep - 1)).toBeLessThan(1e-3);
  });
});
