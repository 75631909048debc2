import { figure } from '../../../charts/format.ts';
import { MEANS_BY_NAME } from '../../../sim/study/even/means.ts';
import type { MeansName, ShopItem } from '../../../sim/study/even/means.ts';
import { deg } from '../../../sim/units.ts';
import type { ShownUnits } from '../../units/shown-units.ts';

/** Decimals of what is made: hundredths of a millimetre, of a degree, of a cubic centimetre; thousandths of an inch. */
const decimals = (unit: string): number => (unit === 'in' ? 4 : unit === 'in³' ? 4 : 2);

/** A value as it stands on a shop list; with a sign where it is a change. */
export function meansText(means: MeansName, value: number, units: ShownUnits, signed = false): string {
  const { what } = MEANS_BY_NAME[means];
  const [number, unit] =
    what === 'angle' ? [value / deg, '°'] : [units.number(what, value), units.symbol(what)];
  if (!Number.isFinite(number)) return figure(NaN);
  const text = Math.abs(number).toFixed(decimals(unit));
  const sign = number < 0 && Number(text) !== 0 ? '−' : signed && number > 0 ? '+' : '';
  return `${sign}${text}${unit === '°' ? '' : '\u00a0'}${unit}`;
}

/** A change, and what it comes to where that says more. */
export const changesText = ({ means, from, to }: ShopItem, units: ShownUnits): string => {
  const change = meansText(means, to - from, units, true);
  return from === 0 ? change : `${change} → ${meansText(means, to, units)}`;
};
