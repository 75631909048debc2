import { fixChanges } from '../../design/fix-changes.ts';
import type { Design } from '../../design/schema/design.ts';
import type { Model } from '../../sim/index.ts';
import { knobNamed } from '../../sim/study/match/knobs.ts';
import type { KnobName } from '../../sim/study/match/knobs.ts';
import type { Fix, FixFigures } from '../../sim/study/match/fix.ts';
import type { Match } from '../../sim/study/match/match.ts';
import type { RangeFix } from '../../sim/study/match/match-range.ts';
import type { Target } from '../../sim/study/match/target.ts';
import { bar, cc, celsiusFromKelvin, kW, mm, rpm } from '../../sim/units.ts';
import { CAUTION } from '../reports.ts';

/** What is varied, in words. */
const NAMES: Readonly<Record<KnobName, string>> = {
  'blower.driveRatio': 'drive ratio',
  'blower.displacement': 'displacement of a blower',
  'blower.count': 'number of blowers',
  'blower.gaps': 'tip gap, the others in proportion',
  'fuel.carburettor.bore': 'throttle bore',
  'windows.transfer': 'transfer windows',
  'windows.exhaust': 'exhaust windows',
  'plenum.volume': 'plenum',
};

const fixed = (value: number, digits: number): string => value.toFixed(digits).replace('-', '−');

/** What would close the gap, in words: every fix with its cost, or why there is none. */
export function matchReport(design: Design, model: Model, found: Match): string {
  const { target, point, before } = found;
  const at = `${Math.round(point.speed / rpm)} rpm`;
  const figure = figureText(target, model);
  const head = found.met
    ? `${design.name} reaches ${target.figure} ${figure(target.value)} at ${at} already: it has ${figure(before.figure)}. What would bring it just there:`
    : `${design.name} has ${target.figure} ${figure(before.figure)} at ${at}; ${figure(target.value)} is asked for. What would close the gap, each by itself:`;
  return [
    head,
    '',
    ...found.fixes.flatMap((fix) => fixText(design, model, found, fix)),
    `As it is: ${costs(before)}.`,
    '',
    CAUTION,
    '',
  ].join('\n');
}

function fixText(
  design: Design,
  model: Model,
  { target, before }: Pick<Match, 'target' | 'before'>,
  fix: Fix,
): string[] {
  const figure = figureText(target, model);
  const value = (number: number) => valueText(fix, number);
  const name = NAMES[fix.vary];
  if (!fix.reached) {
    return [
      `✗ ${name}: not within reach. Nearest ${value(fix.to)}: ${figure(fix.figures.figure)}. ${fix.reason}.`,
      '',
    ];
  }
  const teeth = fix.gears
    ? `, ${fix.gears.map((gear) => `${gear.driverTeeth} : ${gear.drivenTeeth}`).join(' × ')} teeth${fix.sameCentres ? ' on the same centres' : ''}`
    : '';
  const beyond = fix.beyond.length > 0 ? ` Passes the stated limit of ${fix.beyond.join(' and ')}.` : '';
  const set = fixChanges(design, model, fix)
    .map(({ path, text }) => `--set ${path}=${text}`)
    .join(' ');
  return [
    `✓ ${name}: ${value(fix.from)} → ${value(fix.to)}${teeth}: ${figure(fix.figures.figure)}.${beyond}`,
    `  ${costs(fix.figures, before)}`,
    `  ${set}`,
    '',
  ];
}

function valueText({ vary }: Fix, value: number): string {
  switch (knobNamed(vary).what) {
    case 'ratio':
      return `${fixed(value, 4)} : 1`;
    case 'volume':
      return `${fixed(value / cc, 1)} cc`;
    case 'length':
      return `${fixed(value / mm, 3)} mm`;
    case 'added height':
      return value === 0
        ? 'as they are'
        : `edges ${fixed(Math.abs(value) / mm, 2)} mm ${value > 0 ? 'up' : 'down'}`;
    case 'count':
      return String(value);
  }
}

const figureText =
  ({ figure }: Target, { engine }: Model) =>
  (value: number): string =>
    figure === 'plenumPressure'
      ? `${fixed((value - engine.ambient.pressure) / bar, 4)} bar above ambient`
      : fixed(value, 4);

function costs(after: FixFigures, before?: FixFigures): string {
  const change = (now: number, then: number | undefined, digits: number, unit: string) =>
    then === undefined
      ? `${fixed(now, digits)} ${unit}`
      : `${fixed(now, digits)} ${unit} (${now >= then ? '+' : '−'}${Math.abs(now - then).toFixed(digits)})`;
  return [
    `brake ${change(after.brakePower / kW, before && before.brakePower / kW, 2, 'kW')}`,
    `blower ${change(after.blowerPower / kW, before && before.blowerPower / kW, 3, 'kW')}`,
    `charge ${change(celsiusFromKelvin(after.chargeTemperature), before && celsiusFromKelvin(before.chargeTemperature), 0, '°C')}`,
    `rotors ${change(after.rotorSpeed / rpm, before && before.rotorSpeed / rpm, 0, 'rpm')}`,
    `tips ${change(after.tipSpeed, before?.tipSpeed, 1, 'm/s')}`,
  ].join(', ');
}

/** What would close the gap at every speed of a range, in words. */
export function rangeReport(
  design: Design,
  model: Model,
  target: Target,
  speeds: readonly number[],
  found: readonly RangeFix[],
): string {
  const figure = figureText(target, model);
  const turns = (speed: number) => `${Math.round(speed / rpm)} rpm`;
  const span = `${turns(speeds[0]!)} to ${turns(speeds.at(-1)!)}`;
  return [
    `What would give ${design.name} ${target.figure} ${figure(target.value)} at every speed from ${span}, each by itself:`,
    '',
    ...found.flatMap(({ fix, solvedAt, before, everywhere, least, unsolved, cost }) => [
      ...fixText(design, model, { target, before }, fix).slice(0, -1),
      `  Solved at ${turns(solvedAt)}. With it ${everywhere ? 'every speed has enough' : 'not every speed has enough'}: least ${figure(least.figure)} at ${turns(least.speed)}.` +
        (unsolved.length > 0 ? ` No answer at ${unsolved.map(turns).join(', ')}.` : ''),
      ...(cost && cost.speed !== solvedAt
        ? [`  At ${turns(cost.speed)}, where it costs most: ${costs(cost.figures, cost.before)}.`]
        : []),
      '',
    ]),
    CAUTION,
    '',
  ].join('\n');
}
