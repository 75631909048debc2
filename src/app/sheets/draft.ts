import { readCylinderName, rowLetter } from '../../design/cylinder-name.ts';
import { allowed, fieldAt, holderAt, showValue } from '../../design/fields.ts';
import type { Field } from '../../design/fields.ts';
import { parseQuantity } from '../../design/parse-quantity.ts';
import { openPath, readPath, valueAt } from '../../design/path.ts';
import type { Design } from '../../design/schema/design.ts';
import { setValues } from '../../design/set-value.ts';
import { fromSi } from '../../design/unit-table.ts';
import { validate } from '../../design/validate.ts';
import { failure, success } from '../../sim/outcome.ts';
import type { Fault, Outcome } from '../../sim/outcome.ts';

/**
 * A design as it is being worked on: the last one that held together, and what was typed. Paths are those of the
 * design file; cylinders' corrections go by name, `crank.corrections[A3].barrel_mm`. Never mutated.
 */
export interface Draft {
  readonly design: Design;
  /** As typed, where the design says the same: `2 in` for 50.8 mm. */
  readonly texts: Texts;
  /** As typed, and not to be used yet. */
  readonly held: Texts;
  /** The preset that this is, untouched. */
  readonly presetId: string | null;
  /** What was opened that this was made of: steps between two origins lead to another engine. */
  readonly origin: string;
}
export type Texts = Readonly<Record<string, string>>;

export const freshDraft = (design: Design, presetId: string | null): Draft => ({
  design,
  texts: {},
  held: {},
  presetId,
  origin: presetId ?? `file: ${design.name}`,
});

const without = (texts: Texts, drop: (path: string) => boolean): Texts =>
  Object.fromEntries(Object.entries(texts).filter(([path]) => !drop(path)));

/** Sibling that says the same in another way, if there is one. */
function sibling(path: string): string | null {
  const field = fieldAt(openPath(path));
  return field?.insteadOf ? path.slice(0, path.lastIndexOf('.') + 1) + field.insteadOf : null;
}

/**
 * Put a text into a field. It is used as soon as it can be: by itself, or together with others that wait, since some
 * values only fit together. What cannot be used is held, word for word, and the design stays as it was.
 */
export function enter(draft: Draft, path: string, text: string): Draft {
  const other = text.trim() === '' ? null : sibling(path);
  const drop = (each: string) => each === other;
  const texts = without(draft.texts, (each) => each === path || each === other);
  const held = { ...without(draft.held, drop), [path]: text };
  return use({ ...draft, texts, held, presetId: null });
}

/** Put several values in at once, all of them or none: one step. What waits is tried again with them. */
export function enterAll(
  draft: Draft,
  changes: readonly { readonly path: string; readonly text: string }[],
): Outcome<Draft> {
  const changed = setValues(draft.design, changes);
  if (!changed.ok) return changed;
  const gone = (path: string) => changes.some((change) => change.path === path);
  return success(
    use({
      ...draft,
      design: changed.value,
      texts: without(draft.texts, gone),
      held: without(draft.held, gone),
      presetId: null,
    }),
  );
}

/** Take a design that was made of this one: one step. What was typed stays where it still says the same. */
export function turnInto(draft: Draft, made: Outcome<Design>): Outcome<Draft> {
  if (!made.ok) return made;
  const differs = (path: string): boolean =>
    JSON.stringify(designValue(made.value, path)) !== JSON.stringify(designValue(draft.design, path));
  return success(use({ ...draft, design: made.value, texts: without(draft.texts, differs), presetId: null }));
}

/** Use of what is held all that can be used. */
function use(draft: Draft): Draft {
  const waiting = Object.entries(draft.held);
  const sound = waiting.filter(([path, text]) => isReadable(path, text));
  for (const batch of [waiting, sound, ...(sound.length > 1 ? sound.map((one) => [one]) : [])]) {
    if (batch.length === 0) continue;
    const tried = apply(draft.design, batch);
    if (!tried.ok) continue;
    const used = (path: string) => batch.some(([each]) => each === path);
    const kept = Object.fromEntries(batch.filter(([path]) => isTyped(fieldAt(openPath(path)))));
    const next = {
      ...draft,
      design: isSame(tried.value, draft.design) ? draft.design : tried.value,
      texts: { ...draft.texts, ...kept },
      held: without(draft.held, used),
    };
    return Object.keys(next.held).length > 0 ? use(next) : next;
  }
  return draft;
}

/** The same values, in the order of the schema: nothing to compute anew. */
const isSame = (a: Design, b: Design): boolean => JSON.stringify(a) === JSON.stringify(b);

const isTyped = (field: Field | undefined): boolean => field?.kind !== 'choice' && field?.kind !== 'boolean';

/** What is wrong with a text whatever the rest of the design says; null where nothing is. */
function misreading(path: string, text: string): string | null {
  const field = fieldAt(openPath(path));
  if (!field || text.trim() !== '' || field.kind === 'text' || field.default === null) return null;
  return `nothing is typed; the default is ${showValue(field.default, field.unit)}`;
}

/** Whether a number stands there that its field allows; texts and lists are judged with the rest of the design. */
function isReadable(path: string, text: string): boolean {
  const field = fieldAt(openPath(path));
  if (misreading(path, text) !== null) return false;
  if (!field || (field.kind !== 'number' && field.kind !== 'integer') || text.trim() === '') return true;
  const read = parseQuantity(text, field.unit);
  if (!read.ok) return false;
  const value = fromSi(read.value.value, field.unit);
  return value >= (field.min ?? -Infinity) && value <= (field.max ?? Infinity);
}

function apply(design: Design, batch: readonly (readonly [string, string])[]): Outcome<Design> {
  const faults = batch.flatMap(([path, text]): Fault[] => {
    const message = misreading(path, text);
    return message === null ? [] : [{ path, message }];
  });
  if (faults.length > 0) return failure(faults);
  return setValues(
    design,
    batch.map(([path, text]) => ({ path, text })),
  );
}

/** Why each held text cannot be used, by its path, in words, with what is allowed. */
export function whyHeld({ design, held }: Draft): ReadonlyMap<string, readonly string[]> {
  return new Map(
    Object.entries(held).map(([path, text]) => {
      const tried = apply(design, [[path, text]]);
      const field = fieldAt(openPath(path));
      const faults = tried.ok ? [] : tried.faults;
      const messages = faults.map((fault) => inWords(fault, path, field));
      return [path, messages.length > 0 ? messages : ['it does not fit the other values that wait']];
    }),
  );
}

function inWords({ path, message }: Fault, at: string, field: Field | undefined): string {
  if (path !== at) {
    const label = fieldAt(openPath(path))?.label ?? holderAt(openPath(path))?.label;
    return label && !message.startsWith(label) ? `${label}: ${message}` : message;
  }
  const own = field ? message.replace(new RegExp(`^${escapeForRegExp(field.label)}: `), '') : message;
  return field && field.kind !== 'text' && !own.includes('allowed')
    ? `${own}; allowed ${allowed(field)}`
    : own;
}
const escapeForRegExp = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** Back to the default, or to what holds where nothing is given. */
export function reset(draft: Draft, path: string): Outcome<Draft> {
  const tried = setValues(draft.design, [{ path, text: 'default' }]);
  if (!tried.ok) return tried;
  const gone = (each: string) => each === path;
  return success(
    use({
      design: tried.value,
      texts: without(draft.texts, gone),
      held: without(draft.held, gone),
      presetId: null,
      origin: draft.origin,
    }),
  );
}

/** What stands in a field: what was typed, or what the design says. */
export function textAt(draft: Draft, path: string): string | null {
  return draft.held[path] ?? draft.texts[path] ?? null;
}

/** The value at a path; corrections by the name of their cylinder. */
export function designValue(design: Design, path: string): unknown {
  const steps = readPath(path) ?? [];
  return steps.reduce<unknown>((at, step) => {
    if (!Array.isArray(at) || typeof step === 'number') return valueAt(at, [step]);
    return (at as Record<string, unknown>[]).find((item) => item['cylinder'] === step);
  }, design);
}

type Group = Record<string, unknown>;

/** Change the shape of a design: all or nothing. What waits is tried again. */
function reshape(
  draft: Draft,
  change: (data: Design) => void,
  rename: (path: string) => string | null,
): Outcome<Draft> {
  const data = structuredClone(draft.design);
  change(data);
  const checked = validate(data);
  if (!checked.ok) return checked;
  const moved = (texts: Texts): Texts =>
    Object.fromEntries(
      Object.entries(texts).flatMap(([path, text]) => {
        const to = rename(path);
        return to === null ? [] : [[to, text]];
      }),
    );
  return success(
    use({
      design: checked.value,
      texts: moved(draft.texts),
      held: moved(draft.held),
      presetId: null,
      origin: draft.origin,
    }),
  );
}

const listAt = (design: Design, path: string): unknown[] => designValue(design, path) as unknown[];

/** One more item, like the last one. */
export function addItem(draft: Draft, path: string): Outcome<Draft> {
  return reshape(
    draft,
    (data) => {
      const list = listAt(data, path);
      list.push(structuredClone(list.at(-1) ?? {}));
    },
    (each) => each,
  );
}

/** Take an item out; those behind it move up, and what was typed for them. */
export function removeItem(draft: Draft, path: string, index: number): Outcome<Draft> {
  const prefix = `${path}[`;
  return reshape(
    draft,
    (data) => {
      listAt(data, path).splice(index, 1);
      if (path === 'crank.rows') data.crank.corrections = correctionsWithoutRow(data, index);
    },
    (each) => {
      if (!each.startsWith(prefix)) return path === 'crank.rows' ? renamedCylinder(each, index) : each;
      const at = Number.parseInt(each.slice(prefix.length), 10);
      if (at < index) return each;
      return at === index ? null : each.replace(`${prefix}${at}]`, `${prefix}${at - 1}]`);
    },
  );
}

function correctionsWithoutRow({ crank }: Design, row: number): Design['crank']['corrections'] {
  return crank.corrections.flatMap((each) => {
    const cylinder = nameWithoutRow(each.cylinder, row);
    return cylinder === null ? [] : [{ ...each, cylinder }];
  });
}

function nameWithoutRow(name: string, row: number): string | null {
  const place = readCylinderName(name);
  if (!place || place.rowIndex < row) return name;
  return place.rowIndex === row ? null : `${rowLetter(place.rowIndex - 1)}${place.cylinderIndex + 1}`;
}

function renamedCylinder(path: string, row: number): string | null {
  const found = /^crank\.corrections\[(\w+)\](.*)$/.exec(path);
  if (!found) return path;
  const name = nameWithoutRow(found[1]!, row);
  return name === null ? null : `crank.corrections[${name}]${found[2]}`;
}

/** Fit a part that may be left off, with its defaults, or take it off. */
export function setFitted(draft: Draft, path: string, fitted: boolean): Outcome<Draft> {
  return reshape(
    draft,
    (data) => {
      const steps = readPath(path)!;
      const holder = valueAt(data, steps.slice(0, -1)) as Group;
      holder[String(steps.at(-1))] = fitted ? {} : null;
    },
    (each) => (each.startsWith(`${path}.`) ? null : each),
  );
}

/** Let a cylinder be like the others. */
export function clearCorrection(draft: Draft, cylinder: string): Outcome<Draft> {
  return reshape(
    draft,
    (data) => {
      data.crank.corrections = data.crank.corrections.filter((each) => each.cylinder !== cylinder);
    },
    (each) => (each.startsWith(`crank.corrections[${cylinder}]`) ? null : each),
  );
}
