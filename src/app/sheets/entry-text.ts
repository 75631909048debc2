import { formatNumber } from '../../design/format-quantity.ts';
import { designValue, textAt } from './draft.ts';
import type { Draft } from './draft.ts';

/** What stands in an entry: the typed text, or the value of the design as it would be typed. */
export function entryText(draft: Draft, path: string): string {
  const typed = textAt(draft, path);
  if (typed !== null) return typed;
  const value = designValue(draft.design, path);
  if (typeof value === 'number') return formatNumber(value, 9);
  if (Array.isArray(value)) return value.map((each) => formatNumber(Number(each), 9)).join('; ');
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return value === undefined || value === null ? '' : String(value as string);
}
