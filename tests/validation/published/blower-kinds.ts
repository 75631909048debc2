import { inducerChoke } from '../../../src/sim/blower/centrifugal/inducer-choke.ts';
import { wiesnerSlipFactor } from '../../../src/sim/blower/centrifugal/slip-factor.ts';
import { SpeedLine } from '../../../src/sim/blower/centrifugal/speed-line.ts';
import { leastWorkPerVolume, workPerVolume } from '../../../src/sim/blower/internal-compression.ts';
import type { Cooler, Engine } from '../../../src/sim/engine.ts';
import { stickingLift } from '../../../src/sim/exchange/sticking-lift.ts';
import { BlowerSide } from '../../../src/sim/study/supply/blower-side.ts';
import { deg } from '../../../src/sim/units.ts';
import { at, changed, modelOf, presetEngine } from '../../helpers/engines.ts';
import type { Comparison } from './comparison.ts';

export const SQUARE =
  'square indicator diagram, γ 1.4, by hand; Heywood, Internal Combustion Engine Fundamentals, 1988, sec. 6.8';
export const DIGITS = 'half of the last digit given';

/** A blower that neither leaks nor gives heat away, on next to no fuel, behind a throttle that is hardly there. */
export function bareEngine(): Engine {
  const lovage = presetEngine('lovage-7');
  const adiabatic = { area: 0 };
  return changed(lovage, {
    blower: { clearanceArea: 0, casingHeatShare: 0 },
    intake: { throttle: { bore: 0.2 }, boxWall: adiabatic },
    plenum: { wall: adiabatic, relief: null },
    charge: { lambda: 1e6, oilShare: 0 },
  });
}

/** The same blower twice, the second of `share` of the first's displacement, which is the ratio that the first makes of it. */
function inStages(share: number, cooler: Cooler | null): number {
  const engine = bareEngine();
  const second = { ...engine.blower, displacement: share * engine.blower.displacement };
  const staged = { ...engine, secondStage: { blower: second, volume: 3e-4, cooler } };
  const side = new BlowerSide(modelOf(staged), at(6000));
  const supply = side.at(4 * engine.ambient.pressure);
  if (!supply) return NaN;
  const { boxTemperature, boxPressure, displaced, fluidPower } = supply;
  const k = 0.4 / 1.4;
  return (
    (displaced * 287.06 * boxTemperature * (((4 * engine.ambient.pressure) / boxPressure) ** k - 1)) /
    k /
    fluidPower
  );
}

/** Cools all the way, with hardly a loss of pressure. */
const wholeCooler = (coolantTemperature: number): Cooler => ({
  effectiveness: 1,
  coolantTemperature,
  area: 3e-3,
  lossFactor: 0.1,
  volume: 3e-4,
});

function stages(): readonly Comparison[] {
  const { ambient } = bareEngine();
  return [
    {
      quantity: 'two equal stages to ratio 4 by the cycle itself, in steady flow of air, uncooled',
      origin: 'closed form',
      source: SQUARE,
      unit: '',
      // The first stage heats to 1 + 1/3.5 of the inlet's temperature at twice its pressure.
      values: [[0.744, inStages((1 + 1 / 3.5) / 2, null)]],
      within: { share: 2e-3 },
      because: 'γ of air falls from 1.400 to 1.393 as it warms',
    },
    {
      quantity: 'the same, cooled back to inlet temperature by its intercooler',
      origin: 'closed form',
      source: SQUARE,
      unit: '',
      values: [[0.85, inStages(0.5, wholeCooler(ambient.temperature))]],
      within: { share: 2e-3 },
      because: 'γ of air falls from 1.400 to 1.397 as it warms',
    },
  ];
}

const INDICATOR =
  'indicator diagram of a pocket: γ/(γ−1) (v^(γ−1) − 1) + (x − v^γ)/v over inlet pressure, γ 1.4, by hand';

/** Built-in volume ratio, pressure ratio, work per volume over inlet pressure. */
const POCKETS: readonly (readonly [built: number, ratio: number, work: number])[] = [
  [1, 1.5, 0.5],
  [1.3, 1.3 ** 1.4, 0.3873],
  [1.3, 1.5, 0.4305],
  [1.3, 1, 0.0459],
  [2, 1.5, 0.5488],
];

const internal: readonly Comparison[] = [
  {
    quantity:
      'work of a blower with internal compression: none, fitting, under-, over-compression, twice the volume',
    origin: 'closed form',
    source: INDICATOR,
    unit: 'inlet pressure × volume',
    values: POCKETS.map(([built, ratio, work]) => [work, workPerVolume(built, 1, ratio, 1.4)]),
    within: { amount: 5e-5 },
    because: DIGITS,
  },
  {
    quantity: 'isentropic work is what it does where the ratio fits, v 1.3',
    origin: 'closed form',
    source: 'γ/(γ−1) (x^((γ−1)/γ) − 1), by hand',
    unit: 'inlet pressure × volume',
    values: [[0.3873, leastWorkPerVolume(1, 1.3 ** 1.4, 1.4)]],
    within: { amount: 5e-5 },
    because: DIGITS,
  },
];

/** Blades, backsweep from radial in degrees, slip factor. */
const WIESNER: readonly (readonly [blades: number, backsweep: number, slip: number])[] = [
  [8, 0, 0.767],
  [12, 0, 0.824],
  [16, 0, 0.856],
  [20, 0, 0.877],
  [12, 30, 0.837],
  [20, 40, 0.893],
];

function centrifugal(): readonly Comparison[] {
  const choked = inducerChoke(1e-3, 0, 1.225, 340.3, 1.4);
  const spinning = inducerChoke(1e-3, 200, 1.225, 340.3, 1.4);
  const radial = new SpeedLine(
    {
      blades: 20,
      backsweep: 0,
      exitWidth: 6e-3,
      throatArea: 1e-3,
      efficiency: 0.75,
      efficiencyAtHalf: 0.9,
      flowWithoutHead: 1.6,
      workFactor: 1,
    },
    1e-4,
    0.08,
  );
  const swept = new SpeedLine(
    {
      blades: 20,
      backsweep: 40 * deg,
      exitWidth: 6e-3,
      throatArea: 1e-3,
      efficiency: 0.75,
      efficiencyAtHalf: 0.9,
      flowWithoutHead: 1.6,
      workFactor: 1,
    },
    1e-4,
    0.08,
  );
  return [
    {
      quantity: 'slip factor of wheels with 8 to 20 blades, radial and swept back 30° and 40°',
      origin: 'published',
      source: 'Wiesner, J. Eng. Power 89, 1967: σ = 1 − √(cos β)/Z^0.7, worked out by hand',
      unit: '',
      values: WIESNER.map(([blades, backsweep, slip]) => [slip, wiesnerSlipFactor(blades, backsweep * deg)]),
      within: { amount: 5e-4 },
      because: DIGITS,
    },
    {
      quantity: 'the same of radial wheels against potential flow, 12 to 20 blades',
      origin: 'published',
      source: 'Stanitz, Trans. ASME 74, 1952: σ = 1 − 0.63 π/Z, by hand 0.835, 0.876, 0.901',
      unit: '',
      values: [
        [0.835, wiesnerSlipFactor(12, 0)],
        [0.876, wiesnerSlipFactor(16, 0)],
        [0.901, wiesnerSlipFactor(20, 0)],
      ],
      within: { amount: 0.03 },
      because: 'Wiesner himself puts his fit within a few percent of the theories he sums up',
    },
    {
      quantity:
        'Euler work of a wheel of 20 blades, radial at any flow, swept back 40° at best flow and at rest, over U²',
      origin: 'closed form',
      source:
        'exit triangle ψ = σ − φ₂ tan β, φ₂ = V/(π D b U); D 80 mm, b 6 mm, 0.1 l a turn: φ₂ 0.2639, by hand',
      unit: 'U²',
      values: [
        [0.877, radial.work(1)],
        [0.877, radial.work(0.3)],
        [0.6711, swept.work(1)],
        [0.8925, swept.work(0)],
      ],
      within: { amount: 5e-4 },
      because: DIGITS,
    },
    {
      quantity:
        'flow that chokes a throat of 10 cm² of the inducer in air at 15 °C, standing still and at 200 m/s of its blades',
      origin: 'closed form',
      source:
        'ρ a A ((2 + (γ−1) M²)/(γ+1))^((γ+1)/(2(γ−1))), M = blade speed over speed of sound; by hand; Dixon & Hall, Fluid Mechanics and Thermodynamics of Turbomachinery, 2010, sec. 7.12',
      unit: 'kg/s',
      values: [
        [0.2412, choked],
        [0.2948, spinning],
      ],
      within: { share: 1e-3 },
      because: 'air of 1.225 kg/m³ and 340.3 m/s as rounded there',
    },
  ];
}

const relief: readonly Comparison[] = [
  {
    quantity:
      'lift of a valve that opens at 0.7, is open at 1 and shuts at 0.6 bar: up to 0.85, 1.2, down to 0.95, 0.75, 0.55 bar',
    origin: 'closed form',
    source: 'spring and dry friction by hand: up (p − 0.7)/0.3, down (p − 0.6)/0.3, between them as it was',
    unit: '',
    values: liftsAlong([0.85, 1.2, 0.95, 0.75, 0.55]).map(
      (lift, i) => [[0.5, 1, 1, 0.5, 0][i]!, lift] as const,
    ),
    within: { amount: 1e-12 },
    because: 'the law itself',
  },
];

function liftsAlong(pressures: readonly number[]): readonly number[] {
  let held = 0;
  return pressures.map((dp) => (held = stickingLift(dp, 0.7, 1, 0.6, held)));
}

/** Stages, kinds of blower beside Roots, and the relief valve. */
export const kinds = (): readonly Comparison[] => [...stages(), ...internal, ...centrifugal(), ...relief];
