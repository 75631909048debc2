import * as v from 'valibot';
import type { Fault } from '../sim/outcome.ts';
import { allowed, fieldAt, holderAt, showValue } from './fields.ts';
import { openPath, writePath } from './path.ts';
import type { Path } from './path.ts';
import { designSchema } from './schema/design.ts';
import type { Design } from './schema/design.ts';
import { splitKey } from './unit-table.ts';

export interface Checked {
  /** Null where any fault was found. */
  readonly design: Design | null;
  readonly faults: readonly (Fault & { readonly steps: Path })[];
}

/** Check data against the schema: every fault at once, each with path, value and what is allowed. */
export function checkSchema(data: unknown): Checked {
  const parsed = v.safeParse(designSchema, data, { abortPipeEarly: true });
  const faults = [...keyFaults(data, [])];
  const reported = new Set(faults.map((fault) => fault.path));
  for (const issue of parsed.issues ?? []) {
    if (issue.type === 'strict_object' && issue.expected === 'never') continue;
    const steps = (issue.path ?? []).map((item) => item.key as string | number);
    const path = writePath(steps);
    if (reported.has(path)) continue;
    reported.add(path);
    faults.push({ path, steps, message: explain(path, issue) });
  }
  return { design: parsed.success && faults.length === 0 ? parsed.output : null, faults };
}

/** Keys that nobody reads, and lists where a group of values belongs: valibot names only the first, or none. */
function* keyFaults(data: unknown, steps: Path): Generator<Fault & { steps: Path }> {
  const path = writePath(steps);
  const holder = holderAt(openPath(path).replace(/\[\]$/, ''));
  if (!holder || data === null || typeof data !== 'object') return;
  const wantsList = holder.kind === 'list' && !path.endsWith(']');
  if (wantsList) {
    if (Array.isArray(data)) {
      for (const [index, item] of data.entries()) yield* keyFaults(item, [...steps, index]);
    }
    return;
  }
  if (Array.isArray(data)) {
    yield {
      path,
      steps,
      message: `${holder.label}: must be a group of values { … }, not ${showValue(data, splitKey('').unit)}`,
    };
    return;
  }
  for (const [key, value] of Object.entries(data)) {
    if (holder.keys.includes(key)) {
      yield* keyFaults(value, [...steps, key]);
    } else {
      const at = [...steps, key];
      yield { path: writePath(at), steps: at, message: unknownKey(key, holder.keys) };
    }
  }
}

function unknownKey(key: string, known: readonly string[]): string {
  // What stands before the first underscore, whether or not what follows is a unit.
  const name = key.split('_')[0]!;
  const nearest =
    known.find((each) => splitKey(each).name.toLowerCase() === name.toLowerCase()) ??
    known.find((each) => editDistance(splitKey(each).name.toLowerCase(), name.toLowerCase()) <= 2);
  const hint = nearest ? `; did you mean ${nearest}?` : '';
  return `unknown key “${key}”${hint} Allowed here: ${known.join(', ')}`.replace('” Allowed', '”. Allowed');
}

/** Levenshtein's distance: the fewest letters to add, drop or change. */
function editDistance(a: string, b: string): number {
  let previous = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const current = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = previous[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      current.push(Math.min(change, previous[j]! + 1, current[j - 1]! + 1));
    }
    previous = current;
  }
  return previous[b.length]!;
}

function explain(path: string, issue: v.BaseIssue<unknown>): string {
  if (path === '') return 'the file must hold one group of values { … }';
  const open = openPath(path);
  const field = fieldAt(open) ?? fieldAt(open.replace(/\[\]$/, ''));
  const holder = holderAt(open) ?? holderAt(open.replace(/\[\]$/, ''));
  if (field) {
    const shown = showValue(issue.input, field.unit);
    const item = field.kind === 'list' && open.endsWith('[]');
    if (item)
      return `${field.label}: one of the numbers is ${shown}; allowed ${allowed(field).replace('a list of numbers, ', '')}`;
    if (issue.type === 'max_length') {
      const unit = field.kind === 'text' ? 'characters' : 'numbers';
      return `${field.label} is too long; allowed up to ${String(issue.expected).replace('<=', '')} ${unit}`;
    }
    if (issue.type === 'regex')
      return `${field.label} is ${shown}; allowed a row letter A to D and a number 1 to 14, as A3`;
    if (path === 'version') return `Version of the file is ${shown}; allowed: ${String(issue.expected)}`;
    return `${field.label} is ${shown}; allowed ${allowed(field)}`;
  }
  if (holder) {
    const shown = showValue(issue.input, splitKey('').unit);
    if (issue.type === 'min_length') return `${holder.label}: ${shown}; allowed at least ${holder.minLength}`;
    if (issue.type === 'max_length') return `${holder.label}: ${shown}; allowed at most ${holder.maxLength}`;
    const wanted = holder.kind === 'list' && !path.endsWith(']') ? 'a list [ … ]' : 'a group of values { … }';
    return `${holder.label}: must be ${wanted}, not ${shown}`;
  }
  return issue.message;
}
