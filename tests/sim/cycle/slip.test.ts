import { describe, expect, it } from 'vitest';
import { clearancePaths } from '../../../src/sim/blower/rotors/clearances.ts';
import { thinGapFlow } from '../../../src/sim/blower/slip/thin-gap.ts';
import { CycleSystem } from '../../../src/sim/cycle/system.ts';
import { orificeMassFlow } from '../../../src/sim/exchange/orifice.ts';
import { gasViscosity } from '../../../src/sim/heat-transfer/gas-transport.ts';
import type { Engine } from '../../../src/sim/index.ts';
import { BlowerSide } from '../../../src/sim/study/supply/blower-side.ts';
import { at, changed, modelOf, presetEngine, solveAt, solved } from '../../helpers/engines.ts';

const lovage = presetEngine('lovage-7');
const lands = { tip: 1.8e-3, mesh: 1.9e-3, end: 20e-3 };
type Lands = typeof lands;
const byPath = (length: Lands = lands, closeWithHeat = false): Engine => ({
  ...lovage,
  blower: { ...lovage.blower, slip: { lands: length, filmShare: 0, closeWithHeat } },
});

/** Slip with plenum and inlet box at given pressures, air of 300 K in both [kg/s]. */
function slipAt(engine: Engine, plenum: number, box: number) {
  const system = new CycleSystem(modelOf(engine), at(6000));
  const { network } = system.model;
  const state = new Float64Array(system.size);
  const air = system.gas.set.constituents.map((_, k) => (k === 0 ? 1 : 0));
  for (let node = 0; node < system.gas.dynamicCount; node++) {
    if (system.gas.volume[node] === 0) system.gas.volume[node] = 1e-5;
    system.gas.pack(state, node, node === network.at.plenum ? plenum : box, 300, air);
  }
  system.pistons.moveTo(0);
  for (const node of network.at.cylinders) system.gas.pack(state, node, box, 300, air);
  expect(system.rates(state, new Float64Array(system.size), false)).toBe(true);
  return {
    flow: system.edges.massFlow[network.through.slip],
    RT: system.gas.gasConstant[network.at.plenum] * 300,
    gamma: system.gas.gamma[network.at.plenum],
  };
}

const { blower } = lovage;
const widths = clearancePaths(
  { tip: 1, mesh: 1, end: 1 },
  blower.tipDiameter,
  blower.rotors.length,
  blower.helixAngle,
  blower.rotors.centreDistance,
);
const each = [
  [widths.tips, blower.rotors.gaps.tip, 'tip'],
  [widths.mesh, blower.rotors.gaps.mesh, 'mesh'],
  [widths.ends, blower.rotors.gaps.end, 'end'],
] as const;

describe('PathSlip', () => {
  it('is the friction of thin gaps at 50 Pa, the pressure of slow cranking', () => {
    const { flow, RT } = slipAt(byPath(), 101_375, 101_325);
    const thin = each.reduce(
      (sum, [width, gap, key]) =>
        sum + thinGapFlow(2 * width, gap, lands[key], 101_375, 101_325, RT, gasViscosity(300)),
      0,
    );
    expect(flow / thin).toBeCloseTo(1, 2);
  });

  it('is the orifice of all gaps where they are sharp', () => {
    const sharp = { tip: 2e-5, mesh: 2e-5, end: 2e-5 };
    const { flow, RT, gamma } = slipAt(byPath(sharp), 140_000, 100_000);
    const area = each.reduce((sum, [width, gap]) => sum + 2 * width * gap, 0);
    const orifice = orificeMassFlow(blower.clearanceDischarge * area, 140_000, 300, 100_000, gamma, RT / 300);
    expect(flow / orifice).toBeCloseTo(1, 3);
  });

  it('rises with the pressure difference, turns with its sign, and is nothing without one', () => {
    const flows = [100_000, 101_000, 101_325, 101_400, 110_000, 150_000].map(
      (plenum) => slipAt(byPath(), plenum, 101_325).flow,
    );
    for (let i = 1; i < flows.length; i++) expect(flows[i]).toBeGreaterThan(flows[i - 1]);
    expect(flows[2]).toBe(0);
    expect(flows[1]).toBeLessThan(0);
  });

  it('closes mass and energy, warm gaps included, and says where heat closes them', () => {
    const steel = byPath(lands, true);
    const tight = changed(steel, {
      blower: { rotors: { casingMaterial: 'steel', gaps: { tip: 2e-5, mesh: 3e-5, end: 3e-5 } } },
    });
    const point = solved(solveAt(tight, 9000));
    expect(Math.max(point.residuals.mass, point.residuals.energy, point.residuals.species)).toBeLessThan(
      1e-12,
    );
    expect(point.notes.map(({ text }) => text).join()).toMatch(/Heat closes the gap at the ends/);
  });
});

describe('gas carried back in the mesh', () => {
  const share = 0.06;
  const bare = changed(lovage, {
    blower: { clearanceArea: 0, casingHeatShare: 0, carriedBackShare: share },
    intake: { throttle: { bore: 0.2 }, boxWall: { area: 0 } },
    plenum: { wall: { area: 0 }, relief: null },
    charge: { lambda: 1e6, oilShare: 0 },
  });
  const side = new BlowerSide(modelOf(bare), at(6000));
  const inlet = side.at(1.0001 * lovage.ambient.pressure)!.boxTemperature;
  const { massFlow, pressure, temperature, boxPressure, boxTemperature, fluidPower } = side.at(
    1.5 * lovage.ambient.pressure,
  )!;
  const displaced = 2 * blower.displacement * 200; // m^3/s: twice 100 turns a second

  it('costs what it is denser than what it replaces: V (rho1 - c (rho2 - rho1))', () => {
    const R = 287.06;
    const [before, behind] = [boxPressure / (R * boxTemperature), pressure / (R * temperature)];
    expect(massFlow / (displaced * (before - share * (behind - before)))).toBeCloseTo(1, 3);
  });

  it('takes no work by itself, and heats what leaves by the work over its heat capacity', () => {
    expect(fluidPower / (displaced * (pressure - boxPressure))).toBeCloseTo(1, 9);
    expect((temperature - inlet) / (fluidPower / (massFlow * 1004))).toBeCloseTo(1, 2);
    expect(boxTemperature).toBeGreaterThan(inlet + 0.5);
  });
});
