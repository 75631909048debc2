import type { Field } from '../../design/fields.ts';
import type { Design } from '../../design/schema/design.ts';
import { designValue } from '../sheets/draft.ts';
import { inReadersUnit } from '../sheets/key-figure.ts';
import { PARTS, WHOLE, sheetOf } from '../sheets/sheet-sections.ts';
import type { Cell, Section } from '../sheets/sheet-sections.ts';
import type { ShownUnits } from '../units/shown-units.ts';

export interface InputGroup {
  readonly heading: string;
  readonly lines: readonly { readonly label: string; readonly text: string }[];
}
export interface InputPart {
  readonly label: string;
  readonly groups: readonly InputGroup[];
}

/** Every value of a design in words, part by part: what a report must hold so that its figures can be had again. */
export function inputParts(design: Design, units: ShownUnits): InputPart[] {
  return PARTS.filter(({ key }) => key !== WHOLE).map(({ key, label }) => {
    const { main, details } = sheetOf(key, design);
    return {
      label,
      groups: [...main, ...details].map((section) => groupOf(section, design, units)).filter(isTold),
    };
  });
}

const isTold = ({ lines }: InputGroup): boolean => lines.length > 0;

function groupOf(
  { heading, rows, byCylinder, fitted }: Section,
  design: Design,
  units: ShownUnits,
): InputGroup {
  if (fitted === false) return { heading, lines: [{ label: 'fitted', text: 'no' }] };
  const lines = rows.flatMap(({ field, cells }) => {
    const given = byCylinder
      ? cells.filter(({ path }) => (designValue(design, path) ?? null) !== null)
      : cells;
    return given.length === 0
      ? []
      : [{ label: field.label, text: textOf(field, given, byCylinder, design, units) }];
  });
  return { heading, lines };
}

/** One value, or several with their names: `row A: 0°, row B: 180°`; once when all are alike. */
function textOf(
  field: Field,
  cells: readonly Cell[],
  named: boolean,
  design: Design,
  units: ShownUnits,
): string {
  const texts = cells.map(({ path }) => valueText(field, designValue(design, path), units));
  if (texts.length === 1 && !named) return texts[0]!;
  if (!named && texts.every((text) => text === texts[0])) return `${texts[0]}, each`;
  return cells.map(({ name }, i) => `${name}: ${texts[i]!}`).join(', ');
}

function valueText(field: Field, value: unknown, units: ShownUnits): string {
  if (value === null || value === undefined) return field.otherwise ?? 'not given';
  if (typeof value === 'number') return inReadersUnit(value, field.unit, units);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value))
    return value.map((each: number) => inReadersUnit(each, field.unit, units)).join(', ');
  return String(value as string);
}
