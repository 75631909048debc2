import { chromium } from 'playwright-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchOptions } from '../../scripts/find-browser.ts';
import { serveBuild } from '../../scripts/serve-build.ts';
import type { Served } from '../../scripts/serve-build.ts';
import { axeFaults } from './axe-faults.ts';

let browser: Browser;
let page: Page;
let served: Served;
const complaints: string[] = [];

beforeAll(async () => {
  served = await serveBuild(0, 'gallery.html');
  browser = await chromium.launch(launchOptions(inject('browserPath')));
  page = await browser.newPage({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' });
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(`${served.url}gallery.html`);
  await page.locator('figure').first().waitFor();
});

afterAll(async () => {
  await browser.close();
  await served.close();
});

describe('charts with extreme figures', () => {
  it('write no NaN, undefined or Infinity, neither in words nor into a drawing', async () => {
    const text = await page.locator('main').innerText();
    expect(text).not.toMatch(/NaN|undefined|Infinity/);
    const attributes = await page
      .locator('main svg *, main svg')
      .evaluateAll((elements) =>
        elements
          .flatMap((element) =>
            [...element.attributes].map((each) => `${element.tagName} ${each.name}=${each.value}`),
          )
          .filter((text) => /NaN|undefined|Infinity/.test(text)),
      );
    expect(attributes).toEqual([]);
  });

  it('write no number with an e', async () => {
    const text = await page.locator('main').innerText();
    expect(text.match(/\d[eE][+−-]?\d+/g)).toBeNull();
  });

  it('make room for a pinned result that lies far outside the present one', async () => {
    const chart = page.locator('figure', { hasText: 'Lines against a pin: gaps and huge' });
    await chart.scrollIntoViewIfNeeded();
    await chart.locator('.axis text').first().waitFor();
    expect((await chart.locator('.axis text').allTextContents()).join(' ')).toMatch(/2×10⁶/);
    expect(await chart.locator('circle.pinned').count()).toBe(4);
  });

  it('draw engines of one and of 28 cylinders, and say at its field what cannot be used', async () => {
    const engine = (name: string) => page.locator('figure', { hasText: `Engine: ${name}` });
    expect(await engine('one cylinder').getByRole('radio').count()).toBe(1);
    expect(await engine('28 in four rows').getByRole('radio').count()).toBe(28);
    const fields = page.getByRole('region', { name: 'Sheet: Cylinder' });
    expect(await fields.locator('[aria-invalid="true"]').count()).toBe(2);
    expect(await fields.locator('.fault').allInnerTexts()).toEqual([
      expect.stringMatching(/allowed/),
      expect.stringMatching(/does not begin with a number/),
    ]);
  });

  it('turn to dark paper and back by their own switch', async () => {
    const paper = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
    await page.getByRole('button', { name: 'light', exact: true }).click();
    expect(await paper()).toBe('rgb(252, 250, 246)');
    await page.getByRole('button', { name: 'dark', exact: true }).click();
    expect(await paper()).toBe('rgb(20, 25, 29)');
    await page.getByRole('button', { name: 'as the system' }).click();
  });

  it.each([390, 1440])('fit a window %i px wide without scrolling sideways', async (width) => {
    await page.setViewportSize({ width, height: 900 });
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(overflow).toBeLessThanOrEqual(0);
  });

  it.each(['light', 'dark'] as const)('have no fault that axe-core knows of, %s', async (colorScheme) => {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    // What is stale is dimmed on purpose; it comes back to full contrast with its answer.
    await page.addStyleTag({ content: '.stale, .stale > * { opacity: 1 !important; }' });
    expect(await axeFaults(page)).toEqual([]);
  });

  it('write no error or warning to the console', () => {
    expect(complaints).toEqual([]);
  });

  it('are not shipped with the app', async () => {
    const reply = await (await fetch(`${inject('appUrl')}gallery.html`)).text();
    expect(reply).not.toContain('gallery');
  });
});
