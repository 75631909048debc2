import { figure, whole } from '../../../charts/format.ts';
import type { Fix, FixFigures } from '../../../sim/study/match/fix.ts';
import { knobNamed } from '../../../sim/study/match/knobs.ts';
import type { KnobName } from '../../../sim/study/match/knobs.ts';
import type { RangeFix } from '../../../sim/study/match/match-range.ts';
import type { Target } from '../../../sim/study/match/target.ts';
import { rpm } from '../../../sim/units.ts';
import type { ShownUnits } from '../../units/shown-units.ts';

/** What is varied, in words. */
export const FIX_NAMES: Readonly<Record<KnobName, string>> = {
  'blower.driveRatio': 'Drive the blower faster or slower',
  'blower.displacement': 'Longer or shorter rotors',
  'blower.count': 'More or fewer blowers',
  'blower.gaps': 'Other clearances',
  'fuel.carburettor.bore': 'Another throttle bore',
  'windows.transfer': 'Move the transfer windows’ top edges',
  'windows.exhaust': 'Move the exhaust windows’ top edges',
  'plenum.volume': 'Another plenum',
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
  `${value > 0 ? '+' : value < 0 ? '−' : '±'}${text.replace('−', '')}`;

/** What a fix costs at the speed it was solved for, beside the design as it is. */
export function fixCosts(fix: Fix, before: FixFigures, units: ShownUnits): readonly Cost[] {
  const { figures: after, beyond } = fix;
  const change = (pick: (each: FixFigures) => number, write: (value: number) => string) => {
    const by = pick(after) - pick(before);
    return signed(by, write(Math.abs(by)));
  };
  const power = (value: number) => units.text('power', value);
  const unit = units.unit('temperature');
  const warmer = (value: number) => `${figure(value / unit.factor, 2)} ${unit.symbol.replace('°', '°')}`;
  const turns = (value: number) => `${whole(value / rpm)} rpm`;
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
      text: turns(after.rotorSpeed),
      change: change((each) => each.rotorSpeed, turns),
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
    return `With it there is no answer at ${unsolved.map((speed) => whole(speed / rpm)).join(', ')} rpm.`;
  const where = `at ${whole(least.speed / rpm)} rpm`;
  if (fix.reached)
    return `${fixValue(fix, fix.to, units)} does it at one speed, but leaves ${shown(least.figure)} ${where}.`;
  const nearest =
    fix.to === fix.from
      ? `It stays at ${shown(fix.figures.figure)} ${where}`
      : `Nearest is ${shown(fix.figures.figure)} ${where}, with ${fixValue(fix, fix.to, units)}`;
  return `${nearest}: ${fix.reason ?? 'it goes no further'}.`;
}
