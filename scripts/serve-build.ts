import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, preview } from 'vite';

export interface Served {
  readonly url: string;
  close(): Promise<void>;
}

/**
 * Builds the app into a folder of its own, so that runs side by side do not disturb each other, and serves it on
 * this machine only. Takes the given port or, when that is busy, the next free one. Other pages than the app's, such as
 * the gallery, are built when they are named.
 */
export async function serveBuild(port: number, page = 'index.html'): Promise<Served> {
  const outDir = mkdtempSync(join(tmpdir(), 'umbel-app-'));
  await build({ logLevel: 'warn', build: { outDir, emptyOutDir: true, rolldownOptions: { input: page } } });
  const server = await preview({
    logLevel: 'warn',
    build: { outDir },
    preview: { host: '127.0.0.1', port, strictPort: false, open: false },
  });
  const url = server.resolvedUrls?.local[0];
  if (url === undefined) throw new Error('The preview server does not say where it listens.');
  return {
    url,
    close: async () => {
      await server.close();
      rmSync(outDir, { recursive: true, force: true });
    },
  };
}
