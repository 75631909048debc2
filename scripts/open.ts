/** Serves the built app on this machine, prints its address and asks the desktop to open it. */
import { spawn } from 'node:child_process';
import { serveBuild } from './serve-build.ts';

function openInBrowser(url: string): void {
  const opener = { darwin: 'open', win32: 'explorer' }[process.platform as string] ?? 'xdg-open';
  const child = spawn(opener, [url], { stdio: 'ignore', detached: true });
  child.on('error', () => undefined); // no desktop: the printed address is enough
  child.unref();
}

const served = await serveBuild(4173);
process.stdout.write(`Umbel is at ${served.url}   (Ctrl+C ends it)\n`);
if (!process.argv.includes('--no-browser')) openInBrowser(served.url);

for (const signal of ['SIGINT', 'SIGTERM'] as const) {
  process.once(signal, () => {
    void served.close().then(() => process.exit(0));
  });
}
