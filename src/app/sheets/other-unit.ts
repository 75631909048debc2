import type { Field } from '../../design/fields.ts';
import { formatQuantity, unitNamed } from '../../design/format-quantity.ts';
import { parseQuantity } from '../../design/parse-quantity.ts';
import { toSi } from '../../design/unit-table.ts';
import type { Dimension, Unit } from '../../design/unit-table.ts';
import type { ShownUnits } from '../units/shown-units.ts';

/** What readers in other workshops measure in. */
const OTHER: Partial<Record<Dimension, Unit>> = {
  length: unitNamed('in'),
  area: unitNamed('in²'),
  volume: unitNamed('in³'),
  speed: unitNamed('km/h'),
  pressure: unitNamed('psi'),
  'gauge pressure': unitNamed('psi'),
  temperature: unitNamed('°F'),
};

/**
 * The value of a field in another unit than the one it was typed in: in the reader's, else in the field's own, else in
 * that of other workshops; empty where there is none.
 */
export function inOtherUnit(field: Field, value: number, typed: string | null, units: ShownUnits): string {
  const si = toSi(value, field.unit);
  const read = typed === null ? null : parseQuantity(typed, field.unit);
  const meant = read?.ok ? read.value.unit : field.unit;
  const others = [units.ofField(field.unit), field.unit, OTHER[field.unit.dimension]];
  const other = others.find((unit) => unit && (unit.factor !== meant.factor || unit.offset !== meant.offset));
  if (!other) return '';
  return other === field.unit
    ? formatQuantity(si, other, 6)
    : formatQuantity(si, { ...other, symbol: other.symbol.replace(' above ambient', '') });
}

/** Whether a text brings a unit of its own along, so that the field's need not stand beside it. */
export const wearsUnit = (text: string): boolean => /[a-z%°"″²³]\s*$/i.test(text.trim());
