import { figure, whole } from '../../../charts/format.ts';
import type { Fix, FixFigures } from '../../../sim/study/match/fix.ts';
import { knobNamed } from '../../../sim/study/match/knobs.ts';
import type { KnobName } from '../../../sim/study/match/knobs.ts';
import type { RangeFix } from '../../../sim/study/match/match-range.ts';
import type { Target } from '../../../sim/study/match/target.ts';
import { rpm } from '../../../sim/units.ts';
import type { ShownUnits } from '../../units/shown-units.ts';
import { speedText } from '../words.ts';

/** What is done, by which way it goes: more of it, less of it. */
const NAMES: Readonly<Record<KnobName, readonly [more: string, less: string]>> = {
  'blower.driveRatio': ['Drive the blower faster', 'Drive the blower slower'],
  'blower.displacement': ['Longer rotors', 'Shorter rotors'],
  'blower.count': ['More blowers', 'Fewer blowers'],
  'blower.gaps': ['Wider clearances', 'Closer clearances'],
  'fuel.carburettor.bore': ['A larger throttle bore', 'A smaller throttle bore'],
  'windows.transfer': ['Raise the transfer windows', 'Lower the transfer windows'],
  'windows.exhaust': ['Raise the exhaust windows', 'Lower the exhaust windows'],
  'plenum.volume': ['A larger plenum', 'A smaller plenum'],
};

export const fixName = ({ vary, from, to }: Pick<Fix, 'vary' | 'from' | 'to'>): string =>
  NAMES[vary][to >= from ? 0 : 1];

/** What is varied, where it is not known which way. */
export const KNOB_NAMES: Readonly<Record<KnobName, string>> = {
  'blower.driveRatio': 'Drive ratio',
  'blower.displacement': 'Length of the rotors',
  'blower.count': 'Number of blowers',
  'blower.gaps': 'Clearances',
  'fuel.carburettor.bore': 'Throttle bore',
  'windows.transfer': 'Top edges of the transfer windows',
  'windows.exhaust': 'Top edges of the exhaust windows',
  'plenum.volume': 'Plenum',
};

/** A value of what is varied, as one would say it in the workshop. */
export function fixValue({ vary }: Pick<Fix, 'vary'>, value: number, units: ShownUnits): string {
  switch (knobNamed(vary).what) {
    case 'ratio':
      return `${figure(value, 4)} : 1`;
    case 'volume':
      return `${units.text('volume', value, 4)}${vary === 'blower.displacement' ? ' a turn' : ''}`;
    case 'length':
      return `${units.text('length', value, 3)}${vary === 'blower.gaps' ? ' at the tips' : ''}`;
    case 'added height':
      return value === 0
        ? 'where they are'
        : `${units.text('length', Math.abs(value), 3)} ${value > 0 ? 'up' : 'down'}`;
    case 'count':
      return String(value);
  }
}

/** Teeth of every stage, where gears are what changes. */
export const teethText = ({ gears, sameCentres }: Fix): string =>
  gears === null
    ? ''
    : `${gears.map(({ driverTeeth, drivenTeeth }) => `${driverTeeth} : ${drivenTeeth}`).join(' × ')} teeth, ` +
      (sameCentres ? 'shafts where they are' : 'other shaft centres');

/** The figure that was asked for, as it was asked for: pressures above ambient. */
export const targetText = (target: Target, value: number, ambient: number, units: ShownUnits): string =>
  target.figure === 'plenumPressure' ? units.both('pressure', value - ambient) : figure(value);

export interface Cost {
  readonly label: string;
  readonly text: string;
  readonly change: string;
  /** Beyond a limit that the design states. */
  readonly beyond: boolean;
}

const signed = (value: number, text: string): string =>
  value === 0 ? 'as now' : `${value > 0 ? '+' : '−'}${text}`;

/** What a fix costs, beside the design as it is. */
export function fixCosts(
  after: FixFigures,
  before: FixFigures,
  beyond: Fix['beyond'],
  units: ShownUnits,
): readonly Cost[] {
  const change = (pick: (each: FixFigures) => number, write: (value: number) => string) => {
    const by = pick(after) - pick(before);
    return signed(by, write(Math.abs(by)));
  };
  const power = (value: number) => units.text('power', value);
  const unit = units.unit('temperature');
  const warmer = (value: number) => `${figure(value / unit.factor, 2)}\u00a0${unit.symbol}`;
  const speed = (value: number) => units.text('speed', value);
  return [
    {
      label: 'blower takes',
      text: power(after.blowerPower),
      change: change((each) => each.blowerPower, power),
      beyond: false,
    },
    {
      label: 'brake power',
      text: power(after.brakePower),
      change: change((each) => each.brakePower, power),
      beyond: false,
    },
    {
      label: 'charge',
      text: units.text('temperature', after.chargeTemperature),
      change: change((each) => each.chargeTemperature, warmer),
      beyond: false,
    },
    {
      label: 'rotors',
      text: speedText(after.rotorSpeed),
      change: change((each) => each.rotorSpeed, speedText),
      beyond: beyond.includes('rotor speed'),
    },
    {
      label: 'rotor tips',
      text: speed(after.tipSpeed),
      change: change((each) => each.tipSpeed, speed),
      beyond: beyond.includes('tip speed'),
    },
  ];
}

/** Whether a fix does at all its speeds what was asked. */
export const fixDoes = ({ fix, everywhere }: RangeFix, oneSpeed: boolean): boolean =>
  fix.reached && (everywhere || oneSpeed);

/** Why it does not, with the nearest value that there is. */
export function fixFailure(
  { fix, least, unsolved }: RangeFix,
  target: Target,
  ambient: number,
  units: ShownUnits,
): string {
  const shown = (value: number) => targetText(target, value, ambient, units);
  if (unsolved.length > 0)
    return `With it there is no answer at ${unsolved.map((speed) => whole(speed / rpm)).join(', ')}\u00a0rpm.`;
  const where = `at ${speedText(least.speed)}`;
  if (fix.reached)
    return `${fixValue(fix, fix.to, units)} does it at one speed, but leaves ${shown(least.figure)} ${where}.`;
  const nearest =
    fix.to === fix.from
      ? `It stays at ${shown(fix.figures.figure)} ${where}`
      : `Nearest is ${shown(fix.figures.figure)} ${where}, with ${fixValue(fix, fix.to, units)}`;
  return `${nearest}: ${fix.reason ?? 'it goes no further'}.`;
}
