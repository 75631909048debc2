import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { HOLDERS, fieldAt, holderAt } from '../../src/design/fields.ts';
import { readPath, valueAt } from '../../src/design/path.ts';
import { readDesign } from '../../src/design/read-design.ts';
import type { Design } from '../../src/design/schema/design.ts';
import type { Outcome } from '../../src/sim/outcome.ts';

const folder = fileURLToPath(new URL('../../presets/', import.meta.url));
export const PRESETS = readdirSync(folder).filter((name) => name.endsWith('.json'));
export const presetText = (name: string): string => readFileSync(folder + name, 'utf8');

/** The value of a sound outcome; a test that gets here with faults shows them. */
export function sound<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults, null, 1));
  return outcome.value;
}

export const preset = (name: string): Design => sound(readDesign(presetText(`${name}.json`)));

/** Paths of what is wrong, in the order of the alphabet. */
export const faultPaths = (outcome: Outcome<unknown>): string[] =>
  outcome.ok ? [] : outcome.faults.map(({ path }) => path).sort();

/** The groups that Lovage 7 does without, as their schema allows. */
export const LEFT_OFF = HOLDERS.filter(
  ({ nullable, path }) => nullable && (valueAt(preset('lovage-7'), readPath(path)!) ?? null) === null,
).map(({ path }) => path);

/** Whether a field belongs to one of them. */
export const isLeftOff = (path: string): boolean => LEFT_OFF.some((group) => path.startsWith(`${group}.`));

/** Whether a field counts only beside another choice than the one a design has made. */
export const countsElsewhere = (path: string, design: Design): boolean =>
  [fieldAt(path), holderAt(path.slice(0, path.lastIndexOf('.')))].some((each) => {
    if (!each?.only) return false;
    const beside = each.path.split('.').slice(0, -1);
    return !each.only.is.includes(String(valueAt(design, [...beside, each.only.key])));
  });
