import { existsSync, readFileSync, readdirSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readDesign } from '../design/read-design.ts';
import type { Design } from '../design/schema/design.ts';
import { setValues } from '../design/set-value.ts';
import { failure } from '../sim/outcome.ts';
import type { Outcome } from '../sim/outcome.ts';

const PRESETS = fileURLToPath(new URL('../../presets/', import.meta.url));

/**
 * A design from a path or the name of a preset, with changes made to it.
 *
 * @param folder - where a path begins that is not absolute
 */
export function loadDesign(
  file: string,
  changes: readonly { path: string; text: string }[],
  folder = '.',
): Outcome<Design> {
  const path = placeOf(file, folder);
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

function placeOf(file: string, folder: string): string | null {
  const path = resolve(folder, file);
  if (existsSync(path) && !statSync(path).isDirectory()) return path;
  const name = file.toLowerCase().trim().replace(/\s+/g, '-');
  return presetNames().includes(name) ? `${PRESETS}${name}.json` : null;
}
