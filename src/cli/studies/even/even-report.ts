import { cylinderNames, shopChanges } from '../../../design/even-changes.ts';
import type { Design } from '../../../design/schema/design.ts';
import { AIMED_FIGURES } from '../../../sim/study/even/aims.ts';
import type { EvenedOut } from '../../../sim/study/even/even-out.ts';
import type { Evenness } from '../../../sim/study/even/evenness.ts';
import { hottestOf } from '../../../sim/study/even/hottest.ts';
import { hottestSentence } from '../../../sim/study/even/hottest-sentence.ts';
import { MEANS_BY_NAME } from '../../../sim/study/even/means.ts';
import type { MeansName, ShopItem } from '../../../sim/study/even/means.ts';
import { FIGURE_NAMES, MEANS_NAMES } from '../../../sim/study/even/names.ts';
import { SHARE_FIGURES } from '../../../sim/study/even/share-figures.ts';
import type { ShareFigure } from '../../../sim/study/even/share-figures.ts';
import { spreadOf } from '../../../sim/study/even/spread.ts';
import { cc, deg, mm, percent, rpm } from '../../../sim/units.ts';
import { CAUTION } from '../../reports.ts';
import { table } from '../../table.ts';
import { differenceText, figureText, fixed, unitOf } from './figure-text.ts';

const heading = (figure: ShareFigure): string => {
  const { name, kind } = FIGURE_NAMES[figure];
  const unit = unitOf(kind);
  return unit === '' ? name : `${name}, ${unit}`;
};

/** How unequal the cylinders are, why, and what would even them out. */
export function evenReport(design: Design, found: Evenness, evened: EvenedOut): string {
  const names = cylinderNames(design);
  const { answer, reason } = hottestSentence(hottestOf(found), names);
  return [
    answer,
    ...(reason === '' ? [] : [reason]),
    '',
    `${design.name}, ${Math.round(found.speed / rpm)} rpm: cylinder by cylinder`,
    ...figuresTable(found, names),
    '',
    'Where the differences come from: the range between cylinders, and by how much it falls with one cause switched off',
    originsTable(found),
    '',
    ...shopReport(design, evened),
    '',
    CAUTION,
    '',
  ].join('\n');
}

/** Cylinders across, figures down: names of figures are longer than any number. */
function figuresTable({ cylinders, spreads }: Evenness, names: readonly string[]): string[] {
  const centre = (name: string, of: (each: (typeof cylinders)[number]) => number) => [
    name,
    ...cylinders.map((each) => fixed(of(each) / deg, 2)),
  ];
  const rows = SHARE_FIGURES.map((figure) => {
    const { kind } = FIGURE_NAMES[figure];
    const { mean, range, deviation } = spreads[figure];
    const relative =
      kind === 'angle' || kind === 'temperature' ? '' : `${fixed(range / mean / percent, 1)} %`;
    return [
      heading(figure),
      ...cylinders.map((each) => figureText(kind, each[figure])),
      differenceText(kind, range),
      relative,
      differenceText(kind, deviation),
    ];
  });
  return [
    table(
      ['', ...names, 'range', 'of mean', 'deviation'],
      [
        centre('top dead centre, °', (each) => each.tdc),
        centre('bottom dead centre, °', (each) => each.bdc),
        ...rows,
      ],
    ),
  ];
}

function originsTable({ origins, without }: Evenness): string {
  if (!origins) {
    const reasons = Object.values(without).flatMap(({ reason }) => (reason === null ? [] : [reason]));
    return `no answer: ${[...new Set(reasons)].join('; ')}`;
  }
  const rows = SHARE_FIGURES.map((figure) => {
    const { kind } = FIGURE_NAMES[figure];
    const { total, by, left, interplay } = origins[figure];
    return [
      heading(figure),
      ...[total, by.rods, by.pulses, by.trims, interplay, left].map((each) => differenceText(kind, each)),
    ];
  });
  return table(['', 'range', 'rods', 'pulses', 'trims', 'interplay', 'left'], rows);
}

const UNITS: Readonly<
  Record<(typeof MEANS_BY_NAME)[MeansName]['what'], readonly [unit: string, size: number]>
> = {
  length: [' mm', mm],
  angle: ['°', deg],
  volume: [' cc', cc],
};

/** A value of a means as it stands on a shop list; with a sign where it is a change. */
function meansText(means: MeansName, value: number, signed = false): string {
  const [unit, size] = UNITS[MEANS_BY_NAME[means].what];
  const text = fixed(value / size, 2);
  return `${signed && value > 0 ? '+' : ''}${text}${unit}`;
}

function shopReport(design: Design, evened: EvenedOut): string[] {
  const { items, reached, atLimit, means, deck } = evened;
  const names = cylinderNames(design);
  const used = means.map(({ name }) => name);
  const spreads = spreadTable(evened);
  if (items.length === 0) {
    return [
      reached
        ? 'Even it out: nothing is to be done, the cylinders are as alike as asked.'
        : `Even it out: no change of ${used.map((name) => MEANS_NAMES[name]).join(', ')} makes them more alike.`,
      spreads,
    ];
  }
  const item = (cylinder: number, name: MeansName): ShopItem | undefined =>
    items.find((each) => each.cylinder === cylinder && each.means === name);
  const rows = names.map((name, j) => [
    name,
    ...used.map((each) => {
      const found = item(j, each);
      if (!found) return '·';
      const change = meansText(each, found.to - found.from, true);
      return found.from === 0 ? change : `${change} → ${meansText(each, found.to)}`;
    }),
    fixed(deck[j]! / mm, 2),
  ]);
  return [
    reached
      ? 'Even it out: shop list, changes (→ what it then is), checked by a full cycle'
      : 'Even it out, as far as it goes: shop list, changes (→ what it then is), checked by a full cycle',
    table(['', ...used.map((name) => MEANS_NAMES[name]), 'crown below deck, mm'], rows),
    'Barrel spacer: + raises the barrel. Edges: + moves the top edge away from the deck (the window opens later), − towards it. Head: + adds volume.',
    ...(atLimit.length === 0
      ? []
      : [
          `At the end of the way that was allowed: ${atLimit.map((each) => `${names[each.cylinder]!} ${MEANS_NAMES[each.means]}`).join(', ')}.`,
        ]),
    '',
    spreads,
    '',
    `  ${shopChanges(design, items)
      .map(({ path, text }) => `--set ${path}=${text}`)
      .join(' ')}`,
  ];
}

function spreadTable({ before, after, aims }: EvenedOut): string {
  const figures: readonly ShareFigure[] = [...AIMED_FIGURES.map(({ figure }) => figure), 'imep', 'wallHeat'];
  const rows = figures.map((figure) => {
    const { kind } = FIGURE_NAMES[figure];
    const shown = (cylinders: EvenedOut['before']) => {
      const { mean, range } = spreadOf(cylinders.map((each) => each[figure]));
      return kind === 'angle' ? `${differenceText(kind, range)}°` : `${fixed(range / mean / percent, 2)} %`;
    };
    const aimed = AIMED_FIGURES.find((each) => each.figure === figure);
    const aim = aimed && aims[aimed.aim];
    const asked =
      aim && aim.weight > 0
        ? aimed.relative
          ? `${fixed(aim.tolerance / percent, 2)} %`
          : `${fixed(aim.tolerance / deg, 2)}°`
        : 'not asked';
    return [FIGURE_NAMES[figure].name, shown(before), shown(after), asked];
  });
  return table(['range between cylinders', 'before', 'after', 'asked'], rows);
}
