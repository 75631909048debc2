import type { EnergyBalance, SolvedPoint } from '../../../src/sim/results/point-result.ts';
import { bar, celsiusFromKelvin, gramPerKWh, percent } from '../../../src/sim/units.ts';
import type { PresetName } from '../../helpers/engines.ts';
import { PRESET_NAMES } from '../../helpers/engines.ts';
import { presetPoint } from '../../helpers/preset-points.ts';

/** What engines like the presets do by print, and where each preset stands to it. */
export interface Band {
  readonly quantity: string;
  readonly unit: string;
  readonly low: number;
  readonly high: number;
  /** Author, title, place; and how sure it is that it stands there. */
  readonly source: string;
  readonly sure: 'read' | 'recalled, rather sure' | 'recalled, unsure';
  readonly of: (point: SolvedPoint) => number;
  /** Of every preset outside, why. */
  readonly outside: Partial<Record<PresetName, string>>;
}

const PARSLEY =
  'its blower brings half of what it swallows: delivery ratio 0.5; that is what it is there to show';
const LOST =
  'a mixture pumped at a delivery ratio above 1 past an exhaust that no wave plugs: over half of it leaves unburned (trapping efficiency 0.43 to 0.46)';
const SPARED =
  'rolling bearings, no valves and no pumping loop: friction is 7 to 9 % of the indicated work, not 15 to 20 %; and neither dissociation nor crevices take their share here, so it is rather too good';
const TABLE =
  'Heywood 1988, table 12.1, four-strokes with spark ignition at full load, which lose next to no charge';

const mean = ({ cylinders }: SolvedPoint, of: (each: SolvedPoint['cylinders'][number]) => number): number =>
  cylinders.reduce((sum, each) => sum + of(each), 0) / cylinders.length;
const share =
  (of: (balance: EnergyBalance) => number) =>
  ({ engine: { balance } }: SolvedPoint): number =>
    of(balance) / balance.fuel / percent;
const released =
  (of: (balance: EnergyBalance) => number) =>
  ({ engine: { balance } }: SolvedPoint): number =>
    of(balance) / (balance.fuel - balance.unburned) / percent;

export const BANDS: readonly Band[] = [
  {
    quantity: 'brake mean effective pressure',
    unit: 'bar',
    low: 4,
    high: 10,
    source: 'Heywood, Internal Combustion Engine Fundamentals, 1988, table 15.1, motorcycles',
    sure: 'recalled, rather sure',
    of: ({ engine }) => engine.bmep / bar,
    outside: { 'parsley-5': PARSLEY },
  },
  {
    quantity: 'brake mean effective pressure, exhaust not tuned',
    unit: 'bar',
    low: 4.5,
    high: 6,
    source:
      'Blair, Design and Simulation of Two-Stroke Engines, 1996, ch. 1, table of potential performance, untuned spark-ignition engines of one cylinder',
    sure: 'recalled, rather sure',
    of: ({ engine }) => engine.bmep / bar,
    outside: {
      'caraway-1':
        'the largest blower for its size: plenum at 1.18 bar, delivery ratio 1.24; a crankcase pumps 0.7 to 0.9',
      'dill-3': 'at 3000 rpm it has twice the time of the others: delivery ratio 1.15 at 1.06 bar',
      'parsley-5': PARSLEY,
    },
  },
  {
    quantity: 'brake specific fuel consumption',
    unit: 'g/kWh',
    low: 350,
    high: 600,
    source:
      'Heywood & Sher, The Two-Stroke Cycle Engine, 1999, carburetted engines at full load; best of a stratified one with a tuned pipe 275: Hill & Blair, SAE 831303, 1983 (abstract read)',
    sure: 'recalled, unsure',
    of: ({ engine }) => (engine.bsfc ?? NaN) / gramPerKWh,
    outside: { 'angelica-14': LOST, 'caraway-1': LOST, 'dill-3': LOST, 'lovage-7': LOST },
  },
  {
    quantity: 'peak pressure over brake mean effective pressure',
    unit: '',
    low: 5.5,
    high: 8.5,
    source:
      'Taylor, The Internal-Combustion Engine in Theory and Practice, 1985, and Blair 1996, indicator diagrams of two-strokes at full load with the spark at its best',
    sure: 'recalled, unsure',
    of: (point) => mean(point, ({ peakPressure }) => peakPressure) / point.engine.bmep,
    outside: {},
  },
  {
    quantity: 'peak pressure',
    unit: 'bar',
    low: 25,
    high: 50,
    source: 'Blair 1996, ch. 4 and 5, measured diagrams of engines without tuned exhaust at full load',
    sure: 'recalled, unsure',
    of: (point) => mean(point, ({ peakPressure }) => peakPressure) / bar,
    outside: { 'parsley-5': PARSLEY },
  },
  {
    quantity: 'temperature of the exhaust gas',
    unit: '°C',
    low: 400,
    high: 650,
    source:
      'Heywood 1988, ch. 6, two-strokes 300 to 400 °C below four-strokes of 400 to 900 °C for the fresh charge among it; 550 to 650 °C at a probe near the flange, workshop practice',
    sure: 'recalled, unsure',
    of: (point) => celsiusFromKelvin(mean(point, ({ exhaustTemperature }) => exhaustTemperature)),
    outside: {},
  },
  {
    quantity: 'share of brake work in the fuel’s energy',
    unit: '%',
    low: 14,
    high: 24,
    source: 'as fuel consumption: 350 to 600 g/kWh with 43 MJ/kg',
    sure: 'recalled, unsure',
    of: share(({ brake }) => brake),
    outside: { 'angelica-14': LOST, 'caraway-1': LOST, 'dill-3': LOST, 'lovage-7': LOST },
  },
  {
    quantity: 'brake work over the energy released in the cylinders',
    unit: '%',
    low: 25,
    high: 30,
    source: TABLE,
    sure: 'recalled, rather sure',
    of: released(({ brake }) => brake),
    outside: {
      'angelica-14': SPARED,
      'caraway-1': SPARED,
      'dill-3': SPARED,
      'lovage-7': SPARED,
      'parsley-5': SPARED,
    },
  },
  {
    quantity: 'heat to the walls and friction over the energy released in the cylinders',
    unit: '%',
    low: 17,
    high: 36,
    source: `${TABLE}: coolant 17 to 26 %, oil, friction and radiation 3 to 10 %`,
    sure: 'recalled, rather sure',
    of: released(({ cylinderWalls, otherWalls, friction }) => cylinderWalls + otherWalls + friction),
    outside: {},
  },
  {
    quantity: 'sensible heat in the exhaust over the energy released in the cylinders',
    unit: '%',
    low: 34,
    high: 45,
    source: TABLE,
    sure: 'recalled, rather sure',
    of: released(({ exhaustSensible }) => exhaustSensible),
    outside: {},
  },
  {
    quantity: 'share of fuel that leaves without ever being trapped',
    unit: '%',
    low: 25,
    high: 40,
    source: 'Heywood & Sher 1999, ch. 1 and 7, carburetted engines at full load',
    sure: 'recalled, rather sure',
    of: ({ engine }) => (1 - engine.trappingEfficiency) / percent,
    outside: {
      'angelica-14': LOST,
      'caraway-1': LOST,
      'dill-3': LOST,
      'lovage-7': LOST,
      'parsley-5':
        'just above: short of air it still short-circuits 5 % and pushes charge out until its exhaust shuts',
    },
  },
];

export interface Placed {
  readonly preset: PresetName;
  readonly value: number;
  readonly place: 'below' | 'in' | 'above';
  /** Of those outside; undefined where it is missing. */
  readonly why: string | undefined;
}

export const placed = ({ of, low, high, outside }: Band): readonly Placed[] =>
  PRESET_NAMES.map((preset) => {
    const value = of(presetPoint(preset, false));
    return {
      preset,
      value,
      place: value < low ? 'below' : value > high ? 'above' : 'in',
      why: outside[preset],
    };
  });
