import { chromium } from 'playwright-core';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, afterEach, describe, expect, inject, it } from 'vitest';
import { launchOptions } from '../../scripts/find-browser.ts';
import { readText } from './read-text.ts';

const appUrl = inject('appUrl');
let browser: Browser;
let context: BrowserContext;
let page: Page;

/** What the test keeps on the page, ahead of the app: every worker that it starts, and when things were seen. */
interface Watch {
  readonly workers: Worker[];
  seen: Record<string, number>;
}
type Watched = typeof globalThis & { watch: Watch };

const print = (line: string): void => void process.stdout.write(`${line}\n`);
const milliseconds = (value: number | undefined): string => `${Math.round(value ?? Number.NaN)} ms`;
const pointSolved = (): Promise<void> => page.locator('main[data-point="solved"]').waitFor();

beforeAll(async () => {
  browser = await chromium.launch(launchOptions(inject('browserPath')));
});

beforeEach(async () => {
  context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  await context.addInitScript(() => {
    const workers: Worker[] = [];
    const watch: Watch = { workers, seen: {} };
    Object.assign(globalThis, { watch });
    globalThis.Worker = class extends Worker {
      constructor(url: string | URL, options?: WorkerOptions) {
        super(url, options);
        workers.push(this);
        watch.seen['worker started'] ??= performance.now();
      }
    };
    new MutationObserver(() => {
      const note = (name: string, selector: string): void => {
        if (document.querySelector(selector)) watch.seen[name] ??= performance.now();
      };
      note('page mounted', 'main');
      note('quick answer', '[data-standing="settling"]');
      note('settled answer', 'main[data-point="solved"]');
    }).observe(document, { childList: true, subtree: true, attributes: true });
  });
  page = await context.newPage();
});

afterEach(async () => {
  await context.close();
});

afterAll(async () => {
  await browser.close();
});

describe('opening the page', () => {
  it('starts its workers before the page is drawn, and comes to a settled answer', async () => {
    await page.goto(appUrl);
    await pointSolved();
    const { seen, paint, files } = await page.evaluate(() => ({
      seen: (globalThis as Watched).watch.seen,
      paint: performance.getEntriesByType('paint').map(({ name, startTime }) => ({ name, startTime })),
      files: (performance.getEntriesByType('resource') as PerformanceResourceTiming[]).map((file) => ({
        name: file.name.replace(/^.*\//, ''),
        from: Math.round(file.startTime),
        to: Math.round(file.responseEnd),
        size: file.decodedBodySize,
      })),
    }));
    print('opening, after the navigation began:');
    for (const { name, startTime } of paint) print(`  ${name}: ${milliseconds(startTime)}`);
    for (const [name, at] of Object.entries(seen)) print(`  ${name}: ${milliseconds(at)}`);
    for (const { name, from, to, size } of files) print(`  ${name}: ${from} to ${to} ms, ${size} bytes`);
    expect(seen['worker started']).toBeLessThan(seen['page mounted']!);
    expect(seen['settled answer']).toBeGreaterThan(seen['page mounted']!);
  });
});

describe('a control that moves', () => {
  it('shows quick answers while it moves, marked as settling, and ends on the settled answer of the last place', async () => {
    await page.goto(appUrl);
    await page.locator('main[data-settled="true"]').waitFor();
    const delays = await page.evaluate(async () => {
      const slider = document.querySelector<HTMLInputElement>('input[type="range"]')!;
      const standing = document.querySelector<HTMLElement>('[data-standing]')!;
      const found: { quick: number; settled: number; words: string }[] = [];
      // A quick answer may stand for less than a frame when the settled one follows at once.
      let words: string;
      const standings = new MutationObserver(() => {
        if (standing.dataset['standing'] === 'settling') words = standing.textContent?.trim() ?? '';
      });
      standings.observe(standing, { attributes: true, childList: true, characterData: true, subtree: true });
      const until = (name: string): Promise<number> =>
        new Promise((resolve) => {
          const look = (): void => {
            const now = standing.dataset['standing'];
            if (now === name || now === 'settled') requestAnimationFrame(() => resolve(performance.now()));
            else requestAnimationFrame(look);
          };
          requestAnimationFrame(look);
        });
      for (let speed = 6050; speed <= 7000; speed += 50) {
        slider.value = String(speed);
        slider.dispatchEvent(new Event('input', { bubbles: true }));
        const began = performance.now();
        words = '';
        await Promise.resolve();
        const quick = (await until('settling')) - began;
        const settled = (await until('settled')) - began;
        found.push({ quick, words, settled });
      }
      return found;
    });
    const quantile = (values: number[], share: number): number =>
      values.sort((a, b) => a - b)[Math.ceil(share * values.length) - 1]!;
    for (const name of ['quick', 'settled'] as const) {
      const times = delays.map((delay) => delay[name]);
      print(
        `input to repaint, ${name} answer: median ${milliseconds(quantile(times, 0.5))}, ` +
          `95 % within ${milliseconds(quantile(times, 0.95))}, of ${times.length} steps of 50 rpm`,
      );
    }
    expect(delays.filter(({ words }) => words.startsWith('quick answer, settling')).length).toBeGreaterThan(
      10,
    );

    await page.evaluate(async () => {
      const slider = document.querySelector<HTMLInputElement>('input[type="range"]')!;
      for (let speed = 7000; speed >= 4000; speed -= 25) {
        slider.value = String(speed);
        slider.dispatchEvent(new Event('input', { bubbles: true }));
        await new Promise((resolve) => setTimeout(resolve, 16));
      }
    });
    await page.locator('[data-standing="settled"]').waitFor();
    expect(await readText(page.locator('h2').first())).toContain('4000 rpm');
  });
});

describe('a worker that dies in a sweep', () => {
  const sweepShown = () => page.locator('main[data-settled="true"]').waitFor({ timeout: 100_000 });
  const pointsInTable = async (): Promise<number> => {
    await page.getByRole('button', { name: /table of: Air over speed|table.*Air over speed/ }).click();
    return page.locator('figure', { hasText: 'Air over speed' }).locator('tbody tr').count();
  };

  it('with an error is replaced, the sweep completes and the page says so', async () => {
    await page.goto(appUrl);
    await pointSolved();
    await page.evaluate(() => {
      const worker = (globalThis as Watched).watch.workers[0]!;
      worker.terminate();
      worker.dispatchEvent(new ErrorEvent('error', { message: 'out of memory', cancelable: true }));
    });
    await page.getByText(/started again: out of memory/).waitFor();
    await sweepShown();
    expect(await page.evaluate(() => (globalThis as Watched).watch.workers.length)).toBeGreaterThan(1);
    expect(await pointsInTable()).toBeGreaterThanOrEqual(10);
  });

  it('without a word is noticed by its silence, replaced, and the sweep completes', async () => {
    await page.goto(appUrl);
    await pointSolved();
    await page.evaluate(() => (globalThis as Watched).watch.workers.forEach((worker) => worker.terminate()));
    await page
      .getByText(/started again: A worker gave no sign of life for 10 s/)
      .waitFor({ timeout: 40_000 });
    await sweepShown();
    expect(await pointsInTable()).toBeGreaterThanOrEqual(10);
  });
});

describe('another engine chosen while a sweep runs', () => {
  it('never shows a figure of the old one: each speed of the table is one of the new range', async () => {
    await page.goto(appUrl);
    await page.locator('[data-standing]').waitFor();
    await page.getByRole('combobox', { name: 'Example engine' }).selectOption({ label: 'Parsley 5' });
    // Lovage 7 opens at 6000 rpm, Parsley 5 at 5000: whatever is said from now on is said of the latter.
    expect(await readText(page.locator('h2').first())).not.toContain('6000 rpm');
    await page.getByRole('button', { name: /table.*Air over speed/ }).click();
    const speeds = new Set<number>();
    for (let settled = false; !settled;) {
      settled = await page.locator('main[data-settled="true"]').isVisible();
      const cells = page.locator('figure', { hasText: 'Air over speed' }).locator('tbody tr td:first-child');
      for (const text of await cells.allInnerTexts()) speeds.add(Number(text.replace(/[^\d.]/g, '')));
      await page.waitForTimeout(50);
    }
    expect(await page.getByRole('radio').count()).toBe(5);
    expect(speeds.size).toBeGreaterThan(3);
    expect(speeds.has(9500)).toBe(false);
  });
});
