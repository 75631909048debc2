import { figure } from '../../../charts/format.ts';
import { withUnit } from '../../../charts/with-unit.ts';
import { FIGURE_NAMES } from '../../../sim/study/even/names.ts';
import type { Kind } from '../../../sim/study/even/names.ts';
import type { ShareFigure } from '../../../sim/study/even/share-figures.ts';
import { cm2, deg, milligram, percent } from '../../../sim/units.ts';
import type { Measure, ShownUnits } from '../../units/shown-units.ts';

/** Kinds that readers take in units of their own, and those that are alike for all. */
const MEASURES: Partial<Readonly<Record<Kind, Measure>>> = {
  length: 'length',
  pressure: 'pressure',
  temperature: 'temperature',
  heat: 'heat',
};
const COMMON: Partial<Readonly<Record<Kind, readonly [unit: string, size: number]>>> = {
  angle: ['°', deg],
  ratio: ['', 1],
  share: ['%', percent],
  'time-area': ['s cm²/m³', cm2],
  mass: ['mg', milligram],
};

export function figureUnit(figureName: ShareFigure, units: ShownUnits): string {
  const { kind } = FIGURE_NAMES[figureName];
  const measure = MEASURES[kind];
  return measure ? units.symbol(measure) : COMMON[kind]![0];
}

/** A value in the unit that is shown. */
export function figureNumber(figureName: ShareFigure, value: number, units: ShownUnits): number {
  const { kind } = FIGURE_NAMES[figureName];
  const measure = MEASURES[kind];
  return measure ? units.number(measure, value) : value / COMMON[kind]![1];
}

/** A difference of two: a temperature's has no zero to take off. */
export const figureDifference = (figureName: ShareFigure, value: number, units: ShownUnits): number =>
  figureNumber(figureName, value, units) - figureNumber(figureName, 0, units);

export const figureHeading = (figureName: ShareFigure, units: ShownUnits): string =>
  withUnit(FIGURE_NAMES[figureName].name, figureUnit(figureName, units));

/** A range as a share of its mean, or in its own unit where the mean means nothing. */
export function rangeText(figureName: ShareFigure, range: number, mean: number, units: ShownUnits): string {
  const { kind } = FIGURE_NAMES[figureName];
  return kind === 'angle' || kind === 'temperature'
    ? `${figure(figureDifference(figureName, range, units), 3)}\u00a0${figureUnit(figureName, units)}`.replace(
        '\u00a0°',
        '°',
      )
    : `${figure(range / mean / percent, 2)}\u202f%`;
}
