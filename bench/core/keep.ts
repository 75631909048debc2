import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, rmSync, statSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bundle, stateOf } from './bundle.ts';

const root = join(import.meta.dirname, '../..');
export const BASELINE_FOLDER = join(root, 'bench/baseline');

/**
 * Keeps the core of a commit as the baseline that later times are paired with: checks it out beside this tree, puts the
 * present bench/core into it and bundles that. One baseline is kept at a time.
 */
export async function keep(commit: string): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'umbel-baseline-'));
  const git = (...args: string[]) =>
    execFileSync('git', args, { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] });
  git('worktree', 'add', '--detach', folder, commit);
  try {
    symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'));
    const state = stateOf(folder);
    cpSync(join(root, 'bench/core'), join(folder, 'bench/core'), { recursive: true });
    const made = await bundle(folder, BASELINE_FOLDER, state, state);
    for (const old of readdirSync(BASELINE_FOLDER)) {
      if (old.endsWith('.mjs') && old !== `${state}.mjs`) rmSync(join(BASELINE_FOLDER, old));
    }
    return `${made}, ${(statSync(made).size / 1000).toFixed(0)} kB`;
  } finally {
    git('worktree', 'remove', '--force', folder);
  }
}
