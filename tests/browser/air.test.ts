import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { axeFaults } from './axe-faults.ts';
import { readText } from './read-text.ts';
import { patience, startPage } from './start-page.ts';
import type { Started } from './start-page.ts';

let started: Started;
let page: Page;
let complaints: readonly string[];

const heading = (): Promise<string> => readText(page.locator('h2').first());
const settled = (): Promise<void> => started.settled();
const open = (name: string): Promise<void> => started.example(name);
const part = (name: string): Locator => started.part(name);
const cards = (): Locator => part('What would close the gap').getByRole('article');
const fixesDone = (): Promise<void> =>
  page.locator('progress').waitFor({ state: 'detached', timeout: 120_000 });

beforeAll(async () => {
  started = await startPage();
  ({ page, complaints } = started);
  await page.goto(inject('appUrl'));
  await settled();
});

afterAll(async () => {
  await started.close();
});

describe('rotors of Lovage 7', () => {
  it('are saved as a drawing that measures true: 57 mm across its tips within 0.005 mm, a 50 mm line, the warning on it', async () => {
    const rotors = part('Rotors before metal');
    await rotors.getByRole('heading', { name: 'Rotors before metal' }).scrollIntoViewIfNeeded();
    await rotors.getByRole('button', { name: 'Drawing, SVG', disabled: false }).waitFor(patience);
    const waiting = page.waitForEvent('download');
    await rotors.getByRole('button', { name: 'Drawing, SVG' }).click();
    const download = await waiting;
    expect(download.suggestedFilename()).toBe('lovage-7-rotors.svg');
    const text = await readFile(await download.path(), 'utf8');
    expect(text).toContain('CAUTION: gaps when cold must allow for heat growth');
    const design = JSON.parse(await readFile('presets/lovage-7.json', 'utf8'));
    const sheet = await page.context().browser()!.newPage();
    await sheet.setContent(text);
    // Measured as it would print: in CSS millimetres, 96 pixels to the inch.
    const measured = await sheet.evaluate(() => {
      const mm = 25.4 / 96;
      const outlines = [...document.querySelectorAll<SVGPathElement>('#OUTLINE path')];
      // The left rotor turns about the origin: its farthest corner is half of its tips' diameter away.
      const corners = outlines[0]!
        .getAttribute('d')!
        .split(/[MLZ]/)
        .filter((pair) => pair !== '')
        .map((pair) => pair.split(',').map(Number) as [number, number]);
      const scale = outlines[0]!.getScreenCTM()!.a * mm;
      const lines = [...document.querySelectorAll<SVGPathElement>('#NOTES path')];
      return {
        tips: 2 * Math.max(...corners.map(([x, y]) => Math.hypot(x, y))) * scale,
        line: lines[0]!.getTotalLength() * lines[0]!.getScreenCTM()!.a * mm,
      };
    });
    await sheet.close();
    expect(design.blower.tipDiameter_mm).toBe(57);
    expect(Math.abs(measured.tips - 57)).toBeLessThan(0.005);
    expect(Math.abs(measured.line - 50)).toBeLessThan(0.005);
  });

  it('turn with the crank, the right one the other way', async () => {
    const angles = (): Promise<number[]> =>
      part('Rotors before metal')
        .locator('svg g[transform*="rotate"]')
        .evaluateAll((groups) =>
          groups.map((group) => Number(/rotate\((.*)\)/.exec(group.getAttribute('transform')!)![1])),
        );
    const before = await angles();
    await page.getByRole('slider', { name: 'crank angle' }).first().focus();
    for (let press = 0; press < 3; press++) await page.keyboard.press('ArrowRight');
    const after = await angles();
    // Three degrees of the crank, rotors twice as fast.
    expect(after[0]! - before[0]!).toBeCloseTo(-6, 6);
    expect(after[1]! - before[1]!).toBeCloseTo(6, 6);
  });
});

describe('leak check', () => {
  it('refuses what cannot be, in words, tells the clearance, puts it into the design and lets it be undone', async () => {
    const leak = part('Leak check');
    const held = leak.getByRole('textbox', { name: 'gauge holds' });
    await held.fill('five');
    expect(await leak.getByRole('status').allInnerTexts()).toContainEqual(
      expect.stringMatching(/does not begin with a number.*allowed above 0/),
    );
    await held.fill('40 mbar');
    await leak.getByText(/^it leaks (more|less)$/).waitFor();
    await held.press('Enter');
    await page.locator('option:checked', { hasText: 'Lovage 7, changed' }).waitFor({ state: 'attached' });
    expect(await leak.locator('dd').nth(2).innerText()).toBe(await leak.locator('dd').first().innerText());
    await page.getByRole('button', { name: 'undo' }).click();
    await leak.getByText(/^it leaks (more|less)$/).waitFor();
    await settled();
  });
});

describe('a newcomer with Parsley 5', () => {
  it('is told that the blower is too small, by how much, at which speeds, and what limits it', async () => {
    await open('Parsley 5');
    expect(await heading()).toMatch(
      /not big enough at 5000 rpm, by 49\u202f%.*Short at 500 to 8000 rpm, by up to 49\u202f%/,
    );
    const finding = page.locator('.finding', { hasText: 'too little' });
    await finding.waitFor(patience);
    expect(await readText(finding)).toMatch(
      /At 500 rpm, .* 1\.58 g\/s of air go through and 3\.14 g\/s are wanted: .*swinging by .*What limits it is the blower’s displacement/,
    );
  });

  it('sees supply and demand meet, and why the cycle stands beside that point', async () => {
    const words = page.locator('.words', { hasText: 'Ring: the cycle' });
    await words.waitFor(patience);
    expect(await words.innerText()).toMatch(/where steady supply and demand meet.*the plenum swings by/);
  });

  it('is offered three fixes with their costs; each makes the verdict turn at one press, and undo brings the old design back', async () => {
    await part('What would close the gap')
      .getByRole('heading', { name: 'What would close the gap' })
      .scrollIntoViewIfNeeded();
    await cards().first().waitFor(patience);
    await fixesDone();
    const names = await cards().getByRole('heading').allInnerTexts();
    expect(names).toEqual(['Drive the blower faster', 'Longer rotors', 'More blowers']);
    for (const name of names) {
      const card = cards().filter({ hasText: name });
      const text = await card.innerText();
      for (const cost of ['blower takes', 'brake power', 'charge', 'rotors', 'rotor tips'])
        expect(text).toContain(cost);
      const use = card.getByRole('button', { name: /^Use this/ });
      // By the keyboard as well as by the pointer.
      if (name === names[0]) {
        await use.focus();
        await page.keyboard.press('Enter');
      } else await use.click();
      await page
        .locator('h2', { hasText: 'It is at every speed worked out, cranking included' })
        .waitFor(patience);
      expect(await heading()).toMatch(/^The blower is big enough at 5000 rpm/);
      await page.getByRole('button', { name: 'undo' }).click();
      await page.locator('h2', { hasText: 'not big enough' }).waitFor(patience);
      expect(await page.getByRole('combobox', { name: 'Example engine' }).inputValue()).toBe('parsley-5');
      // The fixes are there again without being solved anew.
      expect(await cards().count()).toBe(3);
    }
  });

  it('has no fault that axe-core knows of, light and dark, and no sideways scrolling at 390 px', async () => {
    await settled();
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      expect(await axeFaults(page)).toEqual([]);
    }
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
    await page.setViewportSize({ width: 1440, height: 900 });
  });
});

describe('a target out of reach', () => {
  it('says what values are allowed, and the nearest that can be reached with what stops it', async () => {
    await open('Caraway 1');
    const fixes = part('What would close the gap');
    const value = fixes.getByRole('textbox');
    await fixes.getByRole('combobox', { name: 'Figure that is wanted' }).selectOption('chargingEfficiency');
    await value.fill('9');
    expect(await fixes.getByRole('status').first().innerText()).toMatch(
      /9 is out of range; allowed 0\.05 to 4/,
    );
    await value.fill('2.5');
    await fixes.getByRole('combobox', { name: 'Where it is wanted' }).selectOption('here');
    await fixes.getByRole('button', { name: 'Work out what would do it' }).click();
    await fixes
      .getByText(/^Nearest is [\d.]+ at \d+\srpm, with .*: .*\./)
      .first()
      .waitFor(patience);
    await fixesDone();
    expect(await cards().count()).toBe(0);
    expect(await fixes.locator('dd').allInnerTexts()).toContainEqual(
      expect.stringMatching(/makes no air\.$|no longer hinders the air|turns back\.$|cannot be held warm\.$/),
    );
  });
});

it('writes no error or warning to the console', () => {
  expect(complaints).toEqual([]);
});
