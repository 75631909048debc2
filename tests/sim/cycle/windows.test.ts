import { describe, expect, it } from 'vitest';
import { atRest } from '../../../src/sim/cycle/start.ts';
import { CycleSystem } from '../../../src/sim/cycle/system.ts';
import type { Engine } from '../../../src/sim/index.ts';
import { toEngine } from '../../../src/design/to-engine.ts';
import { preset } from '../../design/designs.ts';
import { at, changed, modelOf, presetEngine, solveAt, solved } from '../../helpers/engines.ts';

const FRESH = [1, 0, 0];
const BURNED = [0, 0, 1];
const AMBIENT = 101_325;

interface Filling {
  readonly passage: number;
  readonly collector: number;
  /** Purity of the cylinder at ambient pressure, and what it was when the exhaust opened. */
  readonly purity: number;
  readonly stale?: number;
}

/** What crosses the windows of Caraway 1 at its bottom dead centre, both open. */
function crossing(
  scavenging: Partial<Engine['scavenging']>,
  { passage, collector, purity, stale = 0 }: Filling,
) {
  const model = modelOf(changed(presetEngine('caraway-1'), { scavenging }));
  const system = new CycleSystem(model, at(3000));
  const { gas, edges, stateSize, memory } = system;
  const state = new Float64Array(stateSize);
  state.set(atRest(system).state);
  const theta = model.geometry.cylinders[0].bdc;
  system.pistons.moveTo(theta);
  const { at: nodes, through } = model.network;
  gas.pack(state, nodes.cylinders[0], AMBIENT, 500, [purity, 0, 1 - purity]);
  gas.pack(state, nodes.passages[0], passage, 330, FRESH);
  gas.pack(state, nodes.collectors[0], collector, 800, BURNED);
  memory.setStalePurity(0, stale);
  system.instant.theta = theta;
  expect(system.rates(state, new Float64Array(system.size), false)).toBe(true);
  const describeEdge = (edge: number) => {
    const at = edge * edges.stride;
    const [air, fuel, products, enthalpy] = edges.carried.slice(at, at + edges.stride);
    return { flow: edges.massFlow[edge], purity: air + fuel, products, enthalpy };
  };
  return {
    transfer: describeEdge(through.transfers[0]),
    exhaust: describeEdge(through.exhausts[0]),
    bulk: gas.enthalpy[nodes.cylinders[0]],
    collectorEnthalpy: gas.enthalpy[nodes.collectors[0]],
  };
}

const SCAVENGING: Filling = { passage: 1.2 * AMBIENT, collector: 0.95 * AMBIENT, purity: 0.5 };

describe('Windows', () => {
  it('lets the bulk of the cylinder go when it mixes perfectly: composition and enthalpy to 1e-12', () => {
    const { exhaust, bulk } = crossing({ law: { kind: 'perfect mixing' }, shortCircuitShare: 0 }, SCAVENGING);
    expect(exhaust.flow).toBeGreaterThan(0);
    expect(exhaust.purity).toBeCloseTo(0.5, 12);
    expect(Math.abs(exhaust.enthalpy / bulk - 1)).toBeLessThan(1e-12);
  });

  it('lets only burned gas go while it displaces perfectly', () => {
    const { exhaust } = crossing({ law: { kind: 'perfect displacement' }, shortCircuitShare: 0 }, SCAVENGING);
    expect(exhaust.purity).toBe(0);
    expect(exhaust.products).toBeCloseTo(1, 14);
  });

  it('counts from the gas that stood there when the exhaust opened: its air leaves with it even when displaced', () => {
    const { exhaust } = crossing(
      { law: { kind: 'perfect displacement' }, shortCircuitShare: 0 },
      { ...SCAVENGING, stale: 0.2 },
    );
    expect(exhaust.purity).toBeCloseTo(0.2, 12);
  });

  it('sends the stated share of the transfer inflow straight across', () => {
    const share = 0.1;
    const { exhaust, transfer } = crossing(
      { law: { kind: 'perfect displacement' }, shortCircuitShare: share },
      SCAVENGING,
    );
    expect(transfer.flow).toBeGreaterThan(0);
    const straight = (share * transfer.flow) / exhaust.flow;
    expect(straight).toBeLessThan(1);
    expect(exhaust.purity).toBeCloseTo(straight, 12);
  });

  it('never sends across more than leaves: a cylinder whose exhaust hardly flows passes pure charge', () => {
    const { exhaust, transfer } = crossing(
      { law: { kind: 'perfect mixing' }, shortCircuitShare: 1 },
      { ...SCAVENGING, passage: 1.4 * AMBIENT, collector: 0.9999 * AMBIENT },
    );
    expect(transfer.flow).toBeGreaterThan(exhaust.flow);
    expect(exhaust.purity).toBeCloseTo(1, 12);
  });

  it('has no short circuit while the passage takes gas back, nor while the exhaust blows in', () => {
    const law = { kind: 'perfect mixing' } as const;
    const back = crossing({ law, shortCircuitShare: 0.3 }, { ...SCAVENGING, passage: 0.9 * AMBIENT });
    expect(back.transfer.flow).toBeLessThan(0);
    expect(back.transfer.purity).toBeCloseTo(0.5, 12);
    expect(back.exhaust.purity).toBeCloseTo(0.5, 12);
    const inwards = crossing({ law, shortCircuitShare: 0.3 }, { ...SCAVENGING, collector: 1.1 * AMBIENT });
    expect(inwards.exhaust.flow).toBeLessThan(0);
    expect(inwards.exhaust.products).toBeCloseTo(1, 12);
    expect(Math.abs(inwards.exhaust.enthalpy / inwards.collectorEnthalpy - 1)).toBeLessThan(1e-12);
  });
});

describe('ownShortCircuit', () => {
  it('is entered beside the common share, and lets one cylinder lose more of its charge than the others', () => {
    const common = preset('dill-3');
    const entered = toEngine({
      ...common,
      crank: {
        ...common.crank,
        corrections: [...common.crank.corrections, { cylinder: 'A2', shortCircuitShare: 0.3 }],
      },
    });
    expect(entered.scavenging.ownShortCircuit).toEqual([null, 0.3, null]);
    const [first, second, third] = solved(solveAt(entered, 4000)).cylinders;
    expect(second!.trappingEfficiency).toBeLessThan(
      0.9 * Math.min(first!.trappingEfficiency, third!.trappingEfficiency),
    );
  });
});
