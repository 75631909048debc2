import { chromium } from 'playwright-core';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, inject, it } from 'vitest';
import { launchOptions } from '../../scripts/find-browser.ts';
import { axeFaults } from './axe-faults.ts';

let browser: Browser;
let page: Page;

const settled = (): Promise<void> => page.locator('main[data-settled="true"]').waitFor();

beforeAll(async () => {
  browser = await chromium.launch(launchOptions(inject('browserPath')));
});
beforeEach(async () => {
  page = await browser.newPage({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' });
});
afterEach(async () => {
  await page.close();
});
afterAll(async () => {
  await browser.close();
});

/** Share of a picture that stands out from its upper left corner by a third of the way to black or white. */
async function inked(target: Locator): Promise<number> {
  const picture = (await target.screenshot()).toString('base64');
  return page.evaluate(async (data) => {
    const image = await createImageBitmap(await (await fetch(`data:image/png;base64,${data}`)).blob());
    const context = new OffscreenCanvas(image.width, image.height).getContext('2d')!;
    context.drawImage(image, 0, 0);
    const { data: bytes } = context.getImageData(0, 0, image.width, image.height);
    const off = (i: number): number => Math.max(...[0, 1, 2].map((k) => Math.abs(bytes[i + k]! - bytes[k]!)));
    let count = 0;
    for (let i = 0; i < bytes.length; i += 4) if (off(i) > 85) count++;
    return count / (bytes.length / 4);
  }, picture);
}

describe.each(['light', 'dark'] as const)('under the system’s own colours, %s', (colorScheme) => {
  beforeEach(async () => {
    await page.emulateMedia({ forcedColors: 'active', colorScheme });
    await page.goto(inject('appUrl'));
    await settled();
  });

  it('tracks of sliders, curves, petals and the present page stand out from the paper', async () => {
    // A track is 4 px of 24 px, open over its whole length; a curve 2 px of some 250 px.
    expect(await inked(page.getByRole('slider', { name: /^throttle/ }))).toBeGreaterThan(0.12);
    expect(
      await inked(page.locator('figure', { hasText: 'Air over speed' }).locator('svg .line').first()),
    ).toBeGreaterThan(0.02);
    expect(await inked(page.getByRole('radio').first())).toBeGreaterThan(0.15);
    expect(
      await inked(page.getByRole('navigation', { name: 'Questions' }).getByRole('link').first()),
    ).toBeGreaterThan(0.4);
  });

  it('the focus shows: on a button as a ring, on a slider of a chart, on a petal', async () => {
    const rings: number[] = [];
    for (const target of [
      page.getByRole('button', { name: 'turn', exact: true }),
      page.getByRole('slider', { name: 'crank angle' }).first(),
      page.getByRole('radio', { checked: true }),
    ]) {
      const box = (await target.boundingBox())!;
      const clip = { x: box.x - 6, y: box.y - 6, width: box.width + 12, height: box.height + 12 };
      await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
      const before = await page.screenshot({ clip });
      // A key first, so that the browser takes it for a focus by keyboard.
      await page.keyboard.press('Tab');
      await target.focus();
      const after = await page.screenshot({ clip });
      rings.push(before.equals(after) ? 0 : 1);
    }
    expect(rings).toEqual([1, 1, 1]);
  });
});

describe('with more contrast', () => {
  it('words on paper reach 7 : 1, by WCAG 1.4.6', async () => {
    await page.emulateMedia({ contrast: 'more', colorScheme: 'light' });
    await page.goto(inject('appUrl'));
    await settled();
    const ratios = await page.evaluate(() => {
      const luminance = (colour: string): number => {
        const context = new OffscreenCanvas(1, 1).getContext('2d')!;
        context.fillStyle = colour;
        context.fillRect(0, 0, 1, 1);
        const [r, g, b] = [...context.getImageData(0, 0, 1, 1).data].map((byte) => {
          const share = byte / 255;
          return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
        }) as [number, number, number];
        return 0.2126 * r + 0.7152 * g + 0.0722 * b;
      };
      const paper = luminance(getComputedStyle(document.documentElement).backgroundColor);
      return ['.detail', '.caption', '.enough', 'h2'].map((selector) => {
        const words = luminance(getComputedStyle(document.querySelector(selector)!).color);
        return (Math.max(paper, words) + 0.05) / (Math.min(paper, words) + 0.05);
      });
    });
    expect(Math.min(...ratios)).toBeGreaterThan(7);
    expect(await axeFaults(page)).toEqual([]);
  });
});

describe('on paper', () => {
  beforeEach(async () => {
    await page.emulateMedia({ colorScheme: 'dark' });
    await page.goto(inject('appUrl'));
    await settled();
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    await page.getByRole('heading', { name: 'Inputs of Lovage 7' }).waitFor();
  });

  it('shows the sentence, every input and the cautions, and nothing that waits for a hand', async () => {
    expect(await page.getByRole('heading', { level: 2 }).isVisible()).toBe(true);
    expect(await page.getByRole('row', { name: 'Bore 40 mm', exact: true }).isVisible()).toBe(true);
    expect(await page.getByText('Lovage 7, 6000 rpm, throttle open').first().isVisible()).toBe(true);
    expect(await page.locator('.limits', { hasText: 'can explode' }).isVisible()).toBe(true);
    for (const waiting of ['nav', 'input', '.ways', '.controls', '.bar'])
      expect(await page.locator(waiting).filter({ visible: true }).count()).toBe(0);
  });

  it('takes light paper and dark ink, whatever the screen had', async () => {
    const [paper, ink] = await page.evaluate(() => {
      const { backgroundColor, color } = getComputedStyle(document.documentElement);
      return [backgroundColor, color];
    });
    expect(paper).toBe('rgb(255, 255, 255)');
    expect(ink).toBe('rgb(31, 45, 58)');
  });

  it('fits drawings into the width of a page of A4, 184 mm', async () => {
    await page.setViewportSize({ width: 695, height: 1000 });
    const widest = await page
      .locator('figure svg[role]')
      .evaluateAll((drawings) => Math.max(...drawings.map((each) => each.getBoundingClientRect().right)));
    expect(widest).toBeLessThanOrEqual(695);
  });
});
