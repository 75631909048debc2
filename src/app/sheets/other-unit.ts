import type { Field } from '../../design/fields.ts';
import { formatQuantity, unitNamed } from '../../design/format-quantity.ts';
import { parseQuantity } from '../../design/parse-quantity.ts';
import { toSi } from '../../design/unit-table.ts';
import type { Dimension, Unit } from '../../design/unit-table.ts';

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
 * The value of a field in another unit than the one it was typed in: in the field's own where it was typed in another,
 * else in that of other workshops; empty where there is none.
 */
export function inOtherUnit(field: Field, value: number, typed: string | null): string {
  const si = toSi(value, field.unit);
  const read = typed === null ? null : parseQuantity(typed, field.unit);
  if (
    read?.ok &&
    (read.value.unit.factor !== field.unit.factor || read.value.unit.offset !== field.unit.offset)
  )
    return formatQuantity(si, field.unit, 6);
  const other = OTHER[field.unit.dimension];
  return other ? formatQuantity(si, other) : '';
}

/** Whether a text brings a unit of its own along, so that the field's need not stand beside it. */
export const wearsUnit = (text: string): boolean => /[a-z%°"″²³]\s*$/i.test(text.trim());
