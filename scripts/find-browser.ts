import { spawnSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from 'playwright-core';
import type { LaunchOptions } from 'playwright-core';

const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome'];
const besidesPath = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
];

function canRun(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

const isRoot = (): boolean => process.getuid?.() === 0;

function installedBrowser(): string | undefined {
  const folders = (process.env['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '');
  const onPath = folders.flatMap((folder) => names.map((name) => join(folder, name)));
  return [...onPath, ...besidesPath, chromium.executablePath()].find(canRun);
}

function attempt(command: string, args: readonly string[]): boolean {
  process.stderr.write(`No Chromium or Chrome found, trying: ${command} ${args.join(' ')}\n`);
  return spawnSync(command, args, { stdio: ['ignore', 2, 2], timeout: 600_000 }).status === 0;
}

/**
 * Path of the browser that the browser tests and the screenshots drive: what UMBEL_BROWSER names, else an
 * installed Chromium or Chrome, else Playwright's own download, else Debian's package when run as root.
 * Throws with words for a person when none of them can be had.
 */
export function findBrowser(): string {
  const named = process.env['UMBEL_BROWSER'];
  if (named !== undefined && named !== '') {
    if (canRun(named)) return named;
    throw new Error(`UMBEL_BROWSER names ${named}, which is not a program that can be run.`);
  }
  const installed = installedBrowser();
  if (installed !== undefined) return installed;

  if (attempt(process.execPath, ['node_modules/playwright-core/cli.js', 'install', 'chromium'])) {
    const downloaded = installedBrowser();
    // A downloaded browser may still lack system libraries; one that cannot say its version is of no use.
    if (downloaded !== undefined && spawnSync(downloaded, ['--version']).status === 0) return downloaded;
  }
  if (isRoot() && attempt('apt-get', ['update', '-q'])) {
    attempt('apt-get', ['install', '-y', '-q', '--no-install-recommends', 'chromium']);
    const packaged = names.map((name) => join('/usr/bin', name)).find(canRun);
    if (packaged !== undefined) return packaged;
  }
  throw new Error(
    'The browser tests need Chromium or Chrome. Install either (on Debian: apt-get install chromium), ' +
      'or set UMBEL_BROWSER to the path of one.',
  );
}

/** How to launch it so that it talks to nobody but the page. Playwright gives each launch a fresh profile. */
export function launchOptions(executablePath: string): LaunchOptions {
  const quiet = [
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ];
  return { executablePath, args: isRoot() ? ['--no-sandbox', ...quiet] : quiet };
}
