import { describe, expect, it } from 'vitest';
import type { Engine } from '../../../src/sim/index.ts';
import { solve, solvePoint, solveToEnd } from '../../../src/sim/index.ts';
import type { SolvedPoint } from '../../../src/sim/results/point-result.ts';
import { cc, rpm } from '../../../src/sim/units.ts';
import type { Changes } from '../../helpers/engines.ts';
import { at, changed, modelOf, presetEngine, solved } from '../../helpers/engines.ts';

const dill = presetEngine('dill-3');

const solveEngine = (engine: Engine, speed_rpm: number, throttle = 1): SolvedPoint =>
  solved(solvePoint(modelOf(engine), at(speed_rpm, throttle)));
const withChanges = (changes: Changes<Engine>, speed_rpm = 3000): SolvedPoint =>
  solveEngine(changed(dill, changes), speed_rpm);

/** Plain rods on one pin, evenly spaced, nothing that tells the cylinders apart but their angle. */
function symmetric(cylinders: number): Engine {
  const engine = presetEngine('lovage-7');
  const [row] = engine.train.rows;
  const first = row.cylinders[row.master];
  return changed(engine, {
    train: {
      knuckleRadius: 0,
      rows: [
        {
          ...row,
          cylinders: Array.from({ length: cylinders }, (_, j) => ({
            ...first,
            axisAngle: (2 * Math.PI * j) / cylinders,
            knuckleAngle: (2 * Math.PI * j) / cylinders,
            rodLength: engine.train.masterRodLength,
          })),
        },
      ],
    },
    blower: { rippleDepth: 0 },
  });
}

describe('solvePoint', () => {
  it('gives equal cylinders to a symmetric engine of five: trapped mass, IMEP and heat within 1e-5', () => {
    // Equal but for what the iteration leaves: 1e-6 of every volume and period.
    const { cylinders } = solved(
      solveToEnd(modelOf(symmetric(5)), at(5000), { tolerance: 1e-5, change: 1e-8 }).result,
    );
    const spread = (of: (cylinder: (typeof cylinders)[number]) => number) => {
      const values = cylinders.map(of);
      return (Math.max(...values) - Math.min(...values)) / Math.abs(values[0]);
    };
    expect(spread((c) => c.trappedMass)).toBeLessThan(1e-5);
    expect(spread((c) => c.imep)).toBeLessThan(1e-5);
    expect(spread((c) => c.wallHeat.crown)).toBeLessThan(1e-5);
    expect(spread((c) => c.purity)).toBeLessThan(1e-5);
  });

  it('tells cylinders of an articulated row apart, by more than 1 % in IMEP', () => {
    const { cylinders } = solveEngine(presetEngine('lovage-7'), 5000);
    const imep = cylinders.map((c) => c.imep);
    expect(Math.max(...imep) / Math.min(...imep)).toBeGreaterThan(1.01);
  });

  it('lets a 50 cc cylinder at 6000 rpm swallow 5 to 7 g/s of air at a delivery ratio near 1', () => {
    const { engine, cylinders } = solveEngine(presetEngine('lovage-7'), 6000);
    expect(engine.sweptVolume / cylinders.length / cc).toBeCloseTo(52, -1);
    expect(engine.deliveryRatio).toBeGreaterThan(0.95);
    expect(engine.deliveryRatio).toBeLessThan(1.15);
    const perCylinder = engine.airFlow / cylinders.length;
    expect(perCylinder).toBeGreaterThan(5e-3);
    expect(perCylinder).toBeLessThan(7e-3);
  });

  it('delivers less as the blower leaks more', () => {
    const delivered = [0, 1, 4].map(
      (share) =>
        withChanges({ blower: { clearanceArea: share * dill.blower.clearanceArea } }).engine.deliveryRatio,
    );
    expect(delivered[1]).toBeLessThan(delivered[0]);
    expect(delivered[2]).toBeLessThan(delivered[1]);
  });

  it('slips a larger share of its flow at cranking speed than at top speed, and none without clearances', () => {
    const [slow, fast] = [dill.wanted.crankingSpeed, dill.wanted.maxSpeed].map(
      (speed) => solveEngine(dill, speed / rpm).blower.slipFraction,
    );
    expect(slow).toBeGreaterThan(fast);
    expect(withChanges({ blower: { clearanceArea: 0 } }).blower.slipFraction).toBe(0);
  });

  it('delivers more, at more pressure and shaft power, with a larger blower', () => {
    const { displacement } = dill.blower;
    const [small, large] = [displacement, 1.2 * displacement].map((each) =>
      withChanges({ blower: { displacement: each } }),
    );
    expect(large.engine.deliveryRatio).toBeGreaterThan(1.05 * small.engine.deliveryRatio);
    expect(large.plenum.meanPressure).toBeGreaterThan(small.plenum.meanPressure);
    expect(large.blower.shaftPower).toBeGreaterThan(small.blower.shaftPower);
  });

  it('breathes less mass from hotter or thinner air, in proportion to its density within 8 %', () => {
    const here = withChanges({});
    const hot = withChanges({ ambient: { temperature: dill.ambient.temperature * 1.1 } });
    const high = withChanges({ ambient: { pressure: dill.ambient.pressure * 0.8 } });
    expect(Math.abs((hot.engine.airFlow / here.engine.airFlow) * 1.1 - 1)).toBeLessThan(0.08);
    expect(Math.abs(high.engine.airFlow / here.engine.airFlow / 0.8 - 1)).toBeLessThan(0.08);
    expect(hot.engine.airFlow).toBeLessThan(here.engine.airFlow);
  });

  it('leaves more of a rich charge unburned, as CO and H2, than of a lean one, and takes more fuel', () => {
    const [rich, lean] = [0.8, 1.1].map((lambda) => withChanges({ charge: { lambda } }).engine);
    const share = ({ balance }: SolvedPoint['engine']) => balance.unburned / balance.fuel;
    expect(share(rich)).toBeGreaterThan(share(lean) + 0.1);
    expect(rich.fuelFlow / rich.airFlow / (lean.fuelFlow / lean.airFlow)).toBeCloseTo(1.1 / 0.8, 6);
  });

  it('gives less air, work and plenum pressure as the throttle closes', () => {
    const points = [1, 0.4, 0.2].map((throttle) => solveEngine(dill, 3000, throttle));
    for (let i = 1; i < points.length; i++) {
      expect(points[i].engine.airFlow).toBeLessThan(points[i - 1].engine.airFlow);
      expect(points[i].inletBox.meanPressure).toBeLessThan(points[i - 1].inletBox.meanPressure);
      expect(points[i].engine.imep).toBeLessThan(points[i - 1].engine.imep);
    }
  });

  it('loses the more fresh charge through the exhaust the more short-circuits', () => {
    const trapped = [0, 0.1, 0.3].map(
      (shortCircuitShare) => withChanges({ scavenging: { shortCircuitShare } }).engine.trappingEfficiency,
    );
    expect(trapped[1]).toBeLessThan(trapped[0]);
    expect(trapped[2]).toBeLessThan(trapped[1]);
  });

  it('orders the scavenging laws as they must be: displacement traps more than two stages, and these more than mixing', () => {
    const laws: Engine['scavenging']['law'][] = [
      { kind: 'perfect displacement' },
      { kind: 'displacement then mixing', displacedShare: 0.5 },
      { kind: 'perfect mixing' },
    ];
    const trapped = laws.map(
      (law) => withChanges({ scavenging: { law, shortCircuitShare: 0 } }).engine.trappingEfficiency,
    );
    expect(trapped[0]).toBeGreaterThan(trapped[1]);
    expect(trapped[1]).toBeGreaterThan(trapped[2]);
  });

  it('burns nothing when combustion is off: no indicated work left over, no products, all fuel unburned', () => {
    const { engine, cylinders } = withChanges({ combustion: { enabled: false } });
    expect(engine.imep).toBeLessThan(0);
    expect(engine.bsfc).toBeNull();
    for (const { purity, misfire } of cylinders) {
      expect(purity).toBeCloseTo(1, 9);
      expect(misfire).toBe(false);
    }
    // What the vapour holds is a little more than the liquid it came from.
    expect(engine.balance.unburned / engine.balance.fuel).toBeGreaterThan(1);
    expect(engine.balance.unburned / engine.balance.fuel).toBeLessThan(1.02);
  });
});

describe('solveToEnd', () => {
  const model = modelOf(dill);

  it('answers a point bit by bit alike, whatever was solved in between', () => {
    const first = solveToEnd(model, at(3000));
    solveToEnd(model, at(700));
    solveToEnd(modelOf(presetEngine('caraway-1')), at(5000));
    expect(solveToEnd(model, at(3000))).toEqual(first);
  });

  it('reaches the answer of a cold start from a neighbour, within 0.1 %, in fewer periods', () => {
    const cold = solveToEnd(model, at(3000));
    const neighbour = solveToEnd(model, at(2600)).next;
    const warm = solved(solveToEnd(model, at(3000), { start: neighbour }).result);
    const direct = solved(cold.result);
    // The meshes differ, so the step's own influence is the bound; the state's is 1e-6 a period.
    expect(Math.abs(warm.engine.imep / direct.engine.imep - 1)).toBeLessThan(1e-3);
    expect(Math.abs(warm.plenum.meanPressure / direct.plenum.meanPressure - 1)).toBeLessThan(1e-3);
    expect(Math.abs(warm.engine.deliveryRatio / direct.engine.deliveryRatio - 1)).toBeLessThan(1e-3);
    expect(warm.cycles).toBeLessThan(direct.cycles);
  });

  it('gives the cold start its turn where a neighbour leads nowhere, and then its very answer', () => {
    const cold = solveToEnd(model, at(3000));
    const empty = cold.next!.state.map(() => 1e-12);
    expect(solveToEnd(model, at(3000), { start: { ...cold.next!, state: empty } })).toEqual(cold);
  });

  it('stays where it is when started from its own solution: within 1e-5 and in no more than four periods', () => {
    const { result, next } = solveToEnd(model, at(3000));
    const again = solved(solveToEnd(model, at(3000), { start: next }).result);
    expect(Math.abs(again.engine.imep / solved(result).engine.imep - 1)).toBeLessThan(1e-5);
    expect(again.cycles).toBeLessThanOrEqual(4);
  });

  it('starts cold where the stated neighbour has another layout', () => {
    const stranger = solveToEnd(modelOf(presetEngine('caraway-1')), at(5000)).next;
    expect(solveToEnd(model, at(3000), { start: stranger })).toEqual(solveToEnd(model, at(3000)));
  });

  it('gives up after the stated number of periods, with the change of the last one in the reason', () => {
    const { result, next } = solveToEnd(model, at(3000), { mostCycles: 4 });
    expect(next).toBeNull();
    if (result.converged) throw new Error('four periods cannot do');
    expect(result.cycles).toBe(4);
    expect(result.reason).toMatch(
      /^no periodic state after 4 periods: the last one still changed a volume by [\d.e-]+ %/,
    );
    expect(result.change).toBeGreaterThan(1e-6);
  });
});

describe('solve', () => {
  it('yields after every period, numbered from 1, and can be left at any of them', () => {
    const run = solve(modelOf(dill), at(3000));
    const cycles: number[] = [];
    for (const { cycle, change } of run) {
      cycles.push(cycle);
      expect(change).toBeGreaterThan(0);
      if (cycles.length === 5) break;
    }
    expect(cycles).toEqual([1, 2, 3, 4, 5]);
  });
});
