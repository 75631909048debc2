/**
 * Screenshots for people to look at, into .shots/: every page, light and dark, at several widths, and the states that
 * a page can be in. `--only pulses-1440` takes those whose name holds that text; --readme also refreshes docs/umbel.png.
 */
import { mkdirSync } from 'node:fs';
import { chromium } from 'playwright-core';
import type { Browser, Page } from 'playwright-core';
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
  { name: 'fit', hash: '#fit' },
  { name: 'air-parsley-5', hash: '#air', preset: 'Parsley 5' },
  { name: 'pulses-angelica-14', hash: '#pulses', preset: 'Angelica 14' },
  { name: 'breathing-angelica-14', hash: '#breathing', preset: 'Angelica 14' },
  { name: 'pulses-caraway-1', hash: '#pulses', preset: 'Caraway 1' },
];

const settled = (page: Page): Promise<void> =>
  page.locator('main[data-settled="true"]').waitFor({ timeout: 120_000 });
const openPart = (page: Page, name: string): Promise<void> =>
  page.getByRole('navigation', { name: 'Parts' }).getByRole('button', { name }).click();

/** What is done to a settled page before its picture is taken. */
const states: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  'part-sheet': async (page) => {
    await openPart(page, 'Windows');
    await page.waitForTimeout(200);
  },
  'value-held-back': async (page) => {
    await openPart(page, 'Cylinder');
    await page.getByRole('textbox', { name: 'Bore', exact: true }).fill('400');
  },
  // A worker that cannot go on says so: the last good figures stay.
  'failed-point': async (page) => {
    await page.getByRole('slider', { name: /^throttle/ }).fill('0');
    await page.locator('main:not([data-point="working"])').waitFor({ timeout: 120_000 });
    await settled(page);
  },
  'mid-sweep': async (page) => {
    await page.getByRole('slider', { name: /^throttle/ }).fill('0.6');
    await page.locator('.answer figure.stale').first().waitFor();
  },
  print: (page) => page.emulateMedia({ media: 'print' }),
  'forced-colours': (page) => page.emulateMedia({ forcedColors: 'active' }),
  'more-contrast': (page) => page.emulateMedia({ contrast: 'more' }),
};

const argument = (name: string): string | undefined => {
  const at = process.argv.indexOf(name);
  return at < 0 ? undefined : process.argv[at + 1];
};
const only = argument('--only') ?? '';

interface Shot {
  readonly url: string;
  readonly preset?: string | undefined;
  readonly path: string;
  readonly scheme: (typeof schemes)[number];
  readonly size: { readonly width: number; readonly height: number };
  readonly fullPage: boolean;
  /** After the page has settled. */
  readonly then?: (page: Page) => Promise<void>;
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
  await settled(page);
  await shot.then?.(page);
  await page.screenshot({ path: shot.path, fullPage: shot.fullPage });
  await page.close();
  process.stdout.write(`${shot.path}\n`);
}

/** A crank angle at which the drawing shows most: some windows open, some charges burning. */
async function turnTo(page: Page, angle_deg: number): Promise<void> {
  const cursor = page.getByRole('slider', { name: 'crank angle' }).last();
  await cursor.focus();
  for (let angle = 0; angle < angle_deg; angle += 10) await page.keyboard.press('PageUp');
  await cursor.blur();
}

const served = await serveBuild(0);
const browser = await chromium.launch(launchOptions(findBrowser()));
mkdirSync('.shots', { recursive: true });
const shots = pages.flatMap(({ name, hash, preset }) =>
  sizes.flatMap((size) =>
    schemes.map((scheme): Shot => {
      const path = `.shots/${name}-${size.width}-${scheme}.png`;
      return { url: `${served.url}${hash}`, preset, path, scheme, size, fullPage: size.width < 1000 };
    }),
  ),
);
for (const [name, then] of Object.entries(states)) {
  for (const size of [sizes[0]!, sizes[2]!]) {
    for (const scheme of schemes) {
      const path = `.shots/state-${name}-${size.width}-${scheme}.png`;
      shots.push({ url: served.url, path, scheme, size, fullPage: name === 'print', then });
    }
  }
}
for (const shot of shots) if (shot.path.includes(only)) await take(browser, shot);
if (process.argv.includes('--readme')) {
  await take(browser, {
    url: served.url,
    path: 'docs/umbel.png',
    scheme: 'light',
    size: { width: 1440, height: 900 },
    fullPage: false,
    then: (page) => turnTo(page, 200),
  });
}
await browser.close();
await served.close();
