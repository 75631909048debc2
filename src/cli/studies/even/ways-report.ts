import { cylinderNames } from '../../../design/even-changes.ts';
import type { Design } from '../../../design/schema/design.ts';
import { MEASURES, outdone, rank } from '../../../sim/study/even/ranking.ts';
import type { Alternatives } from '../../../sim/study/even/alternatives.ts';
import type { Measure } from '../../../sim/study/even/ranking.ts';
import { MEASURE_NAMES, wayName } from '../../../sim/study/even/names.ts';
import { tradeOffs } from '../../../sim/study/even/trade-offs.ts';
import type { Reach } from '../../../sim/study/even/reach.ts';
import { deg, kW, percent, rpm } from '../../../sim/units.ts';
import { CAUTION } from '../../reports.ts';
import { table } from '../../table.ts';
import { fixed } from './figure-text.ts';

const SHOWN: Readonly<Record<Measure, (value: number) => string>> = {
  largestGap: (value) => `${fixed(value / deg, 1)}°`,
  torqueRipple: (value) => fixed(value, 3),
  chargeSpread: (value) => `${fixed(value / percent, 2)} %`,
  worstBackflow: (value) => `${fixed(value * 1e6, 2)} mg`,
  pinImbalance: (value) => fixed(value, 2),
  hiddenBarrels: (value) => fixed(value, 2),
};

const HEADINGS: Readonly<Record<Measure, string>> = {
  largestGap: 'gap',
  torqueRipple: 'ripple',
  chargeSpread: 'charge',
  worstBackflow: 'reverse',
  pinImbalance: 'pins',
  hiddenBarrels: 'barrels',
};

/** What other ways would bring, and cost. */
function tradeText({ ways }: Alternatives): string[] {
  const built = ways.find(({ altered }) => altered === 'nothing')?.measures;
  if (!built) return [];
  return tradeOffs(ways).map(({ way, better, worse }) => {
    const said = (measures: readonly Measure[]) =>
      measures
        .map(
          (each) =>
            `${MEASURE_NAMES[each]} ${SHOWN[each](way.measures![each])} instead of ${SHOWN[each](built[each])}`,
        )
        .join(', ');
    const cost = worse.length === 0 ? 'at no cost in the other measures' : `but: ${said(worse)}`;
    return `${wayName(way)}. Better: ${said(better)}; ${cost}.`;
  });
}

/** Ways to put the engine together, best first by one measure. */
export function waysReport(design: Design, found: Alternatives, by: Measure): string {
  const { speed, evenGap, ways, phaseSilence } = found;
  const ranked = rank(ways, by);
  const better = outdone(ways);
  const name = (key: string) => wayName(ways.find((each) => each.key === key)!);
  const rows = ranked.map((way, i) => [
    `${i + 1}. ${wayName(way)}`,
    ...MEASURES.map((measure) => SHOWN[measure](way.measures![measure])),
    fixed(way.measures!.brakePower / kW, 2),
    better.has(way.key) ? `outdone by: ${name(better.get(way.key)!)}` : '',
  ]);
  const trade = tradeText(found);
  const failed = ways.filter((way) => way.measures === null);
  return [
    `${design.name}, ${Math.round(speed / rpm)} rpm: ways to put it together, one thing altered at a time, by ${MEASURE_NAMES[by]}.`,
    `Even firing would be ${fixed(evenGap / deg, 1)}° apart. In every measure less is better.`,
    '',
    table(['', ...MEASURES.map((measure) => HEADINGS[measure]), 'brake, kW', ''], rows),
    ...failed.map((way) => `${wayName(way)}: no answer: ${way.reason!}`),
    ...(phaseSilence === 'no ripple'
      ? ['Rotor phases are left out: the twist of the rotors evens their ripple.']
      : phaseSilence === 'averaged'
        ? [
            'Rotor phases are left out: with these teeth rotors and crank repeat so rarely that the phase is averaged.',
          ]
        : []),
    '',
    'gap: largest between firings; ripple: highest less lowest torque of gas and blower over its mean, no inertia; charge: range of trapped',
    'masses; reverse: most that runs back through the windows of a cylinder in a turn; pins: 0 where the rotating forces of the rows',
    'cancel, 1 where they add; barrels: 0 in each other’s gaps, 1 behind each other.',
    ...(trade.length === 0 ? [] : ['', 'What other rows would bring, and cost:', ...trade]),
    CAUTION,
    '',
  ].join('\n');
}

/** Whose exhaust reaches whom. */
export function reachReport(design: Design, { speed, from }: Reach): string {
  const names = cylinderNames(design);
  const matrix = (of: 'trappedMass' | 'purity') =>
    table(
      ['blowdown of', ...names],
      from.map((each, k) => [
        names[k]!,
        ...(each
          ? each[of].map((value, i) => (i === k ? '·' : fixed(value / percent, 2)))
          : names.map(() => '?')),
      ]),
    );
  return [
    `${design.name}, ${Math.round(speed / rpm)} rpm: what the blowdown of one cylinder does to the others`,
    '',
    'Trapped mass, % of it: − takes charge away, + keeps charge in',
    matrix('trappedMass'),
    '',
    'Purity, in percent of the charge',
    matrix('purity'),
    '',
    CAUTION,
    '',
  ].join('\n');
}
