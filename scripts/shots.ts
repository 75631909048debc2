/**
 * Screenshots for people to look at: every page, light and dark, at several widths, into .shots/.
 * `--only pulses-1440` takes those whose name holds that text; --readme also refreshes docs/umbel.png.
 */
import { mkdirSync } from 'node:fs';
import { chromium } from 'playwright-core';
import type { Browser } from 'playwright-core';
import { findBrowser, launchOptions } from './find-browser.ts';
import { serveBuild } from './serve-build.ts';

const sizes = [
  { width: 390, height: 844 },
  { width: 768, height: 1024 },
  { width: 1440, height: 900 },
  { width: 2560, height: 1440 },
];
const schemes = ['light', 'dark'] as const;
const pages = [
  { name: 'air', hash: '#air' },
  { name: 'pulses', hash: '#pulses' },
  { name: 'breathing', hash: '#breathing' },
  { name: 'heat', hash: '#heat' },
  { name: 'output', hash: '#output' },
  { name: 'air-parsley-5', hash: '#air', preset: 'Parsley 5' },
  { name: 'pulses-angelica-14', hash: '#pulses', preset: 'Angelica 14' },
  { name: 'breathing-angelica-14', hash: '#breathing', preset: 'Angelica 14' },
  { name: 'pulses-caraway-1', hash: '#pulses', preset: 'Caraway 1' },
];
const onlyAt = process.argv.indexOf('--only');
const only = onlyAt < 0 ? '' : (process.argv[onlyAt + 1] ?? '');

interface Shot {
  readonly url: string;
  readonly preset?: string | undefined;
  readonly path: string;
  readonly scheme: (typeof schemes)[number];
  readonly size: { readonly width: number; readonly height: number };
  readonly fullPage: boolean;
}

async function take(browser: Browser, shot: Shot): Promise<void> {
  const page = await browser.newPage({
    viewport: shot.size,
    colorScheme: shot.scheme,
    reducedMotion: 'reduce',
  });
  await page.goto(shot.url);
  if (shot.preset !== undefined)
    await page.getByRole('combobox', { name: 'Example engine' }).selectOption({ label: shot.preset });
  await page.locator('main[data-settled="true"]').waitFor({ timeout: 120_000 });
  await page.screenshot({ path: shot.path, fullPage: shot.fullPage });
  await page.close();
  process.stdout.write(`${shot.path}\n`);
}

const served = await serveBuild(0);
const browser = await chromium.launch(launchOptions(findBrowser()));
mkdirSync('.shots', { recursive: true });
for (const { name, hash, preset } of pages) {
  for (const size of sizes) {
    for (const scheme of schemes) {
      const path = `.shots/${name}-${size.width}-${scheme}.png`;
      if (path.includes(only))
        await take(browser, { url: `${served.url}${hash}`, preset, path, scheme, size, fullPage: true });
    }
  }
}
if (process.argv.includes('--readme')) {
  const size = { width: 1440, height: 900 };
  await take(browser, { url: served.url, path: 'docs/umbel.png', scheme: 'light', size, fullPage: false });
}
await browser.close();
await served.close();
