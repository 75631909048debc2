import { showValue } from '../../design/fields.ts';
import { formatQuantity } from '../../design/format-quantity.ts';
import { toSi } from '../../design/unit-table.ts';
import type { Unit } from '../../design/unit-table.ts';
import type { ShownUnits } from '../units/shown-units.ts';
import { designValue } from './draft.ts';
import { sheetOf } from './sheet-sections.ts';
import type { Design } from '../../design/schema/design.ts';

/** What a part is known by in the list of parts: its first measure or kind, of the first item where there are several. */
export function keyFigure(part: string, design: Design, units: ShownUnits): string {
  const sections = sheetOf(part, design).main.filter(({ byCylinder }) => !byCylinder);
  for (const { field, cells } of sections.flatMap(({ rows }) => rows)) {
    const value = cells[0] && designValue(design, cells[0].path);
    if (field.key === 'kind' && typeof value === 'string') return value;
    if (typeof value === 'number' && field.kind === 'number')
      return `${shortened(field.label)} ${inReadersUnit(value, field.unit, units)}`;
  }
  return '';
}

export function inReadersUnit(value: number, own: Unit, units: ShownUnits): string {
  const unit = units.ofField(own);
  return unit === own ? showValue(value, own) : formatQuantity(toSi(value, own), unit);
}

/** `Stroke of the master piston` is a stroke. */
const shortened = (label: string): string => {
  const short = label.replace(/ (of|at|below|wanted)\b.*$/, '');
  return short.charAt(0).toLowerCase() + short.slice(1);
};
