import * as v from 'valibot';

/**
 * What a field says of itself beside its type: everything that forms, messages and the published schema need.
 * The unit is not among them: it is read off the key (`bore_mm`).
 */
export interface FieldSpec extends Pick<Extra, 'only'> {
  readonly label: string;
  readonly help?: string;
  /** Where the default comes from; "typical" where it is only usual practice. */
  readonly source: string;
  /** A measure or coefficient that most leave as it is: forms fold it away. */
  readonly detail?: true;
}
export interface NumberSpec extends FieldSpec {
  /** Allowed, both ends included. */
  readonly min: number;
  readonly max: number;
  /** Where sound designs lie; outside it a field warns, nothing more. */
  readonly plausible: readonly [number, number];
  /** Says, for a field that may be left out, what then holds. */
  readonly otherwise?: string;
  /** The sibling key that says the same in another way: exactly one of the two is given. */
  readonly insteadOf?: string;
}

/** Extra facts carried in a schema's metadata. */
export interface Extra {
  readonly source?: string;
  readonly detail?: true;
  readonly plausible?: readonly [number, number];
  readonly otherwise?: string;
  readonly insteadOf?: string;
  /** Counts only where a sibling, named by its key, has one of these values: elsewhere forms leave it out. */
  readonly only?: { readonly key: string; readonly is: readonly string[] };
  /** In a list of objects: the key by whose value an item may be addressed. */
  readonly keyedBy?: string;
  /** In a group of lists: the keys of those that are the places of a table's rows and columns; the others fill it, row by row. */
  readonly table?: { readonly rows: string; readonly columns: string };
}

const bounded = (spec: NumberSpec) => {
  const { source, plausible, otherwise, insteadOf, detail, only } = spec;
  const extra: Extra = {
    source,
    plausible,
    ...(detail && { detail }),
    ...(only && { only }),
    ...(otherwise && { otherwise }),
    ...(insteadOf && { insteadOf }),
  };
  return v.pipe(
    v.number(),
    v.minValue(spec.min),
    v.maxValue(spec.max),
    v.title(spec.label),
    v.description(spec.help ?? spec.label),
    v.metadata({ ...extra }),
  );
};
const whole = (spec: NumberSpec) =>
  v.pipe(
    v.number(),
    v.integer(),
    v.minValue(spec.min),
    v.maxValue(spec.max),
    v.title(spec.label),
    v.description(spec.help ?? spec.label),
    v.metadata({
      source: spec.source,
      plausible: spec.plausible,
      ...(spec.detail && { detail: spec.detail }),
      ...(spec.only && { only: spec.only }),
      ...(spec.otherwise && { otherwise: spec.otherwise }),
    }),
  );

/** A number with a default. */
export const number = (value: number, spec: NumberSpec) => v.optional(bounded(spec), value);
/** A number that may be left out; `otherwise` says what then holds. */
export const numberOrNone = (spec: NumberSpec & { otherwise: string }) => v.optional(bounded(spec));
export const integer = (value: number, spec: NumberSpec) => v.optional(whole(spec), value);
export const integerOrNone = (spec: NumberSpec & { otherwise: string }) => v.optional(whole(spec));

export const choice = <const T extends readonly [string, ...string[]]>(
  options: T,
  value: T[number],
  spec: FieldSpec,
) =>
  v.optional(
    v.pipe(
      v.picklist(options),
      v.title(spec.label),
      v.description(spec.help ?? spec.label),
      v.metadata({
        source: spec.source,
        ...(spec.detail && { detail: spec.detail }),
        ...(spec.only && { only: spec.only }),
      }),
    ),
    value as never,
  );

export const yesNo = (value: boolean, spec: FieldSpec) =>
  v.optional(
    v.pipe(
      v.boolean(),
      v.title(spec.label),
      v.description(spec.help ?? spec.label),
      v.metadata({
        source: spec.source,
        ...(spec.detail && { detail: spec.detail }),
        ...(spec.only && { only: spec.only }),
      }),
    ),
    value,
  );

export const text = (value: string, maxLength: number, spec: FieldSpec) =>
  v.optional(
    v.pipe(
      v.string(),
      v.maxLength(maxLength),
      v.title(spec.label),
      v.description(spec.help ?? spec.label),
      v.metadata({ source: spec.source, ...(spec.detail && { detail: spec.detail }) }),
    ),
    value,
  );

const boundedList = (spec: NumberSpec, maxLength: number) =>
  v.pipe(
    v.array(v.pipe(v.number(), v.minValue(spec.min), v.maxValue(spec.max))),
    v.maxLength(maxLength),
    v.title(spec.label),
    v.description(spec.help ?? spec.label),
    v.metadata({
      source: spec.source,
      plausible: spec.plausible,
      ...(spec.otherwise && { otherwise: spec.otherwise }),
      ...(spec.detail && { detail: spec.detail }),
    }),
  );

/** A list of numbers that may be left out. */
export const numbersOrNone = (spec: NumberSpec & { otherwise: string }, maxLength: number) =>
  v.optional(boundedList(spec, maxLength));
/** A list of numbers with a default. */
export const numbers = (value: readonly number[], spec: NumberSpec, maxLength: number) =>
  v.optional(boundedList(spec, maxLength), [...value]);

/** A group of fields; its title is the heading under which they stand. What is said of it holds for all in it. */
export const group = <T extends v.ObjectEntries>(
  label: string,
  help: string,
  entries: T,
  extra: Pick<Extra, 'detail' | 'only' | 'table'> = {},
) => v.pipe(v.strictObject(entries), v.title(label), v.description(help), v.metadata({ ...extra }));

/** A list of groups, with at least `min` and at most `max` of them. */
export const listOf = <T extends v.GenericSchema>(
  item: T,
  label: string,
  help: string,
  { min, max, ...extra }: { min: number; max: number } & Extra,
) =>
  v.pipe(
    v.array(item),
    v.minLength(min),
    v.maxLength(max),
    v.title(label),
    v.description(help),
    v.metadata({ ...extra }),
  );

/** A group whose every field has a default, so that it may be left out whole. */
export const filled = <T extends v.GenericSchema<object>>(schema: T) => v.optional(schema, {} as never);
