import { readFile } from 'node:fs/promises';
import { chromium } from 'playwright-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchOptions } from '../../scripts/find-browser.ts';

const appUrl = inject('appUrl');
let browser: Browser;
let page: Page;
const complaints: string[] = [];

const settled = (): Promise<void> => page.locator('main[data-settled="true"]').waitFor();
const open = async (id: string): Promise<void> => {
  await page.evaluate((hash) => (location.hash = hash), `#${id}`);
  await page.locator(`main[data-page="${id}"]`).waitFor();
};
const chart = (title: string) =>
  page.locator('figure').filter({ has: page.getByRole('heading', { name: title, exact: true }) });

/** The file that a button hands out. */
async function saved(title: string, form: 'CSV' | 'SVG' | 'PNG'): Promise<{ name: string; bytes: Buffer }> {
  await chart(title).getByRole('button', { name: 'save as a file' }).click();
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: `${form} of: ${title}` }).click();
  const download = await waiting;
  return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
}

beforeAll(async () => {
  browser = await chromium.launch(launchOptions(inject('browserPath')));
  page = await browser.newPage({
    viewport: { width: 1440, height: 900 },
    reducedMotion: 'reduce',
    colorScheme: 'dark',
  });
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(appUrl);
  await settled();
});

afterAll(async () => {
  await browser.close();
});

describe('a saved drawing', () => {
  /** What a document says when a browser reads it by itself. */
  const read = (svg: string) =>
    page.evaluate((text) => {
      const parsed = new DOMParser().parseFromString(text, 'image/svg+xml');
      const all = [...parsed.querySelectorAll('*')];
      const values = all.flatMap((element) =>
        [...element.attributes].filter(({ name }) => name !== 'xmlns').map((each) => each.value),
      );
      const inner = values.flatMap((value) =>
        [...value.matchAll(/url\(['"]?#([^)'"]+)['"]?\)/g)].map((m) => m[1]!),
      );
      return {
        fault: parsed.querySelector('parsererror')?.textContent ?? '',
        texts: all.filter(({ tagName }) => tagName === 'text').map((each) => each.textContent?.trim() ?? ''),
        paths: all.filter(({ tagName }) => tagName === 'path').map((each) => each.getAttribute('d') ?? ''),
        dangling: inner.filter((id) => parsed.getElementById(id) === null),
        values,
        size: [
          parsed.documentElement.getAttribute('width'),
          parsed.documentElement.getAttribute('height'),
        ].map(Number),
      };
    }, svg);

  it.each([
    [
      'air',
      'Air over speed',
      ['delivered', 'kept', 'wanted 1.00', 'crank speed, rpm', 'at ambient density, × swept volume'],
    ],
    ['pulses', 'Firing round the turn', ['exhaust opens', 'transfer opens', '7']],
    ['breathing', 'Windows, cylinder 1', ['exhaust', 'transfer', 'open area, mm²', 'crank angle']],
    ['breathing', 'Pressure and volume, cylinder 1', ['pressure, bar', 'volume, cc']],
    ['heat', 'Heat into the walls, cylinder by cylinder', ['crown', 'mean over the turn, W']],
    ['output', 'Where the fuel’s energy goes, 6000 rpm', []],
    ['air', 'Charge of each cylinder', ['delivered', '7']],
    ['air', 'One turn of the crank, cylinder by cylinder', ['cylinder pressure', '360°']],
  ])('stands alone: %s, %s', async (id, title, words) => {
    await open(id);
    const { name, bytes } = await saved(title, 'SVG');
    expect(name).toMatch(/^[a-z0-9-]+\.svg$/);
    const text = bytes.toString('utf8');
    const svg = await read(text);
    expect(svg.fault).toBe('');
    expect(svg.texts).toEqual(expect.arrayContaining([title, ...words]));
    expect(svg.texts.join('\n')).toMatch(/Lovage 7.*6000 rpm/);
    expect(svg.dangling).toEqual([]);
    expect(text).not.toMatch(/NaN|undefined|var\(|light-dark|color-mix|oklab/);
    const strangers = svg.values.filter((value) => /^(https?:|blob:|file:|data:|\/)/.test(value));
    expect(strangers).toEqual([]);
    const shapes = (text.match(/<(path|rect|circle)\b/g) ?? []).length;
    expect(shapes).toBeGreaterThan(1);
  });

  it('is drawn on light paper while the page is dark, with the same lines', async () => {
    await open('air');
    const drawn = await chart('Air over speed')
      .locator('svg[role] path.line')
      .evaluateAll((lines) => lines.map((each) => each.getAttribute('d')));
    const svg = await read((await saved('Air over speed', 'SVG')).bytes.toString('utf8'));
    expect(drawn.length).toBe(2);
    expect(svg.paths).toEqual(expect.arrayContaining(drawn));
    expect(svg.values).toContain('rgb(252, 250, 246)');
    expect(svg.values).not.toContain('rgb(20, 25, 29)');
  });

  it('as PNG has two dots for each unit of the SVG and is not blank', async () => {
    const { bytes } = await saved('Air over speed', 'PNG');
    const { size } = await read((await saved('Air over speed', 'SVG')).bytes.toString('utf8'));
    expect(bytes.subarray(1, 4).toString('latin1')).toBe('PNG');
    expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual(size.map((each) => 2 * each));
    const colours = await page.evaluate(async (base64) => {
      const image = await createImageBitmap(await (await fetch(`data:image/png;base64,${base64}`)).blob());
      const canvas = new OffscreenCanvas(image.width, image.height);
      const context = canvas.getContext('2d')!;
      context.drawImage(image, 0, 0);
      const { data } = context.getImageData(0, 0, image.width, image.height);
      const seen = new Set<string>();
      for (let i = 0; i < data.length; i += 4) seen.add(`${data[i]},${data[i + 1]},${data[i + 2]}`);
      return [...seen];
    }, bytes.toString('base64'));
    // Paper, and the colour of fresh charge.
    expect(colours.includes('252,250,246')).toBe(true);
    expect(colours.includes('20,122,124')).toBe(true);
  });

  it('can be had while the table hides it, by keyboard alone, and says so', async () => {
    const frame = chart('Slip over speed');
    await frame.getByRole('button', { name: /^table of/ }).click();
    await frame.getByRole('button', { name: 'save as a file' }).focus();
    await page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    const waiting = page.waitForEvent('download');
    await page.keyboard.press('Enter');
    expect((await waiting).suggestedFilename()).toBe('slip-over-speed.svg');
    await frame.getByText('Saved as slip-over-speed.svg.').waitFor({ state: 'attached' });
  });
});

describe('all this', () => {
  it('writes no error or warning to the console', () => {
    expect(complaints).toEqual([]);
  });
});
