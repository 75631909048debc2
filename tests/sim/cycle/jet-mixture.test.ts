import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heldLambda, jetBoreFor, lambdaOfJet } from '../../../src/sim/cycle/jet-mixture.ts';
import { modelAt } from '../../../src/sim/cycle/mixture-at.ts';
import type { Engine } from '../../../src/sim/engine.ts';
import { solveToEnd } from '../../../src/sim/index.ts';
import { gram, mm, rpm } from '../../../src/sim/units.ts';
import { at, changed, modelOf, presetEngine, solveAt, solved } from '../../helpers/engines.ts';

const SPEED = 5000;
const plain = presetEngine('caraway-1');
const venturi = { bore: 16 * mm, dischargeCoefficient: 0.9, recovered: 0.6 };
const jet = { bore: 0.9 * mm, dischargeCoefficient: 0.75, lift: 5 * mm };
const jetted = changed(plain, { intake: { venturi }, charge: { jet } });
const withLift = (lift: number): Engine => changed(jetted, { charge: { jet: { lift } } });
const model = modelOf(jetted);
const solution = solveToEnd(model, at(SPEED));
const point = solved(solution.result);

describe('lambdaOfJet', () => {
  it('of air and fuel that hardly expand is Cd A sqrt(rho) of the one over that of the other, over the stoichiometric ratio', () => {
    const flat = modelOf(withLift(0));
    const { ambient } = flat.engine;
    const airDensity = ambient.pressure / (flat.set.gasConstants[0]! * ambient.temperature);
    const { fuel, stoichiometricAirFuelRatio } = flat.mixture;
    const areas = (0.9 * venturi.bore ** 2) / (0.75 * jet.bore ** 2);
    const expected = (areas * Math.sqrt(airDensity / fuel.liquidDensity)) / stoichiometricAirFuelRatio;
    expect(lambdaOfJet(flat, 0.3 * gram) / expected).toBeCloseTo(1, 2);
  });

  it('falls as the air flow rises, with the nozzle above the fuel or level with it, up to choking', () => {
    const gridOf = (lift: number) => {
      const built = modelOf(withLift(lift));
      return (flow: number) => lambdaOfJet(built, flow);
    };
    const laws = [gridOf(0), gridOf(5 * mm), gridOf(12 * mm)];
    const flow = fc.double({ min: 3 * gram, max: 35 * gram, noNaN: true });
    fc.assert(
      fc.property(flow, fc.double({ min: 1.01, max: 1.3, noNaN: true }), (less, factor) => {
        for (const law of laws) expect(law(less * factor)).toBeLessThan(law(less));
      }),
      { seed: 21, numRuns: 60 },
    );
  });

  it('is infinite where the air does not lift the fuel, and held at 2 then', () => {
    // 745 kg/m³ over 5 mm are 37 Pa; 0.5 g/s through 16 mm draw 4 Pa.
    expect(lambdaOfJet(model, 0.5 * gram)).toBe(Infinity);
    expect(heldLambda(lambdaOfJet(model, 0.5 * gram))).toBe(2);
  });

  it('is undone by the bore of the jet that gives a λ', () => {
    const flow = 20 * gram;
    const bore = jetBoreFor(model, 0.88, flow)!;
    const charge = { ...model.engine.charge, jet: { ...model.engine.charge.jet!, bore } };
    const bored = { ...model, engine: { ...model.engine, charge } };
    expect(lambdaOfJet(bored, flow)).toBeCloseTo(0.88, 9);
    expect(jetBoreFor(model, 0.88, 0.5 * gram)).toBeNull();
  });

  it('is richer behind a restrictor, whose thinner air must run faster', () => {
    const restrictor = { bore: 14 * mm, dischargeCoefficient: 0.9, recovered: 0 };
    const behind = modelOf(changed(jetted, { intake: { restrictor } }));
    expect(lambdaOfJet(behind, 15 * gram)).toBeLessThan(lambdaOfJet(model, 15 * gram));
  });
});

describe('solve, with a jet', () => {
  it('runs on the mixture that its own air draws, within 1e-4', () => {
    const { airFlow, fuelFlow, lambda } = point.engine;
    expect(Math.abs(lambdaOfJet(model, airFlow) / lambda - 1)).toBeLessThan(1e-4);
    expect(airFlow / fuelFlow / model.mixture.stoichiometricAirFuelRatio).toBeCloseTo(lambda, 9);
  });

  it('is bit for bit the point with that λ stated, whose balances close', () => {
    const stated = changed(jetted, { charge: { jet: null, lambda: point.engine.lambda } });
    const same = solved(solveAt(stated, SPEED));
    expect(point.engine).toEqual(same.engine);
    for (const key of ['mass', 'energy', 'species'] as const)
      expect(point.residuals[key]).toBeLessThan(1e-11);
  });

  it('takes a neighbour’s mixture for its first guess and comes to the same λ', () => {
    const near = solveToEnd(model, at(SPEED), { start: solution.next });
    expect(solution.next!.lambda).toBe(point.engine.lambda);
    expect(solved(near.result).engine.lambda / point.engine.lambda).toBeCloseTo(1, 4);
    expect(near.result.cycles).toBeLessThan(point.cycles);
  });

  it('says that a main jet gives nothing at cranking speed', () => {
    const cranked = solved(solveAt(jetted, 300, { change: 1e-4 }));
    expect(cranked.engine.lambda).toBe(2);
    expect(cranked.notes.map(({ text }) => text).join(' ')).toMatch(/draws no fuel through the main jet/);
  });
});

describe('solve, with λ over speed', () => {
  const table = { speeds: [4000 * rpm, 6000 * rpm], lambdas: [0.8, 0.9] };
  const tabled = changed(plain, { charge: { lambdaOverSpeed: table } });

  it('is bit for bit the point with the table’s λ stated', () => {
    const { engine, notes } = solved(solveAt(tabled, SPEED));
    const stated = solved(solveAt(changed(plain, { charge: { lambda: engine.lambda } }), SPEED));
    expect(engine.lambda).toBeCloseTo(0.85, 12);
    expect(engine).toEqual(stated.engine);
    expect(notes).toEqual(stated.notes);
  });

  it('is so, too, where burned gas is in equilibrium, whose table belongs to one λ', () => {
    const burned = { combustion: { products: 'equilibrium' } } as const;
    const { engine } = solved(solveAt(changed(tabled, burned), SPEED));
    const lambda = { charge: { lambda: engine.lambda } };
    expect(engine).toEqual(solved(solveAt(changed(changed(plain, burned), lambda), SPEED)).engine);
  });

  it('says where the end of the table is held', () => {
    const { engine, notes } = solved(solveAt(tabled, 7000, { change: 1e-4 }));
    expect(engine.lambda).toBe(0.9);
    expect(notes.map(({ text }) => text).join(' ')).toMatch(/runs from 4000 to 6000 rpm; at 7000 rpm/);
  });
});

describe('modelAt', () => {
  it('shares the model of a design with one λ', () => {
    const shared = modelOf(plain);
    expect(modelAt(shared, 100 * rpm)).toBe(shared);
  });
});
