import { cpSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT, atCommit } from './at-commit.ts';
import { bundle, stateOf } from './bundle.ts';

export const BASELINE_FOLDER = join(ROOT, 'bench/baseline');

/**
 * Keeps the core of a commit and its presets as the baseline that later times are paired with: puts the present bench/core
 * into that commit and bundles it. One baseline is kept at a time.
 *
 * @returns in words, what was made
 */
export const keep = (commit: string): Promise<string> =>
  atCommit(commit, async (folder) => {
    const state = stateOf(folder);
    cpSync(join(ROOT, 'bench/core'), join(folder, 'bench/core'), { recursive: true });
    for (const old of readdirSync(BASELINE_FOLDER)) rmSync(join(BASELINE_FOLDER, old));
    const made = await bundle(folder, BASELINE_FOLDER, state, state);
    writeFileSync(
      join(BASELINE_FOLDER, 'presets.json'),
      JSON.stringify(readPresets(join(folder, 'presets'))),
    );
    return `${made}, ${(statSync(made).size / 1000).toFixed(0)} kB`;
  });

/** Texts of design files by name, such as `lovage-7`. */
export type Presets = Readonly<Record<string, string>>;

export const readPresets = (folder: string): Presets =>
  Object.fromEntries(
    readdirSync(folder)
      .filter((file) => file.endsWith('.json'))
      .map((file) => [
        file.replace(/\.json$/, ''),
        JSON.stringify(JSON.parse(readFileSync(join(folder, file), 'utf8'))),
      ]),
  );
