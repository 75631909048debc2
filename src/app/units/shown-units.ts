import { figure } from '../../charts/format.ts';
import type { Column } from '../../charts/scales.ts';
import { withUnit } from '../../charts/with-unit.ts';
import { unitNamed } from '../../design/format-quantity.ts';
import { fromSi } from '../../design/unit-table.ts';
import type { Dimension, Unit } from '../../design/unit-table.ts';

/** What a figure measures, as far as readers differ in its unit. Angles, speeds of rotation and shares are alike for all. */
export type Measure =
  | 'length'
  | 'area'
  | 'volume'
  | 'pressure'
  | 'ripple'
  | 'power'
  | 'heat'
  | 'temperature'
  | 'torque'
  | 'force'
  | 'stress'
  | 'mass flow'
  | 'fuel flow'
  | 'consumption'
  | 'speed';

type Symbols = Readonly<Record<Measure, string>>;

/** One way to show figures: a unit for each measure, and a second one for those that people know in two. */
export class ShownUnits {
  readonly id: string;
  /** What it is called where it is chosen: by the units that tell it apart. */
  readonly label: string;
  readonly #units: Readonly<Record<Measure, Unit>>;
  readonly #beside: Partial<Readonly<Record<Measure, Unit>>>;

  constructor(id: string, label: string, symbols: Symbols, beside: Partial<Symbols>) {
    const named = <T extends Partial<Symbols>>(all: T) =>
      Object.fromEntries(Object.entries(all).map(([measure, symbol]) => [measure, unitNamed(symbol)]));
    this.id = id;
    this.label = label;
    this.#units = named(symbols) as Record<Measure, Unit>;
    this.#beside = named(beside);
  }

  unit(measure: Measure): Unit {
    return this.#units[measure];
  }

  /** As it is written; its parts stay together. */
  symbol(measure: Measure): string {
    return unbroken(this.#units[measure]);
  }

  /** From base SI. */
  number(measure: Measure, value: number): number {
    return fromSi(value, this.#units[measure]);
  }

  /** Many figures at once; what is missing becomes NaN. */
  column(measure: Measure, values: Column): Float64Array {
    const { factor, offset } = this.#units[measure];
    return Float64Array.from({ length: values.length }, (_, i) => ((values[i] ?? NaN) - offset) / factor);
  }

  /** A figure and its unit, which stay on one line: `0.108 bar`; W below one kilowatt, kW above; mbar below a hundredth of a bar. */
  text(measure: Measure, value: number, digits = 3): string {
    return written(value, fitting(this.#units[measure], value), digits);
  }

  /** The same with the second unit, where there is one: `0.108 bar (1.57 psi)`. */
  both(measure: Measure, value: number, digits = 3): string {
    const second = this.second(measure, value, digits);
    const first = written(value, finer(this.#units[measure], value), digits);
    return second === '' ? first : `${first} (${second})`;
  }

  second(measure: Measure, value: number, digits = 3): string {
    const unit = this.#beside[measure];
    return unit ? written(value, unit, digits) : '';
  }

  /** The unit in which a reader takes what a field holds: the field's own where readers are metric, as fields are. */
  ofField(own: Unit): Unit {
    const measure = this.symbol('length') === 'mm' ? undefined : MEASURE_OF[own.dimension];
    if (measure === undefined) return own;
    const unit = this.#units[measure];
    return own.dimension === 'gauge pressure'
      ? { ...unit, dimension: own.dimension, symbol: `${unit.symbol} above ambient` }
      : unit;
  }

  /** What heads a column or an axis: `plenum, bar`. */
  heading(quantity: string, measure: Measure): string {
    return withUnit(quantity, this.symbol(measure));
  }
}

const MEASURE_OF: Partial<Record<Dimension, Measure>> = {
  length: 'length',
  area: 'area',
  volume: 'volume',
  pressure: 'pressure',
  'gauge pressure': 'pressure',
  temperature: 'temperature',
  torque: 'torque',
  power: 'power',
  speed: 'speed',
};

const watt = unitNamed('W');
const kilowatt = unitNamed('kW');
const unbroken = ({ symbol }: Unit): string => symbol.replaceAll(' ', '\u00a0');
const bar = unitNamed('bar');
const millibar = unitNamed('mbar');
const finer = (unit: Unit, value: number): Unit =>
  unit === bar && Math.abs(value) < 0.01 * bar.factor ? millibar : unit;
const fitting = (unit: Unit, value: number): Unit =>
  unit === watt || unit === kilowatt
    ? Math.abs(value) < kilowatt.factor
      ? watt
      : kilowatt
    : finer(unit, value);
const written = (value: number, unit: Unit, digits: number): string =>
  `${figure(fromSi(value, unit), digits)}\u00a0${unbroken(unit)}`;

const metric: Symbols = {
  length: 'mm',
  area: 'mm²',
  volume: 'cc',
  pressure: 'bar',
  ripple: 'mbar',
  power: 'kW',
  heat: 'W',
  temperature: '°C',
  torque: 'N m',
  force: 'N',
  stress: 'MPa',
  'mass flow': 'g/s',
  'fuel flow': 'l/h',
  consumption: 'g/kWh',
  speed: 'm/s',
};

const workshop: Symbols = {
  length: 'in',
  area: 'in²',
  volume: 'in³',
  pressure: 'psi',
  ripple: 'psi',
  power: 'hp',
  heat: 'Btu/min',
  temperature: '°F',
  torque: 'lb ft',
  force: 'lbf',
  stress: 'psi',
  'mass flow': 'lb/min',
  'fuel flow': 'US gal/h',
  consumption: 'lb/(hp h)',
  speed: 'ft/s',
};

/** What a reader can choose from; the first is what one begins with. */
export const UNIT_SETS: readonly ShownUnits[] = [
  new ShownUnits('metric-kW', 'mm · bar · kW', metric, { pressure: 'psi', power: 'hp' }),
  new ShownUnits('metric-hp', 'mm · bar · hp', { ...metric, power: 'hp' }, { pressure: 'psi', power: 'kW' }),
  new ShownUnits('workshop', 'in · psi · hp', workshop, { pressure: 'bar', power: 'kW' }),
];
