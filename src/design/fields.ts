import * as v from 'valibot';
import { formatNumber } from './format-quantity.ts';
import type { Extra } from './schema/builders.ts';
import { designSchema } from './schema/design.ts';
import { splitKey } from './unit-table.ts';
import type { Unit } from './unit-table.ts';

/** One field of the design file, as forms and messages need it. Read off the schema, never written down twice. */
export interface Field {
  /** Path with open positions: `windows.exhaust[].width_mm`. */
  readonly path: string;
  readonly key: string;
  /** Key and heading of the part it belongs to. */
  readonly part: string;
  readonly partLabel: string;
  /** Headings between the part and the field. */
  readonly groups: readonly string[];
  readonly label: string;
  readonly help: string;
  readonly kind: 'number' | 'integer' | 'choice' | 'boolean' | 'text' | 'list';
  readonly unit: Unit;
  readonly min: number | null;
  readonly max: number | null;
  readonly plausible: readonly [number, number] | null;
  /** In the field's own unit; null where the field may be left out. */
  readonly default: number | string | boolean | readonly number[] | null;
  /** What holds where the field is left out. */
  readonly otherwise: string | null;
  /** Key of the sibling that says the same in another way. */
  readonly insteadOf: string | null;
  readonly choices: readonly string[];
  readonly source: string;
  /** Most leave it as it is: forms fold it away. */
  readonly detail: boolean;
  /** Counts only where the sibling of this key has one of these values. */
  readonly only: Extra['only'] | null;
}

/** A group or a list of groups on the way to the fields. */
export interface Holder {
  readonly path: string;
  readonly label: string;
  readonly help: string;
  readonly kind: 'group' | 'list';
  readonly keys: readonly string[];
  /** May be switched off (null). */
  readonly nullable: boolean;
  readonly keyedBy: string | null;
  /** Keys of the lists that are the places of its rows and columns, where it is a table. */
  readonly table: { readonly rows: string; readonly columns: string } | null;
  readonly minLength: number;
  readonly maxLength: number;
  readonly detail: boolean;
  /** As of a field. */
  readonly only: Extra['only'] | null;
}

type AnySchema = v.GenericSchema & {
  wrapped?: AnySchema;
  default?: unknown;
  entries?: Record<string, AnySchema>;
  item?: AnySchema;
  options?: readonly string[];
  pipe?: readonly { kind: string; type: string; requirement?: unknown }[];
};

const requirement = (schema: AnySchema, type: string): number | null => {
  const found = schema.pipe?.find((action) => action.kind === 'validation' && action.type === type);
  return typeof found?.requirement === 'number' ? found.requirement : null;
};

function unwrap(schema: AnySchema): { inner: AnySchema; fallback: unknown; nullable: boolean } {
  let inner = schema;
  let fallback: unknown = undefined;
  let nullable = false;
  while (inner.wrapped) {
    if (inner.type === 'nullable') nullable = true;
    if (inner.type === 'optional') fallback = inner.default;
    inner = inner.wrapped;
  }
  return { inner, fallback, nullable };
}

function walk() {
  const fields: Field[] = [];
  const holders: Holder[] = [];

  const visit = (
    schema: AnySchema,
    path: string,
    parents: readonly { key: string; label: string }[],
    inDetail: boolean,
  ): void => {
    const { inner, fallback, nullable } = unwrap(schema);
    const label = v.getTitle(inner) ?? path;
    const help = v.getDescription(inner) ?? label;
    const extra = v.getMetadata(inner) as Extra;
    const detail = inDetail || extra.detail === true;
    const key = path.slice(path.lastIndexOf('.') + 1);
    const isList = inner.type === 'array' && inner.item!.type !== 'number';
    if (inner.type === 'strict_object' || isList) {
      const body = isList ? unwrap(inner.item!).inner : inner;
      holders.push({
        path,
        label,
        help,
        kind: isList ? 'list' : 'group',
        keys: Object.keys(body.entries!),
        nullable,
        keyedBy: extra.keyedBy ?? null,
        table: extra.table ?? null,
        minLength: requirement(inner, 'min_length') ?? 0,
        maxLength: requirement(inner, 'max_length') ?? Infinity,
        detail,
        only: extra.only ?? null,
      });
      const inside = path === '' ? [] : [...parents, { key, label }];
      for (const [name, entry] of Object.entries(body.entries!)) {
        visit(entry, `${path}${isList ? '[]' : ''}${path === '' ? '' : '.'}${name}`, inside, detail);
      }
      return;
    }
    const numbers = inner.type === 'array' ? inner.item! : inner;
    const integer = inner.pipe?.some((action) => action.type === 'integer');
    const kind = {
      number: integer ? 'integer' : 'number',
      picklist: 'choice',
      boolean: 'boolean',
      array: 'list',
    }[inner.type as string] as Field['kind'] | undefined;
    fields.push({
      path,
      key,
      part: parents[0]?.key ?? '',
      partLabel: parents[0]?.label ?? '',
      groups: parents.slice(1).map((each) => each.label),
      label,
      help,
      kind: kind ?? 'text',
      unit: splitKey(key).unit,
      min: requirement(numbers, 'min_value'),
      max: requirement(numbers, 'max_value'),
      plausible: extra.plausible ?? null,
      default: (fallback as Field['default'] | undefined) ?? null,
      otherwise: extra.otherwise ?? null,
      insteadOf: extra.insteadOf ?? null,
      choices: inner.options ?? [],
      source: extra.source ?? '',
      detail,
      only: extra.only ?? null,
    });
  };
  visit(designSchema as unknown as AnySchema, '', [], false);
  return { fields, holders };
}

const walked = walk();

/** Every field of a design, in the order of the schema. */
export const FIELDS: readonly Field[] = walked.fields;
/** Every group and list, the whole design (path '') first. */
export const HOLDERS: readonly Holder[] = walked.holders;

const fieldByPath = new Map(FIELDS.map((field) => [field.path, field]));
const holderByPath = new Map(HOLDERS.map((holder) => [holder.path, holder]));
export const fieldAt = (path: string): Field | undefined => fieldByPath.get(path);
export const holderAt = (path: string): Holder | undefined => holderByPath.get(path);

const withUnit = (text: string, { symbol }: Unit): string =>
  symbol === '' ? text : text + (symbol.startsWith('°') && !symbol.startsWith('°C') ? '' : ' ') + symbol;

/** What a field allows, in words: `20 to 120 mm`, `one of petrol, methanol`. */
export function allowed(field: Field): string {
  const { kind, min, max, unit, choices } = field;
  if (kind === 'choice') return `one of ${choices.join(', ')}`;
  if (kind === 'boolean') return 'true or false';
  if (kind === 'text') return 'text';
  const range = withUnit(`${formatNumber(min ?? -Infinity, 6)} to ${formatNumber(max ?? Infinity, 6)}`, unit);
  if (kind === 'list') return `a list of numbers, each ${range}`;
  return kind === 'integer' ? `a whole number, ${range}` : range;
}

/** A value of a field as people read it, in the field's own unit. */
export function showValue(value: unknown, unit: Unit): string {
  if (typeof value === 'number') {
    return Number.isFinite(value) ? withUnit(formatNumber(value, 6), unit) : 'not a finite number';
  }
  if (typeof value === 'string') return `the text “${value.length > 40 ? `${value.slice(0, 40)}…` : value}”`;
  if (value === null) return 'null';
  if (value === undefined) return 'missing';
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : `a list of ${value.length}`;
  return typeof value === 'object' ? 'a group of values' : String(value);
}
