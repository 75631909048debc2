import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { build, preview } from 'vite';
import type { Served } from '../../scripts/serve-build.ts';
import { atCommit } from './at-commit.ts';
import { CACHE } from './cores.ts';

/** The app of an earlier commit, built once and served; null where that commit cannot be had. */
export async function servedApp(commit: string): Promise<Served | null> {
  const outDir = join(CACHE, `app-${commit}`);
  if (!existsSync(join(outDir, 'index.html'))) {
    try {
      await atCommit(commit, (root) =>
        build({
          root,
          configFile: join(root, 'vite.config.ts'),
          logLevel: 'error',
          build: { outDir, emptyOutDir: true },
        }),
      );
    } catch {
      // A copy without its history: there is nothing to pair with.
      return null;
    }
  }
  const server = await preview({
    logLevel: 'warn',
    build: { outDir },
    preview: { host: '127.0.0.1', port: 0, strictPort: false, open: false },
  });
  const url = server.resolvedUrls!.local[0];
  return { url, close: () => server.close() };
}
