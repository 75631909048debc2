import type { FitCheck, FitReport } from '../../../sim/fit/fit-check.ts';
import { fitSentence } from '../../../sim/fit/fit-words.ts';
import type { Phrase } from '../../headline.ts';
import type { ShownUnits } from '../../units/shown-units.ts';

/** A clearance to a hundredth of a millimetre, or the ten-thousandth of an inch that is finer still. */
export const lengthFigure = (units: ShownUnits, value: number): string =>
  units
    .number('length', value)
    .toFixed(units.symbol('length') === 'in' ? 4 : 2)
    .replace('-', '−');
export const lengthText = (units: ShownUnits, value: number): string =>
  `${lengthFigure(units, value)}\u00a0${units.symbol('length')}`;

/** The answer as one reads it, its verdict marked; a part stays with its number. */
export function fitPhrases(report: FitReport, units: ShownUnits): Phrase[] {
  const sentence = fitSentence(report, (value) => lengthText(units, value)).replace(
    / (?=[A-D]?\d)/g,
    '\u00a0',
  );
  const worst = report.checks.some(({ verdict }) => verdict !== 'clear');
  const end = sentence.indexOf(':');
  if (end < 0) return [{ text: sentence, tone: 'plain' }];
  return [
    { text: sentence.slice(0, end), tone: worst ? 'short' : 'enough' },
    { text: sentence.slice(end), tone: 'plain' },
  ];
}

/** A turn from 0 to 360 degrees, the end the same as the beginning. */
export function curveOf({ curve }: Pick<FitCheck, 'curve'>) {
  if (curve === null) return null;
  const n = curve.length;
  return {
    angle_deg: Float64Array.from({ length: n + 1 }, (_, k) => (360 * k) / n),
    clearance: Float64Array.from({ length: n + 1 }, (_, k) => curve[k % n]!),
  };
}
