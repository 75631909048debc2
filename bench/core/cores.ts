import { createHash } from 'node:crypto';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ROOT } from './at-commit.ts';
import { bundle } from './bundle.ts';
import type * as Bundled from './core.ts';
import { BASELINE_FOLDER, readPresets } from './keep.ts';
import type { Presets } from './keep.ts';

export type Core = typeof Bundled;

/** One state of the project, ready to be run. */
export interface State {
  readonly core: Core;
  /** Where its bundle lies, for threads. */
  readonly path: string;
  /** Changes with its sources, and with nothing else. */
  readonly key: string;
}

/** The two states that a bench pairs. */
export interface Cores {
  readonly present: State;
  readonly baseline: State;
  /** Designs as the baseline knows them: both states are timed with these. */
  readonly kept: Presets;
  readonly presets: Presets;
}

/** Files that a call makes and later ones may use again. */
export const CACHE = join(ROOT, '.bench');

async function load(path: string): Promise<State> {
  const core = (await import(pathToFileURL(path).href)) as Core;
  const sources = readFileSync(path, 'utf8').replace(core.commit, '');
  return { core, path, key: createHash('sha256').update(sources).digest('hex').slice(0, 16) };
}

export async function loadCores(): Promise<Cores> {
  const baseline = readdirSync(BASELINE_FOLDER).find((file) => file.endsWith('.mjs'));
  if (baseline === undefined)
    throw new Error('There is no baseline: npm run bench -- --keep COMMIT makes one.');
  const presentPath = await bundle(ROOT, CACHE, 'present');
  return {
    present: await load(presentPath),
    baseline: await load(join(BASELINE_FOLDER, baseline)),
    kept: JSON.parse(readFileSync(join(BASELINE_FOLDER, 'presets.json'), 'utf8')) as Presets,
    presets: readPresets(join(ROOT, 'presets')),
  };
}
