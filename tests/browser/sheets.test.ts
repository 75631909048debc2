import { createRequire } from 'node:module';
import type * as Axe from 'axe-core';
import { chromium } from 'playwright-core';
import type { Browser, BrowserContext, Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, inject, it } from 'vitest';
import { launchOptions } from '../../scripts/find-browser.ts';

const appUrl = inject('appUrl');
const axePath = createRequire(import.meta.url).resolve('axe-core/axe.min.js');
let browser: Browser;
let context: BrowserContext;
let page: Page;

const solved = (): Promise<void> => page.locator('main[data-point="solved"]').waitFor();
const detail = (): Promise<string> => page.locator('.detail').innerText();
const openPart = (name: string): Promise<void> =>
  page
    .getByRole('navigation', { name: 'Parts' })
    .getByRole('button', { name: new RegExp(`^${name}`) })
    .click();
const bore = (): Locator => page.getByRole('textbox', { name: 'Bore', exact: true });
const fieldOf = (entry: Locator): Locator => page.locator('.field', { has: entry });
const dimmed = (): Promise<string | null> => page.locator('main').getAttribute('data-behind');
const unfold = (): Promise<void> =>
  page.locator('.sheet details').evaluateAll((all) => {
    for (const fold of all) (fold as HTMLDetailsElement).open = true;
  });
/** The speed in what the browser keeps of this page. */
const keptSpeed = (): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const opening = indexedDB.open('umbel');
        opening.onsuccess = () => {
          const store = opening.result.transaction('bench').objectStore('bench');
          const found = store.get('present') as IDBRequest<{ speed_rpm: number } | undefined>;
          found.onsuccess = () => {
            opening.result.close();
            resolve(found.result?.speed_rpm ?? NaN);
          };
        };
      }),
  );

beforeAll(async () => {
  browser = await chromium.launch(launchOptions(inject('browserPath')));
});
beforeEach(async () => {
  context = await browser.newContext({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' });
  page = await context.newPage();
  await page.goto(appUrl);
  await solved();
});
afterEach(async () => {
  await context.close();
});
afterAll(async () => {
  await browser.close();
});

describe('a field', () => {
  it('takes a bore of “2 in”, shows 50.8 mm beside it, and another answer follows', async () => {
    const before = await detail();
    await openPart('Cylinder');
    await bore().fill('2 in');
    await page.getByText('50.8 mm', { exact: true }).waitFor();
    await solved();
    expect(await bore().inputValue()).toBe('2 in');
    expect(await detail()).not.toBe(before);
    expect(await bore().getAttribute('aria-invalid')).toBe('false');
  });

  it.each([
    ['-3', 'Bore is −3 mm; allowed 15 to 150 mm'],
    ['abc', '“abc” does not begin with a number; allowed 15 to 150 mm'],
    ['9e9', 'Bore is 9\u202f×\u202f10⁹ mm; allowed 15 to 150 mm'],
  ])('keeps the last result, marked as such, for a bore of “%s”, and says: %s', async (text, message) => {
    const before = await detail();
    await openPart('Cylinder');
    await bore().fill(text);
    expect(await fieldOf(bore()).locator('.fault').innerText()).toBe(message);
    expect(await bore().getAttribute('aria-invalid')).toBe('true');
    const described = (await bore().getAttribute('aria-describedby'))!.split(' ')[0]!;
    expect(await page.locator(`[id="${described}"]`).innerText()).toBe(message);
    expect(await dimmed()).toBe('true');
    expect(await page.locator('.lead.stale').count()).toBe(1);
    expect(await detail()).toBe(before);
    await bore().fill('40');
    await expect.poll(dimmed).toBe('false');
  });

  it('remarks on a bore of 90 mm, which is allowed but not usual', async () => {
    await openPart('Cylinder');
    await bore().fill('90');
    expect(await fieldOf(bore()).locator('.remark').innerText()).toBe(
      'Bore is 90 mm; usual are 30 mm to 80 mm',
    );
  });

  it('tells its source, and returns to its default, from one button', async () => {
    await openPart('Cylinder');
    const ratio = page.getByRole('textbox', { name: 'Compression ratio', exact: true });
    await page.getByRole('button', { name: 'About: Compression ratio', exact: true }).click();
    const help = await fieldOf(ratio).locator('.help').innerText();
    expect(help).toContain('Source: typical, 6 to 7.5 from exhaust closing on petrol.');
    expect(help).toContain('Default: 7.');
    await page.getByRole('button', { name: 'back to the default : Compression ratio' }).click();
    expect(await ratio.inputValue()).toBe('7');
  });

  it('shows the angle that follows from a depth typed for the top edge of a window', async () => {
    await openPart('Windows');
    const depth = page.getByRole('textbox', { name: 'Top edge below the deck, group 1' }).first();
    const angle = page.getByRole('textbox', { name: 'Opens, group 1' }).first();
    expect(await angle.inputValue()).toBe('98');
    await depth.fill('28');
    expect(await angle.inputValue()).toBe('');
    expect(Number(await angle.getAttribute('placeholder'))).toBeGreaterThan(98);
  });
});

describe('undo and redo', () => {
  it('take back a typed value as one step, with the answer that belonged to it, and bring it again', async () => {
    const before = await detail();
    await openPart('Cylinder');
    await bore().fill('');
    await bore().pressSequentially('45');
    await solved();
    await expect.poll(detail).not.toBe(before);
    await page.keyboard.press('Control+z');
    expect(await bore().inputValue()).toBe('40');
    await solved();
    await expect.poll(detail).toBe(before);
    await page.getByRole('button', { name: 'redo' }).click();
    expect(await bore().inputValue()).toBe('45');
  });

  it('bring back the design that stood before another example was opened', async () => {
    await openPart('Cylinder');
    await bore().fill('41.5');
    await page.getByRole('combobox', { name: 'Example engine' }).selectOption({ label: 'Parsley 5' });
    expect(await bore().inputValue()).not.toBe('41.5');
    await page.getByRole('button', { name: 'undo' }).click();
    expect(await bore().inputValue()).toBe('41.5');
    expect(await page.getByRole('radio').count()).toBe(7);
  });
});

describe('the page opened anew', () => {
  it('goes on with what was typed, faulty words and undone steps included', async () => {
    await openPart('Cylinder');
    await bore().fill('2 in');
    await page.getByRole('textbox', { name: 'Deck clearance' }).fill('as it was');
    await page.getByRole('slider', { name: /^speed/ }).fill('4000');
    await expect.poll(keptSpeed).toBe(4000);
    await page.reload();
    await page.locator('h2', { hasText: 'at 4000 rpm' }).waitFor();
    await page.getByRole('button', { name: 'Deck clearance: “as it was”' }).click();
    const clearance = page.getByRole('textbox', { name: 'Deck clearance' });
    expect(await clearance.inputValue()).toBe('as it was');
    expect(await clearance.evaluate((entry) => entry === document.activeElement)).toBe(true);
    expect(await bore().inputValue()).toBe('2 in');
    await page.getByRole('button', { name: 'undo' }).click();
    expect(await clearance.inputValue()).toBe('1');
  });

  it('works where the browser lets nothing be kept', async () => {
    await context.addInitScript(() => Reflect.defineProperty(window, 'indexedDB', { value: undefined }));
    await page.reload();
    await solved();
    await page.getByText('not kept by this browser: save to a file').waitFor();
    await openPart('Cylinder');
    await bore().fill('2 in');
    await page.getByText('50.8 mm', { exact: true }).waitFor();
  });
});

describe('a design file', () => {
  const chooser = () => page.getByLabel('Design file');

  it('with faults is not opened: each is listed with its path, and nothing changes', async () => {
    const before = await detail();
    const text = JSON.stringify({
      version: 1,
      cylinder: { bore_mm: -3, deckClearance: 1 },
      blower: { lobes: 2.5 },
    });
    await chooser().setInputFiles({
      name: 'faulty.json',
      mimeType: 'application/json',
      buffer: Buffer.from(text),
    });
    const dialog = page.getByRole('dialog', { name: 'faulty.json was not opened' });
    const items = await dialog.getByRole('listitem').allInnerTexts();
    expect(items).toHaveLength(3);
    const all = items.join('\n');
    expect(all).toContain('cylinder.bore_mm');
    expect(all).toContain('Bore is −3 mm; allowed 15 to 150 mm');
    expect(all).toContain('did you mean deckClearance_mm?');
    expect(all).toContain('allowed a whole number, 2 to 4');
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'hidden' });
    expect(await detail()).toBe(before);
    expect(await page.getByRole('button', { name: 'undo' }).getAttribute('aria-disabled')).toBe('true');
  });

  it('that was saved opens again as the same design', async () => {
    await openPart('Cylinder');
    await bore().fill('42');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'save', exact: true }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('lovage-7.json');
    await bore().fill('44');
    await chooser().setInputFiles(
      await download.path().then(async (path) => ({
        name: 'lovage-7.json',
        mimeType: 'application/json',
        buffer: await import('node:fs/promises').then(({ readFile }) => readFile(path)),
      })),
    );
    await expect.poll(() => bore().inputValue()).toBe('42');
  });
});

describe('lists', () => {
  it('get another gear stage of 36 : 48, which slows the rotors from 12 000 to 9000 rpm, and lose it again', async () => {
    await openPart('Blower and drive');
    await page.getByRole('button', { name: /^add a stage/ }).click();
    const second = page.getByRole('textbox', { name: 'Teeth of the driven wheel, stage 2' });
    await second.fill('48');
    await page.getByText('9000 rpm', { exact: true }).first().waitFor();
    await page.getByRole('button', { name: 'Take out stage 2: Gear stages' }).click();
    expect(await second.count()).toBe(0);
  });

  it('of corrections take a raised barrel for cylinder A3 alone', async () => {
    await openPart('Crank and rods');
    await page.getByText('Corrections of single cylinders').click();
    await page.getByRole('textbox', { name: 'Barrel raised, A3' }).fill('0,4');
    await page.getByRole('button', { name: 'Take out the correction of A3' }).click();
    expect(await page.getByRole('textbox', { name: 'Barrel raised, A3' }).inputValue()).toBe('');
  });
});

describe('the sheets', () => {
  it('open and close by keyboard alone, and give the focus back', async () => {
    const name = page.getByRole('button', { name: /^Surroundings/ });
    await name.focus();
    await page.keyboard.press('Enter');
    const heading = page.getByRole('heading', { name: 'Surroundings' });
    await expect.poll(() => heading.evaluate((node) => node === document.activeElement)).toBe(true);
    await page.keyboard.press('Escape');
    await expect.poll(() => name.evaluate((node) => node === document.activeElement)).toBe(true);
  });

  it.each(['Crank and rods', 'Windows', 'Fuel and spark'])(
    'let the tabulator reach every control of: %s',
    async (part) => {
      await openPart(part);
      await unfold();
      const controls = page.locator(
        '.sheet :is(input, select, textarea, summary, button:not(:disabled)):visible',
      );
      const wanted = await controls.count();
      await page.getByRole('heading', { name: part, level: 3 }).focus();
      const reached = new Set<number>();
      for (let step = 0; step < wanted + 3; step++) {
        await page.keyboard.press('Tab');
        const at = await controls.evaluateAll((all) => all.indexOf(document.activeElement as HTMLElement));
        if (at >= 0) reached.add(at);
      }
      expect(reached.size).toBe(wanted);
    },
  );

  it.each([
    ['Windows', 'light', 1440],
    ['Crank and rods', 'dark', 1440],
    ['Fuel and spark', 'light', 390],
  ] as const)('have no fault that axe-core knows of: %s, %s, %i px', async (part, colorScheme, width) => {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width, height: 900 });
    await openPart(part);
    await unfold();
    await page.locator('.sheet input[type="text"]').first().fill('abc');
    await page
      .getByRole('button', { name: /^About: / })
      .first()
      .click();
    await page.addScriptTag({ path: axePath });
    const faults = await page.evaluate(async () => {
      const { axe } = window as unknown as { axe: typeof Axe };
      const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
      const { violations } = await axe.run('.desk', { runOnly: { type: 'tag', values: tags } });
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' | ')}`);
    });
    expect(faults).toEqual([]);
  });

  it.each([390, 768, 1440, 2560])('fit a window %i px wide without scrolling sideways', async (width) => {
    await page.setViewportSize({ width, height: 900 });
    await openPart('Windows');
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(overflow).toBeLessThanOrEqual(0);
  });
});
