import { cylinderName, rowLetter } from '../../design/cylinder-name.ts';
import { FIELDS, HOLDERS, fieldAt, holderAt } from '../../design/fields.ts';
import type { Field, Holder } from '../../design/fields.ts';
import type { Design } from '../../design/schema/design.ts';
import { designValue } from './draft.ts';

/** Where one value of a field is typed. */
export interface Cell {
  readonly path: string;
  /** Which of several: `row A`; empty where there is only one. */
  readonly name: string;
}
/** A field with its cells: one, or one for each item of the list that it is in. */
export interface FieldRow {
  readonly field: Field;
  readonly cells: readonly Cell[];
}
/** Fields that stand under one heading. */
export interface Section {
  readonly path: string;
  readonly heading: string;
  readonly help: string;
  readonly rows: readonly FieldRow[];
  /** Names of the items where it is a list, the columns of its table. */
  readonly items: readonly string[] | null;
  readonly list: Holder | null;
  /** May be left off; null where it may not. */
  readonly fitted: boolean | null;
  /** A table of what differs in single cylinders. */
  readonly byCylinder: boolean;
  /** Where its lists make a table: those of its places. */
  readonly table: Holder['table'];
}
export interface Sheet {
  readonly main: readonly Section[];
  readonly details: readonly Section[];
}
export interface PartName {
  readonly key: string;
  readonly label: string;
  readonly help: string;
}

/** The key of the sheet that holds what belongs to no part: name and note. */
export const WHOLE = 'design';

/** Every sheet there is, in the order of the schema. */
export const PARTS: readonly PartName[] = [
  ...HOLDERS.filter(({ path }) => path !== '' && !path.includes('.')).map(({ path, label, help }) => ({
    key: path,
    label,
    help,
  })),
  { key: WHOLE, label: 'Name and note', help: 'What the design is called, and what it is for.' },
];

/** Names of all cylinders, row by row. */
export const cylinderNames = ({ crank }: Design): string[] =>
  crank.rows.flatMap(({ cylinders }, row) =>
    Array.from({ length: cylinders }, (_, i) => cylinderName(row, i)),
  );

const ITEM: Readonly<Record<string, string>> = {
  'crank.rows': 'row',
  'blower.gears': 'stage',
  'blower.secondStage.gears': 'stage',
  'exhaust.collectors': 'collector',
};
export const itemWord = (listPath: string): string => ITEM[listPath] ?? 'group';
const itemName = (listPath: string, index: number): string =>
  `${itemWord(listPath)} ${listPath === 'crank.rows' ? rowLetter(index) : index + 1}`;

/** The fields of a part, sorted into those that a builder must give and the rest. Read off the schema. */
export function sheetOf(part: string, design: Design): Sheet {
  const sections = part === WHOLE ? [wholeDesign()] : sectionsOf(holderAt(part)!, part, design, null);
  const only = (detail: boolean) =>
    sections
      .map((section) => ({ ...section, rows: section.rows.filter(({ field }) => field.detail === detail) }))
      .filter(({ rows, list, fitted }) => rows.length > 0 || (!detail && (list ?? fitted) !== null));
  return { main: only(false), details: only(true) };
}

const wholeDesign = (): Section => ({
  ...plainSection('', '', ''),
  rows: FIELDS.filter(({ part, path }) => part === '' && path !== 'version').map((field) => ({
    field,
    cells: [{ path: field.path, name: '' }],
  })),
});

const plainSection = (path: string, heading: string, help: string): Section => ({
  path,
  heading,
  help,
  rows: [],
  items: null,
  list: null,
  fitted: null,
  byCylinder: false,
  table: null,
});

/** The section of a group or list and those of the groups in it, its own fields first. */
function sectionsOf(
  holder: Holder,
  open: string,
  design: Design,
  within: { list: string; items: readonly string[] } | null,
): Section[] {
  const listed = holder.kind === 'list' ? { list: holder.path, items: itemsOf(holder, design) } : within;
  const base = holder.kind === 'list' ? `${open}[]` : open;
  const value = within ? {} : designValue(design, open);
  const fitted = holder.nullable ? value !== null : null;
  const own = {
    ...plainSection(open, open.includes('.') ? holder.label : '', holder.help),
    fitted,
    table: holder.table,
  };
  if (fitted === false) return [own];
  const rows = holder.keys.flatMap((key): FieldRow[] => {
    const field = fieldAt(`${base}.${key}`);
    if (!field || key === holder.keyedBy || !counts(field, value)) return [];
    const cells = listed
      ? listed.items.map((name, i) => ({
          path: field.path.replace(
            `${listed.list}[]`,
            `${listed.list}[${holder.keyedBy === null ? i : name}]`,
          ),
          name: holder.keyedBy === null ? itemName(listed.list, i) : name,
        }))
      : [{ path: field.path, name: '' }];
    return [{ field, cells }];
  });
  const section: Section = {
    ...own,
    rows,
    items: listed?.items ?? null,
    list: holder.kind === 'list' ? holder : null,
    byCylinder: holder.keyedBy !== null,
  };
  const inner = holder.keys.flatMap((key) => {
    const child = holderAt(`${base}.${key}`);
    return child && counts(child, value) ? sectionsOf(child, child.path, design, listed) : [];
  });
  return [...(rows.length > 0 || section.list ? [section] : []), ...inner];
}

/** Whether a field or group counts beside the siblings that it has. */
const counts = ({ only }: Field | Holder, siblings: unknown): boolean =>
  !only || only.is.includes((siblings as Record<string, string>)[only.key] ?? '');

function itemsOf({ path, keyedBy }: Holder, design: Design): string[] {
  if (keyedBy !== null) return cylinderNames(design);
  const list = designValue(design, path) as unknown[];
  return list.map((_, i) => (path === 'crank.rows' ? rowLetter(i) : String(i + 1)));
}
