import { chromium } from 'playwright-core';
import type { BrowserContextOptions, Locator, Page } from 'playwright-core';
import { inject } from 'vitest';
import { launchOptions } from '../../scripts/find-browser.ts';

/** A machine that does other work, too, is given its time. */
export const patience = { timeout: 120_000 };

/** A page of a browser of its own, what it complained of, and what is done with it again and again. */
export interface Started {
  readonly page: Page;
  /** Errors and warnings of the page so far. */
  readonly complaints: readonly string[];
  settled(): Promise<void>;
  /** Opens an example, and waits until it is worked out. */
  example(name: string): Promise<void>;
  /** Goes to a page by its link. */
  turnTo(id: string): Promise<void>;
  /** A part of a page, by its heading. */
  part(name: string): Locator;
  close(): Promise<void>;
}

/** Starts a browser with one page that shows nothing yet. */
export async function startPage(options: BrowserContextOptions = {}): Promise<Started> {
  const browser = await chromium.launch(launchOptions(inject('browserPath')));
  const page = await browser.newPage({
    viewport: { width: 1440, height: 900 },
    reducedMotion: 'reduce',
    ...options,
  });
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  const settled = (): Promise<void> => page.locator('main[data-settled="true"]').waitFor(patience);
  return {
    page,
    complaints,
    settled,
    example: async (name) => {
      await page.getByRole('combobox', { name: 'Example engine' }).selectOption({ label: name });
      await page.locator('main[data-settled="false"]').waitFor(patience);
      await settled();
    },
    turnTo: async (id) => {
      await page
        .getByRole('navigation')
        .getByRole('link', { name: new RegExp(`^${id}$`, 'i') })
        .click();
      await page.locator(`main[data-page="${id}"]`).waitFor();
    },
    part: (name) => page.getByRole('region', { name }),
    close: () => browser.close(),
  };
}
