import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { build } from 'vite';

const git = (folder: string, ...args: string[]): string =>
  execFileSync('git', args, { cwd: folder, encoding: 'utf8' }).trim();

/** Short name of the commit a working tree stands on, with a "+" behind it where what is bundled differs from it. */
export const stateOf = (folder: string): string =>
  git(folder, 'rev-parse', '--short=7', 'HEAD') +
  (git(folder, 'status', '--porcelain', 'src') === '' ? '' : '+');

/**
 * Bundles the core of the working tree in `folder` into `outDir`/`name`.mjs. The earlier and the present state go through
 * this alike, so that neither is favoured by its form.
 *
 * @param readable - keep names and lines, for profiles
 */
export async function bundle(
  folder: string,
  outDir: string,
  name: string,
  state = stateOf(folder),
  readable = false,
): Promise<string> {
  await build({
    root: folder,
    configFile: false,
    logLevel: 'error',
    define: { COMMIT: JSON.stringify(state) },
    ssr: { noExternal: true },
    build: {
      ssr: join(folder, 'bench/core/core.ts'),
      target: 'es2022',
      minify: !readable,
      outDir,
      emptyOutDir: false,
      copyPublicDir: false,
      rolldownOptions: { output: { entryFileNames: `${name}.mjs`, codeSplitting: false } },
    },
  });
  return join(outDir, `${name}.mjs`);
}
