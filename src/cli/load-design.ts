import { existsSync, readFileSync, readdirSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { readDesign } from '../design/read-design.ts';
import type { Design } from '../design/schema/design.ts';
import { setValues } from '../design/set-value.ts';
import { failure } from '../sim/outcome.ts';
import type { Outcome } from '../sim/outcome.ts';

const PRESETS = fileURLToPath(new URL('../../presets/', import.meta.url));

/** A design from a path or the name of a preset, with changes made to it. */
export function loadDesign(
  file: string,
  changes: readonly { path: string; text: string }[],
): Outcome<Design> {
  const path = placeOf(file);
  if (path === null) {
    const message = `there is no file “${file}” and no preset of that name; presets: ${presetNames().join(', ')}`;
    return failure([{ path: '', message }]);
  }
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch (error) {
    return failure([{ path: '', message: `${file} cannot be read: ${(error as Error).message}` }]);
  }
  const read = readDesign(text);
  return read.ok && changes.length > 0 ? setValues(read.value, changes) : read;
}

const presetNames = (): string[] =>
  readdirSync(PRESETS)
    .filter((name) => name.endsWith('.json'))
    .map((name) => name.replace(/\.json$/, ''));

function placeOf(file: string): string | null {
  if (existsSync(file) && !statSync(file).isDirectory()) return file;
  const name = file.toLowerCase().trim().replace(/\s+/g, '-');
  return presetNames().includes(name) ? `${PRESETS}${name}.json` : null;
}
