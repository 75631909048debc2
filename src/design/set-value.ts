import { failure } from '../sim/outcome.ts';
import type { Outcome } from '../sim/outcome.ts';
import { FIELDS, HOLDERS, allowed, fieldAt, holderAt } from './fields.ts';
import type { Field, Holder } from './fields.ts';
import { parseQuantity } from './parse-quantity.ts';
import { openPath, readPath, writePath } from './path.ts';
import type { Path } from './path.ts';
import type { Design } from './schema/design.ts';
import { fromSi, splitKey } from './unit-table.ts';
import { validate } from './validate.ts';

/** What people type to go back to the default, or to leave a value out or switch a group off. */
const DEFAULT_WORDS = ['default', ''];
const OFF_WORDS = ['none', 'off'];

/**
 * Set one value of a design as it is typed: path `cylinder.bore_mm`, `cylinder.bore` or, where only one field is
 * called so, `bore`; text `52`, `52 mm`, `3.2 in`, `0,85`. Items of a list go by position from 0, those that have
 * one by name: `crank.corrections[A3].barrel`, made if it is not there yet.
 *
 * @returns the whole design checked anew, or what is wrong
 */
export function setValue(design: Design, path: string, text: string): Outcome<Design> {
  return setValues(design, [{ path, text }]);
}

/** Set several values in turn and check the design once, so that values which only fit together can be changed. */
export function setValues(
  design: Design,
  changes: readonly { path: string; text: string }[],
): Outcome<Design> {
  const data = structuredClone(design) as unknown as Group;
  const faults = changes.flatMap(({ path, text }) => {
    const problem = change(data, path, text.trim());
    return problem === null ? [] : [{ path, message: problem }];
  });
  const checked = validate(data);
  return faults.length > 0 ? failure([...faults, ...(checked.ok ? [] : checked.faults)]) : checked;
}

type Group = Record<string | number, unknown>;

/** Change one value in place; null, or what is wrong. */
function change(data: Group, typed: string, text: string): string | null {
  const steps = readPath(typed);
  if (!steps) return `“${typed}” is not a path such as cylinder.bore_mm or windows.exhaust[0].width_mm`;
  const found = resolve(steps);
  if (typeof found === 'string') return found;
  const word = text.toLowerCase();
  const place = descend(data, found.steps.slice(0, -1), OFF_WORDS.includes(word));
  if (typeof place === 'string') return place;
  const last = found.steps.at(-1)!;
  const field = fieldAt(found.open);
  if (!field) return setHolder(place, last, holderAt(found.open)!, word);
  const problem = setField(place, last, field, text, word);
  if (problem === null && field.insteadOf !== null && place[last] !== undefined)
    Reflect.deleteProperty(place, field.insteadOf);
  return problem;
}

function setHolder(place: Group, last: string | number, holder: Holder, word: string): string | null {
  if (holder.nullable && OFF_WORDS.includes(word)) place[last] = null;
  else if (typeof last === 'string' && DEFAULT_WORDS.includes(word)) Reflect.deleteProperty(place, last);
  else return `${holder.label} holds several values: set one of ${holder.keys.join(', ')}`;
  return null;
}

function setField(
  place: Group,
  key: string | number,
  field: Field,
  text: string,
  word: string,
): string | null {
  if (field.kind === 'text' && field.key !== 'cylinder') {
    place[key] = text;
    return null;
  }
  if (DEFAULT_WORDS.includes(word) || (OFF_WORDS.includes(word) && field.otherwise !== null)) {
    Reflect.deleteProperty(place, key);
    return null;
  }
  const value = read(field, text, word);
  if (typeof value === 'object' && 'problem' in value) return `${field.label}: ${value.problem}`;
  place[key] = value;
  return null;
}

function read(
  field: Field,
  text: string,
  word: string,
): number | string | boolean | readonly number[] | { problem: string } {
  if (field.kind === 'boolean') {
    if (['true', 'yes', 'on'].includes(word)) return true;
    if (['false', 'no', 'off'].includes(word)) return false;
    return { problem: `“${text}” is neither yes nor no` };
  }
  if (field.kind === 'choice') {
    const fitting = field.choices.filter((each) => each.toLowerCase() === word);
    return fitting[0] ?? { problem: `“${text}” is not ${allowed(field)}` };
  }
  if (field.kind === 'text') return text.toUpperCase();
  const parts =
    field.kind === 'list' ? text.replace(/^\[|\]$/g, '').split(/\s*;\s*|,\s+|\s+(?=[-+\d])/) : [text];
  const numbers: number[] = [];
  for (const part of parts) {
    const parsed = parseQuantity(part, field.unit);
    if (!parsed.ok) return { problem: parsed.faults[0]!.message };
    numbers.push(tidy(fromSi(parsed.value.value, field.unit)));
  }
  return field.kind === 'list' ? numbers : numbers[0]!;
}

/** Twelve figures: enough for any drawing, and 3.2 in becomes 81.28 mm, not 81.28000000000002. */
const tidy = (value: number): number => Number(value.toPrecision(12));

interface Resolved {
  /** As the field or group is described: positions open. */
  readonly open: string;
  readonly steps: Path;
}

/**
 * The full path of what was typed, or what is wrong. Units may be left off, and leading steps: of several fields of
 * one name the one nearest the top is meant (`bore` is the cylinder's), and where there is no such one none is.
 */
function resolve(steps: Path): Resolved | string {
  const wanted = steps.filter((step) => typeof step === 'string' && !isIndex(steps, step)) as string[];
  const names = [
    ...FIELDS.map(({ path }) => path),
    ...HOLDERS.map(({ path }) => path).filter((path) => path !== ''),
  ];
  const fits = (path: string, exact: boolean): boolean => {
    const parts = path.replace(/\[\]/g, '').split('.');
    const tail = parts.slice(-wanted.length);
    if (tail.length < wanted.length) return false;
    return tail.every((part, i) => part === wanted[i] || (!exact && splitKey(part).name === wanted[i]));
  };
  const full = wanted.join('.');
  const hits = (exact: boolean) => names.filter((path) => fits(path, exact));
  const exactHits = hits(true);
  const candidates = exactHits.length > 0 ? exactHits : hits(false);
  const depth = (path: string) => path.split('.').length;
  const least = Math.min(...candidates.map(depth));
  const chosen = candidates.filter((path) => depth(path) === least);
  if (chosen.length === 0) {
    const near = names.filter((path) => path.toLowerCase().includes(wanted.at(-1)!.toLowerCase()));
    return `there is no value “${full}”${near.length > 0 ? `; is it ${near.slice(0, 6).join(', ')}?` : ''}`;
  }
  if (chosen.length > 1) return `“${full}” may be ${chosen.slice(0, 8).join(', ')}: write more of its path`;
  return withPositions(chosen[0]!, steps, wanted);
}

const isIndex = (steps: Path, step: string | number): boolean =>
  /^[A-Z]\d+$/.test(String(step)) && steps[0] !== step;

/** Put the typed positions into the path that was found. */
function withPositions(open: string, steps: Path, wanted: readonly string[]): Resolved | string {
  const parts = open.split('.');
  const positions = new Map<string, string | number>();
  let name = '';
  let at = parts.length - wanted.length - 1;
  for (const step of steps) {
    if (typeof step === 'string' && !isIndex(steps, step)) {
      name = parts[++at]!.replace('[]', '');
    } else {
      positions.set(name, step);
    }
  }
  const full: (string | number)[] = [];
  for (const part of parts) {
    const bare = part.replace('[]', '');
    full.push(bare);
    const position = positions.get(bare);
    if (part.endsWith('[]') && position === undefined) {
      return `${open} is in a list: say which one, as ${open.replace('[]', '[0]')}`;
    }
    if (position !== undefined) {
      const isList = part.endsWith('[]') || (part === parts.at(-1) && holderAt(open)?.kind === 'list');
      if (!isList) return `${bare} is not a list`;
      full.push(position);
    }
  }
  return { open, steps: full };
}

/** The group in which the last step is set; items with a name are made on the way, groups that are off switched on. */
function descend(data: Group, path: Path, removing: boolean): Group | string {
  let at: unknown = data;
  for (const [i, step] of path.entries()) {
    const soFar = writePath(path.slice(0, i + 1));
    if (Array.isArray(at)) {
      const item = itemOf(at, step, writePath(path.slice(0, i)));
      if (typeof item === 'string') return item;
      at = item;
      continue;
    }
    const group = at as Group;
    if ((group[step] === null || group[step] === undefined) && !removing) group[step] = {};
    at = group[step];
    if (at === null || at === undefined) return `${soFar} is off`;
  }
  return at as Group;
}

function itemOf(list: unknown[], step: string | number, path: string): unknown {
  const keyedBy = holderAt(openPath(path))?.keyedBy ?? null;
  if (typeof step === 'number') {
    if (step < list.length) return list[step];
    return list.length === 0
      ? `${path} is empty`
      : `${path} has positions 0 to ${list.length - 1}, not ${step}`;
  }
  if (keyedBy === null) return `items of ${path} go by position, as ${path}[0]`;
  const found = list.find((item) => (item as Group)[keyedBy] === step);
  if (found) return found;
  const made = { [keyedBy]: step };
  list.push(made);
  return made;
}
