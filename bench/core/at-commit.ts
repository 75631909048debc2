import { execFileSync } from 'node:child_process';
import { mkdtempSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export const ROOT = join(import.meta.dirname, '../..');

/** Does something with a commit, checked out beside this tree with the packages of this one. */
export async function atCommit<T>(commit: string, use: (folder: string) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'umbel-commit-'));
  const git = (...args: string[]) => execFileSync('git', args, { cwd: ROOT, stdio: 'ignore' });
  git('worktree', 'add', '--detach', folder, commit);
  try {
    symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'));
    return await use(folder);
  } finally {
    git('worktree', 'remove', '--force', folder);
  }
}
