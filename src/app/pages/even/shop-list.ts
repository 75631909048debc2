import type { TableColumn } from '../../../charts/chart-types.ts';
import { figure } from '../../../charts/format.ts';
import { AIMED_FIGURES } from '../../../sim/study/even/aims.ts';
import type { EvenedOut } from '../../../sim/study/even/even-out.ts';
import { FIGURE_NAMES, MEANS_NAMES } from '../../../sim/study/even/names.ts';
import type { ShareFigure } from '../../../sim/study/even/share-figures.ts';
import { spreadOf } from '../../../sim/study/even/spread.ts';
import { deg, percent } from '../../../sim/units.ts';
import type { ShownUnits } from '../../units/shown-units.ts';
import { capital } from '../words.ts';
import { changesText, meansText } from './shop-text.ts';
import { rangeText } from './share-units.ts';

/** What is to be done to each cylinder, and how far its crown then stays below the deck. */
export function shopColumns(
  { means, items, deck }: EvenedOut,
  labels: readonly string[],
  units: ShownUnits,
): TableColumn[] {
  return [
    { heading: 'cylinder', values: labels },
    ...means.map(({ name }) => ({
      heading: MEANS_NAMES[name],
      values: labels.map((_, j) => {
        const item = items.find((each) => each.cylinder === j && each.means === name);
        return item ? changesText(item, units) : 'as it is';
      }),
    })),
    {
      heading: units.heading('crown below deck', 'length'),
      values: deck.map((each) => figure(units.number('length', each), 3)),
    },
  ];
}

/** Largest less least of a figure. */
export function spreadText(
  found: EvenedOut,
  of: ShareFigure,
  when: 'before' | 'after',
  units: ShownUnits,
): string {
  const { range, mean } = spreadOf(found[when].map((each) => each[of]));
  return rangeText(of, range, mean, units);
}

const SHOWN: readonly ShareFigure[] = [...AIMED_FIGURES.map((each) => each.figure), 'imep', 'wallHeat'];

/** What is asked of a figure: the tolerance within which it counts as alike. */
function askedText({ aims }: EvenedOut, of: ShareFigure): string {
  const aimed = AIMED_FIGURES.find((each) => each.figure === of);
  if (!aimed || aims[aimed.aim].weight === 0) return 'not asked';
  const { tolerance } = aims[aimed.aim];
  return aimed.relative ? `${figure(tolerance / percent, 2)}\u202f%` : `${figure(tolerance / deg, 2)}°`;
}

export function beforeAndAfter(found: EvenedOut, units: ShownUnits): TableColumn[] {
  return [
    { heading: 'figure', values: SHOWN.map((each) => capital(FIGURE_NAMES[each].name)) },
    { heading: 'before', values: SHOWN.map((each) => spreadText(found, each, 'before', units)) },
    { heading: 'after', values: SHOWN.map((each) => spreadText(found, each, 'after', units)) },
    { heading: 'asked', values: SHOWN.map((each) => askedText(found, each)) },
  ];
}

/** Changes that stop at the end of their way; empty where none does. */
export const atLimitText = ({ atLimit }: EvenedOut, labels: readonly string[], units: ShownUnits): string =>
  atLimit
    .map(
      ({ cylinder, means, from, to }) =>
        `${labels[cylinder]!} ${MEANS_NAMES[means]}, ${meansText(means, to - from, units, true)}`,
    )
    .join('; ');
