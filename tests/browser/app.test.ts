import { chromium } from 'playwright-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchOptions } from '../../scripts/find-browser.ts';

const appUrl = inject('appUrl');
let browser: Browser;
let page: Page;
const complaints: string[] = [];
const requests: string[] = [];

beforeAll(async () => {
  browser = await chromium.launch(launchOptions(inject('browserPath')));
  page = await browser.newPage();
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('request', (request) => requests.push(request.url()));
  await page.goto(appUrl);
});

afterAll(async () => {
  await browser.close();
});

describe('the page', () => {
  it('opens under its name', async () => {
    expect(await page.title()).toBe('Umbel');
    expect(await page.locator('h1').count()).toBe(1);
  });

  it('asks nothing of any origin but its own, and writes no error or warning to the console', () => {
    const strangers = requests.filter(
      (url) => new URL(url).origin !== new URL(appUrl).origin && !url.startsWith('data:'),
    );
    expect(requests.length).toBeGreaterThan(1);
    expect(strangers).toEqual([]);
    expect(complaints).toEqual([]);
  });
});
