import { chromium } from 'playwright-core';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, inject, it } from 'vitest';
import { launchOptions } from '../../scripts/find-browser.ts';

const appUrl = inject('appUrl');
let browser: Browser;
let context: BrowserContext;

const engine = (page: Page) => page.getByRole('combobox', { name: 'Example engine' });
const shown = (page: Page): Promise<string> =>
  engine(page).evaluate((select: HTMLSelectElement) => select.selectedOptions[0]!.text);
/** A page that starts takes its time on a busy machine. */
const PATIENT = { timeout: 15_000 };
async function open(): Promise<Page> {
  const page = await context.newPage();
  await page.goto(appUrl);
  await page.locator('main[data-point="solved"]').waitFor();
  return page;
}

beforeAll(async () => {
  browser = await chromium.launch(launchOptions(inject('browserPath')));
});
beforeEach(async () => {
  context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
});
afterEach(async () => {
  await context.close();
});
afterAll(async () => {
  await browser.close();
});

describe('two windows of one browser', () => {
  it('keep each its own design over a reload, and say that the other has saved', async () => {
    const [one, other] = [await open(), await open()];
    await engine(one).selectOption({ label: 'Dill 3' });
    await other.getByText(/Another window has saved Dill 3/).waitFor();
    await engine(other).selectOption({ label: 'Parsley 5' });
    await one.getByText(/Another window has saved Parsley 5/).waitFor();
    await one.reload();
    await other.reload();
    await expect.poll(() => shown(one), PATIENT).toBe('Dill 3');
    await expect.poll(() => shown(other), PATIENT).toBe('Parsley 5');
  });

  it('hand their designs over: opened here, and undone', async () => {
    const [one, other] = [await open(), await open()];
    await engine(one).selectOption({ label: 'Dill 3' });
    await other.getByRole('button', { name: 'open that one here' }).click();
    await expect.poll(() => shown(other), PATIENT).toBe('Dill 3');
    await other.getByRole('button', { name: 'undo' }).click();
    await expect.poll(() => shown(other), PATIENT).toBe('Lovage 7');
  });

  it('let a new window begin with what was saved last', async () => {
    const [one, other] = [await open(), await open()];
    await engine(one).selectOption({ label: 'Caraway 1' });
    await other.getByText(/Another window has saved Caraway 1/).waitFor();
    const next = await open();
    await expect.poll(() => shown(next), PATIENT).toBe('Caraway 1');
  });
});
