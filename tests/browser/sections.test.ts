import { chromium } from 'playwright-core';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchOptions } from '../../scripts/find-browser.ts';
import { readText } from './read-text.ts';

let browser: Browser;
let page: Page;
const complaints: string[] = [];
/** A machine that does other work, too, is given its time. */
const patience = { timeout: 120_000 };

const settled = (): Promise<void> => page.locator('main[data-settled="true"]').waitFor(patience);
const part = (name: string): Locator => page.getByRole('region', { name });
const open = async (id: string): Promise<void> => {
  await page
    .getByRole('navigation')
    .getByRole('link', { name: new RegExp(`^${id}$`, 'i') })
    .click();
  await page.locator(`main[data-page="${id}"]`).waitFor();
};

beforeAll(async () => {
  browser = await chromium.launch(launchOptions(inject('browserPath')));
  page = await browser.newPage({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' });
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(inject('appUrl'));
  await settled();
  // A single cylinder answers soonest.
  await page.getByRole('combobox', { name: 'Example engine' }).selectOption({ label: 'Caraway 1' });
  await page.locator('main[data-settled="false"]').waitFor(patience);
  await settled();
});

afterAll(async () => {
  await browser.close();
});

describe('sections of the pages', () => {
  it('tell what a fire in plenum and passages would reach, and take a crankcase only in its range', async () => {
    const fire = part('If it fires back');
    await fire.getByRole('heading').first().scrollIntoViewIfNeeded();
    await fire.getByText(/kJ in box, plenum and passages/).waitFor(patience);
    expect(await readText(fire)).toContain('A plenum full of mixture can explode');
    const crankcase = fire.getByRole('textbox', { name: 'Crankcase at its smallest' });
    await crankcase.fill('a lot');
    expect(await crankcase.getAttribute('aria-invalid')).toBe('true');
    await crankcase.fill('600');
    await expect.poll(() => crankcase.getAttribute('aria-invalid'), patience).toBe('false');
  });

  it('show that one piston pumps, and where the work of the gas goes', async () => {
    await open('breathing');
    expect(await readText(part('What the crankcase pumps'))).toContain('its crankcase would pump');
    await open('output');
    const table = page.getByRole('region', { name: 'Table: What becomes of the gas’s work' });
    expect(await readText(table)).toMatch(/rings and pistons.*left at the output shaft/s);
  });

  it('work the walls out when asked, find the air that holds a crown, and show how they warm', async () => {
    await open('heat');
    await page.getByRole('button', { name: 'Work the wall temperatures out' }).click();
    await page.getByRole('heading', { name: 'Temperatures of the walls' }).waitFor(patience);
    await settled();
    expect(await readText(page.locator('h2').first())).toMatch(/^The crown comes to \d+\s°C/);
    expect(await readText(page.locator('.page'))).toMatch(/Slowest time constant: [\d.]+\smin running/);
    const air = part('Air and coating');
    await air.getByRole('textbox', { name: 'No crown above' }).fill('290');
    await air.getByRole('button', { name: 'Find the air speed' }).click();
    await air.getByText(/hottest crown \d+\s°C at 1\.00\sm\/s/).waitFor(patience);
  });

  it('crank the engine turn by turn and say in which turn it catches', async () => {
    await open('air');
    const starting = part('Starting');
    await starting.getByRole('button', { name: /^Crank it at/ }).click();
    await starting.getByRole('heading', { name: 'Torque to turn it' }).waitFor(patience);
    expect(await readText(starting)).toMatch(
      /Cranked at 500\srpm it fires first in turn \d+ and catches in turn \d+/,
    );
  });

  it('leave nothing in the console', () => {
    expect(complaints).toEqual([]);
  });
});
