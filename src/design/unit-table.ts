import * as u from '../sim/units.ts';

/** What kind of thing a number measures; only units of one dimension may stand for each other. */
export type Dimension =
  | 'length'
  | 'area'
  | 'volume'
  | 'angle'
  | 'rotation'
  | 'speed'
  | 'pressure'
  | 'gauge pressure'
  | 'temperature'
  | 'time'
  | 'torque'
  | 'power'
  | 'mass'
  | 'inertia'
  | 'force'
  | 'mass flow'
  | 'volume flow'
  | 'consumption'
  | 'ratio'
  | 'radiation'
  | 'velocity per temperature'
  | 'conductivity'
  | 'film coefficient'
  | 'friction per piston speed'
  | 'friction per speed squared';

export interface Unit {
  readonly dimension: Dimension;
  /** As shown to people. */
  readonly symbol: string;
  /** What may be typed for it, beside the symbol; compared without case unless that would be ambiguous. */
  readonly spellings: readonly string[];
  /** SI value = factor * number + offset. */
  readonly factor: number;
  readonly offset: number;
}

const unit = (
  dimension: Dimension,
  symbol: string,
  factor: number,
  spellings: string[] = [],
  offset = 0,
): Unit => ({
  dimension,
  symbol,
  spellings: [symbol, ...spellings],
  factor,
  offset,
});

const fahrenheitFactor = 5 / 9;

/** Every unit that may be typed, in the order in which they are offered. */
export const UNITS: readonly Unit[] = [
  unit('length', 'mm', u.mm),
  unit('length', 'cm', u.cm),
  unit('length', 'in', u.inch, ['inch', 'inches', '"', '″']),
  unit('length', 'm', 1),
  unit('length', 'ft', u.foot, ['foot', 'feet']),
  unit('length', 'µm', u.um, ['um', 'μm', 'micron', 'microns']),
  unit('area', 'mm²', u.mm2, ['mm2', 'mm^2']),
  unit('area', 'cm²', u.cm2, ['cm2', 'cm^2']),
  unit('area', 'in²', u.in2, ['in2', 'in^2', 'sq in']),
  unit('area', 'm²', 1, ['m2', 'm^2']),
  unit('volume', 'cc', u.cc, ['cm3', 'cm^3', 'cm³', 'ccm', 'ml']),
  unit('volume', 'l', u.litre, ['L', 'litre', 'litres', 'liter', 'liters', 'dm3', 'dm³']),
  unit('volume', 'in³', u.in3, ['in3', 'in^3', 'cu in', 'ci']),
  unit('volume', 'm³', 1, ['m3', 'm^3']),
  unit('angle', '°', u.deg, ['deg', 'degree', 'degrees', 'º']),
  unit('angle', 'rad', 1),
  unit('rotation', 'rpm', u.rpm, ['r/min', '1/min', 'rev/min', 'min-1']),
  unit('rotation', 'rev/s', u.TURN, ['r/s', 'Hz', '1/s']),
  unit('rotation', 'rad/s', 1),
  unit('speed', 'm/s', 1),
  unit('speed', 'km/h', u.kmPerHour, ['kmh', 'kph']),
  unit('speed', 'ft/s', u.foot, ['fps']),
  unit('pressure', 'bar', u.bar),
  unit('pressure', 'kPa', u.kPa),
  unit('pressure', 'MPa', u.MPa),
  unit('pressure', 'mbar', u.mbar, ['hPa']),
  unit('pressure', 'psi', u.psi),
  unit('pressure', 'inHg', u.inHg, ['in Hg']),
  unit('pressure', 'atm', u.atm),
  unit('pressure', 'Pa', 1),
  unit('temperature', '°C', 1, ['C', 'degC', 'deg C'], u.ZERO_CELSIUS),
  unit('temperature', 'K', 1, ['kelvin']),
  unit('temperature', '°F', fahrenheitFactor, ['F', 'degF', 'deg F'], u.kelvinFromFahrenheit(0)),
  unit('time', 'ms', u.ms),
  unit('time', 's', 1),
  unit('torque', 'N m', 1, ['Nm', 'N·m']),
  unit('torque', 'lb ft', u.poundFoot, ['lbf ft', 'ft lb', 'ft lbf', 'lb·ft']),
  unit('power', 'W', 1, ['watt', 'watts']),
  unit('power', 'kW', u.kW),
  unit('power', 'hp', u.hp, ['bhp']),
  unit('power', 'PS', u.hpMetric, ['metric hp', 'cv']),
  unit('power', 'Btu/min', u.btu / u.minute),
  unit('mass', 'g', u.gram),
  unit('mass', 'kg', 1),
  unit('mass', 'lb', u.pound),
  unit('mass', 'oz', u.ounce),
  unit('inertia', 'kg cm²', u.kgcm2, ['kgcm2', 'kg cm2', 'kg cm^2']),
  unit('inertia', 'kg m²', 1, ['kgm2', 'kg m2', 'kg m^2']),
  unit('inertia', 'lb in²', u.pound * u.in2, ['lb in2', 'lb in^2']),
  unit('force', 'N', 1),
  unit('force', 'lbf', u.poundForce),
  unit('mass flow', 'g/s', u.gram),
  unit('mass flow', 'kg/s', 1),
  unit('mass flow', 'kg/h', 1 / u.hour),
  unit('mass flow', 'lb/min', u.pound / u.minute),
  unit('volume flow', 'l/h', u.litre / u.hour, ['L/h']),
  unit('volume flow', 'US gal/h', u.gallonUS / u.hour, ['gph']),
  unit('consumption', 'g/kWh', u.gramPerKWh, ['g/(kW h)', 'g/kW h']),
  unit('consumption', 'lb/(hp h)', u.poundPerHpHour, ['lb/hp h', 'lb/hph']),
  unit('ratio', '', 1, [':1']),
  unit('ratio', '%', u.percent, ['percent', 'per cent']),
  unit('radiation', 'W/(m² K⁴)', 1),
  unit('velocity per temperature', 'm/(s K)', 1),
  unit('conductivity', 'W/(m K)', 1),
  unit('film coefficient', 'W/(m² K)', 1),
  unit('friction per piston speed', 'bar s/m', u.bar),
  unit('friction per speed squared', 'Pa/rpm²', 1 / u.rpm ** 2),
];

const bySymbol = (symbol: string): Unit => {
  const found = UNITS.find((each) => each.symbol === symbol);
  if (!found) throw new Error(`no unit ${symbol}`);
  return found;
};

/** The same unit, worn with a remark: `° BTDC`, `bar above ambient`. */
const as = (symbol: string, shown: string, dimension?: Dimension): Unit => {
  const base = bySymbol(symbol);
  return { ...base, symbol: shown, dimension: dimension ?? base.dimension };
};

/** The units that a key of a design file may wear: `bore_mm` is in `mm`. A key without one is a plain ratio, count or text. */
export const UNIT_OF_SUFFIX = {
  mm: bySymbol('mm'),
  m: bySymbol('m'),
  um: bySymbol('µm'),
  mm2: bySymbol('mm²'),
  cm2: bySymbol('cm²'),
  cc: bySymbol('cc'),
  deg: bySymbol('°'),
  degBTDC: as('°', '° BTDC'),
  degATDC: as('°', '° ATDC'),
  rpm: bySymbol('rpm'),
  m_per_s: bySymbol('m/s'),
  bar: bySymbol('bar'),
  kPa: bySymbol('kPa'),
  barGauge: as('bar', 'bar above ambient', 'gauge pressure'),
  C: bySymbol('°C'),
  K: bySymbol('K'),
  ms: bySymbol('ms'),
  N_m: bySymbol('N m'),
  g: bySymbol('g'),
  kg_cm2: bySymbol('kg cm²'),
  W_per_m2K4: bySymbol('W/(m² K⁴)'),
  m_per_sK: bySymbol('m/(s K)'),
  W_per_mK: bySymbol('W/(m K)'),
  W_per_m2K: bySymbol('W/(m² K)'),
  bar_s_per_m: bySymbol('bar s/m'),
  Pa_per_rpm2: bySymbol('Pa/rpm²'),
} as const satisfies Record<string, Unit>;

export type Suffix = keyof typeof UNIT_OF_SUFFIX;
export const PLAIN: Unit = bySymbol('');

/** Take a key apart: `entryArea_mm2` is `entryArea` in mm². A plain key has the unit 1. */
export function splitKey(key: string): { name: string; suffix: Suffix | null; unit: Unit } {
  const at = key.indexOf('_');
  const suffix = key.slice(at + 1);
  if (at > 0 && Object.hasOwn(UNIT_OF_SUFFIX, suffix)) {
    return { name: key.slice(0, at), suffix: suffix as Suffix, unit: UNIT_OF_SUFFIX[suffix as Suffix] };
  }
  return { name: key, suffix: null, unit: PLAIN };
}

export const toSi = (value: number, { factor, offset }: Unit): number => value * factor + offset;
export const fromSi = (value: number, { factor, offset }: Unit): number => (value - offset) / factor;
