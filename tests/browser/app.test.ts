import { createRequire } from 'node:module';
import type * as Axe from 'axe-core';
import { chromium } from 'playwright-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchOptions } from '../../scripts/find-browser.ts';
import { readText } from './read-text.ts';

const appUrl = inject('appUrl');
const axePath = createRequire(import.meta.url).resolve('axe-core/axe.min.js');
let browser: Browser;
let page: Page;
const complaints: string[] = [];
const requests: string[] = [];

const heading = (): Promise<string> => readText(page.locator('h2'));
const pointSolved = (): Promise<void> => page.locator('main[data-point="solved"]').waitFor();

beforeAll(async () => {
  browser = await chromium.launch(launchOptions(inject('browserPath')));
  page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('request', (request) => requests.push(request.url()));
  const began = Date.now();
  await page.goto(appUrl);
  await pointSolved();
  process.stdout.write(`first point on the page ${Date.now() - began} ms after the address was entered\n`);
});

afterAll(async () => {
  await browser.close();
});

describe('the page', () => {
  it('opens solved on Lovage 7 and answers that the blower is big enough at 6000 rpm', async () => {
    expect(await page.title()).toBe('Umbel');
    expect(await heading()).toMatch(/^The blower is big enough at 6000 rpm, by \d/);
    expect(await page.getByRole('radio').count()).toBe(7);
  });

  it('follows the speed control: another speed, another answer and another plenum pressure', async () => {
    const before = await page.locator('.detail').innerText();
    await page.getByRole('slider', { name: /^speed/ }).fill('3000');
    await page.locator('h2', { hasText: 'at 3000 rpm' }).waitFor();
    await pointSolved();
    expect(await page.locator('.detail').innerText()).not.toBe(before);
  });

  it('moves the one crank angle of all charts by keyboard: 10 steps and one make 11°', async () => {
    await page.evaluate(() => (location.hash = '#breathing'));
    const angles = page.getByRole('slider', { name: 'crank angle' });
    await angles.nth(1).waitFor();
    await angles.first().focus();
    await page.keyboard.press('PageUp');
    await page.keyboard.press('ArrowRight');
    const texts = await angles.evaluateAll((sliders) =>
      sliders.map((slider) => slider.getAttribute('aria-valuetext')),
    );
    expect(texts.length).toBeGreaterThan(1);
    expect(new Set(texts)).toEqual(new Set(['11°']));
  });

  it('shows another cylinder when its petal is chosen', async () => {
    await page.getByRole('radio', { name: /^cylinder 4:/ }).click();
    await page
      .getByRole('heading', { name: /cylinder A?4/i })
      .first()
      .waitFor();
    await page.evaluate(() => (location.hash = '#air'));
  });

  it('shows the table behind a chart, one row for each cylinder', async () => {
    const frame = page.locator('figure', { hasText: 'Charge of each cylinder' });
    await frame.getByRole('button', { name: /^table/ }).click();
    expect(await frame.locator('tbody tr').count()).toBe(7);
    await frame.getByRole('button', { name: /^table/ }).click();
  });

  it('keeps the curves of the open throttle, marked, until those of a half shut one come, and says so', async () => {
    await page.locator('main[data-settled="true"]').waitFor();
    const frame = page
      .locator('figure')
      .filter({ has: page.getByRole('heading', { name: /^Air over speed/ }) });
    const told = await page.evaluate(async () => {
      const curve = (): string =>
        [...document.querySelectorAll('figure')]
          .find((each) => each.querySelector('h3')?.textContent?.includes('Air over speed'))
          ?.querySelector('path.line')
          ?.getAttribute('d') ?? '';
      const marked = (): boolean => document.querySelector('.answer figure.stale') !== null;
      const before = curve();
      const throttle = [...document.querySelectorAll<HTMLInputElement>('input[type="range"]')][1]!;
      throttle.value = '0.5';
      throttle.dispatchEvent(new Event('input', { bubbles: true }));
      await new Promise(requestAnimationFrame);
      const seen: { old: boolean; marked: boolean; empty: boolean; sentence: string }[] = [];
      while (document.querySelector('main')!.dataset['settled'] !== 'true') {
        const old = curve() === before;
        seen.push({
          old,
          marked: marked(),
          empty: curve() === '',
          sentence: document.querySelector('h2')!.textContent ?? '',
        });
        await new Promise((resolve) => setTimeout(resolve, 5));
      }
      return { seen, changed: curve() !== before };
    });
    const old = told.seen.filter((each) => each.old);
    expect(old.length).toBeGreaterThan(0);
    expect(old.every((each) => each.marked)).toBe(true);
    expect(told.seen.some((each) => each.empty)).toBe(false);
    expect(old.some((each) => /every speed worked out|Short at/.test(each.sentence))).toBe(false);
    expect(old.some((each) => each.sentence.includes('other speeds are being worked out'))).toBe(true);
    expect(told.changed).toBe(true);
    expect(await frame.getByText('earlier figures').count()).toBe(0);
    await page.getByRole('slider', { name: /^throttle/ }).fill('1');
  });

  it('shows Parsley 5 with five cylinders and a blower that is not big enough', async () => {
    await page.getByRole('combobox', { name: 'Example engine' }).selectOption({ label: 'Parsley 5' });
    await page.locator('h2', { hasText: 'not big enough' }).waitFor();
    await pointSolved();
    expect(await page.getByRole('radio').count()).toBe(5);
  });

  it.each([390, 768, 1440, 2560])('fits a window %i px wide without scrolling sideways', async (width) => {
    await page.setViewportSize({ width, height: 900 });
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(overflow).toBeLessThanOrEqual(0);
  });

  it.each(['light', 'dark'] as const)('has no fault that axe-core knows of, %s', async (colorScheme) => {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await page.setViewportSize({ width: 1440, height: 900 });
    await pointSolved();
    await page.addScriptTag({ path: axePath });
    const faults = await page.evaluate(async () => {
      const { axe } = window as unknown as { axe: typeof Axe };
      const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
      const { violations } = await axe.run(document, { runOnly: { type: 'tag', values: tags } });
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' | ')}`);
    });
    expect(faults).toEqual([]);
  });

  it('asks nothing of any origin but its own, and writes no error or warning to the console', () => {
    const own = new URL(appUrl).origin;
    const strangers = requests.filter((url) => /^https?:/.test(url) && new URL(url).origin !== own);
    expect(requests.length).toBeGreaterThan(1);
    expect(strangers).toEqual([]);
    expect(complaints).toEqual([]);
  });
});
