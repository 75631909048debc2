import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { readText } from './read-text.ts';
import { patience, startPage } from './start-page.ts';
import type { Started } from './start-page.ts';

let started: Started;
let page: Page;
let complaints: readonly string[];

const settled = (): Promise<void> => started.settled();
const part = (name: string): Locator => started.part(name);
const open = (id: string): Promise<void> => started.turnTo(id);

beforeAll(async () => {
  started = await startPage();
  ({ page, complaints } = started);
  await page.goto(inject('appUrl'));
  await settled();
  // A single cylinder answers soonest.
  await started.example('Caraway 1');
});

afterAll(async () => {
  await started.close();
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
