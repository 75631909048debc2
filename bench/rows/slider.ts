import { chromium } from 'playwright-core';
import type { Browser, Page } from 'playwright-core';
import { findBrowser, launchOptions } from '../../scripts/find-browser.ts';
import { serveBuild } from '../../scripts/serve-build.ts';
import { servedApp } from '../core/built-app.ts';
import { median, quantile } from '../measure.ts';
import { NOTHING, ms } from '../row.ts';
import type { Row, Rows } from '../row.ts';

/** Rounds of both apps in turns, and steps of the slider in each. */
const ROUNDS = 4;
const STEPS = 30;

interface Round {
  /** From the input event to the frame after the one that shows the quick answer, step by step [ms]. */
  readonly quick: readonly number[];
  /** Time between two frames, and tasks of the main thread over 50 ms, while a sweep runs [ms]. */
  readonly frames: readonly number[];
  readonly longTasks: readonly number[];
}

/** A control that moves, in a browser: input to repaint with the quick answer, and what the page does while a sweep runs. */
export const slider: Rows = async function* ({ baseline }) {
  const ours = await serveBuild(0);
  const theirs = await servedApp(baseline.core.commit);
  const browser = await chromium.launch(launchOptions(findBrowser()));
  const rounds: Round[] = [];
  const before: Round[] = [];
  try {
    for (let round = 0; round < ROUNDS; round++) {
      if (theirs && round % 2 === 1) before.push(await moved(browser, theirs.url));
      rounds.push(await moved(browser, ours.url));
      if (theirs && round % 2 === 0) before.push(await moved(browser, theirs.url));
    }
  } finally {
    await browser.close();
    await ours.close();
    await theirs?.close();
  }
  const row = (work: string, aim: string, of: (round: Round) => readonly number[], share: number): Row => {
    const value = (some: readonly Round[]) => quantile(some.flatMap(of), share);
    const each = rounds.map((round) => quantile(of(round), share));
    const was = theirs ? value(before) : 0;
    return {
      ...NOTHING,
      work,
      aim,
      median: ms(value(rounds) / 1000),
      spread: median(each) > 0 ? (Math.max(...each) - Math.min(...each)) / median(each) : null,
      ratio: was > 0 ? value(rounds) / was : null,
    };
  };
  yield row('slider input to quick repaint, 95th percentile', '50 ms', ({ quick }) => quick, 0.95);
  yield row('slider input to quick repaint, median', '', ({ quick }) => quick, 0.5);
  yield row('longest gap between frames in a sweep', '50 ms', ({ frames }) => frames, 1);
  yield row(
    'longest task of the page in a sweep (0: none over 50)',
    '50 ms',
    ({ longTasks }) => [0, ...longTasks],
    1,
  );
};

async function moved(browser: Browser, url: string): Promise<Round> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  // tsx wraps named functions in a helper of its own, which a page that they are sent to lacks.
  await context.addInitScript({ content: 'globalThis.__name = (named) => named;' });
  const page = await context.newPage();
  await page.goto(url);
  const settled = () => page.locator('main[data-settled="true"]').waitFor({ timeout: 120_000 });
  await settled();
  const quick = await quickAnswers(page);
  await settled();
  const round = { quick, ...(await framesOfSweep(page)) };
  await context.close();
  return round;
}

/** Moves the speed step by step; each step waits for the one before to be shown quickly, not for it to settle. */
const quickAnswers = (page: Page): Promise<number[]> =>
  page.evaluate(async (steps) => {
    const slider = document.querySelector<HTMLInputElement>('input[type="range"]')!;
    const standing = document.querySelector<HTMLElement>('[data-standing]')!;
    const found: number[] = [];
    for (let step = 1; step <= steps; step++) {
      slider.value = String(6000 + 50 * step);
      const began = performance.now();
      slider.dispatchEvent(new Event('input', { bubbles: true }));
      await Promise.resolve();
      await new Promise<void>((resolve) => {
        const look = (): void => {
          if (standing.dataset['standing'] === 'behind') requestAnimationFrame(look);
          else requestAnimationFrame(() => resolve());
        };
        requestAnimationFrame(look);
      });
      found.push(performance.now() - began);
    }
    return found;
  }, STEPS);

/** Moves the throttle, which asks for the whole range anew, and watches the frames until all is settled. */
const framesOfSweep = (page: Page): Promise<Pick<Round, 'frames' | 'longTasks'>> =>
  page.evaluate(async () => {
    const main = document.querySelector<HTMLElement>('main')!;
    const throttle = document.querySelectorAll<HTMLInputElement>('input[type="range"]')[1]!;
    const frames: number[] = [];
    const longTasks: number[] = [];
    const observer = new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) longTasks.push(duration);
    });
    observer.observe({ type: 'longtask' });
    throttle.value = '0.9';
    throttle.dispatchEvent(new Event('input', { bubbles: true }));
    await new Promise<void>((resolve) => {
      let last = performance.now();
      const frame = (): void => {
        const now = performance.now();
        frames.push(now - last);
        last = now;
        if (main.dataset['settled'] === 'true' && frames.length > 5) resolve();
        else requestAnimationFrame(frame);
      };
      requestAnimationFrame(frame);
    });
    observer.disconnect();
    return { frames, longTasks };
  });
