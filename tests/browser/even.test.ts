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
const undo = (): Promise<void> => page.getByRole('button', { name: 'undo' }).click();

beforeAll(async () => {
  started = await startPage();
  ({ page, complaints } = started);
});

afterAll(async () => {
  await started.close();
});

describe('a newcomer with Lovage 7, on the page of breathing', () => {
  beforeAll(async () => {
    await page.goto(`${inject('appUrl')}#breathing`);
    await settled();
  });

  it('reads which cylinder runs hottest, by how much, and why', async () => {
    const why = part('Which cylinder runs hottest, and why');
    await why.scrollIntoViewIfNeeded();
    const said = why.locator('.said');
    await said.waitFor(patience);
    expect(await readText(said)).toMatch(
      /^Cylinder \d runs hottest: its walls take \d+ W, [\d.]+\s% more than the mean\.[^]*rods make it so/,
    );
  });

  it('gets a shop list that cuts the spread of trapped mass to a third or less, in the design at one press and out of it by undo', async () => {
    const even = part('Even it out');
    await even.getByRole('button', { name: 'Work out a shop list' }).click();
    const answer = even.locator('.answer');
    await answer.waitFor(patience);
    const [before, after] = (await answer.locator('b').allInnerTexts()).map(Number.parseFloat) as [
      number,
      number,
    ];
    expect(before).toBeGreaterThan(5);
    expect(after).toBeLessThan(before / 3);
    expect(await readText(answer)).toMatch(/^\d+ changes bring/);
    expect(await even.locator('figure', { hasText: 'Shop list' }).locator('tbody tr').count()).toBe(7);
    await even.getByRole('button', { name: 'Put these changes into the design' }).click();
    await settled();
    const spread = async (): Promise<number> => {
      const line = await readText(page.locator('h2').first());
      return Number.parseFloat(/([\d.]+)\s%/.exec(line)?.[1] ?? 'NaN');
    };
    expect(await spread()).toBeLessThan(6);
    await undo();
    await settled();
    expect(await spread()).toBeGreaterThan(8);
  });
});

describe('Angelica 14, on the page of pulses', () => {
  it('shows why its rows stand as they do: others trade it for something; another way is taken at one press, and undo brings it back', async () => {
    await page.goto(`${inject('appUrl')}#pulses`);
    await settled();
    await page.getByRole('combobox', { name: 'Example engine' }).selectOption({ label: 'Angelica 14' });
    await page.locator('main[data-settled="false"]').waitFor(patience);
    await settled();
    const heading = () => readText(page.locator('h2').first());
    const asBuilt = await heading();
    const ways = part('Other ways to put it together');
    await ways.getByRole('button', { name: 'Compare the ways' }).click();
    await ways.locator('.answer').waitFor(patience);
    expect(await ways.locator('.said li').count()).toBeGreaterThanOrEqual(2);
    const takes = ways.getByRole('combobox', { name: 'Take' });
    const other = await takes
      .locator('option')
      .evaluateAll((options) =>
        options
          .map((each) => (each as HTMLOptionElement).value)
          .find((key) => key !== 'as built' && key.includes('row')),
      );
    if (other !== undefined) await takes.selectOption(other);
    else await takes.selectOption({ index: 3 });
    await ways.getByRole('button', { name: 'Put it together this way' }).click();
    await page.getByRole('button', { name: 'undo' }).waitFor(patience);
    await settled();
    expect(await page.getByRole('button', { name: 'undo' }).isEnabled()).toBe(true);
    await undo();
    await settled();
    expect(await heading()).toBe(asBuilt);
  });
});

it('writes no error or warning to the console', () => {
  expect(complaints).toEqual([]);
});
