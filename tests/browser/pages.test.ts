import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { pages } from '../../src/app/pages/page-list.ts';
import { axeFaults } from './axe-faults.ts';
import { readText } from './read-text.ts';
import { startPage } from './start-page.ts';
import type { Started } from './start-page.ts';

const appUrl = inject('appUrl');
const ids = pages.map(({ id }) => id);
let started: Started;
let page: Page;
let complaints: readonly string[];

const heading = (): Promise<string> => readText(page.locator('h2').first());
const settled = (): Promise<void> => started.settled();
const choose = async (name: string): Promise<void> => {
  await page.getByRole('combobox', { name: 'Example engine' }).selectOption({ label: name });
};
const open = (id: string): Promise<void> => started.turnTo(id);

beforeAll(async () => {
  started = await startPage();
  ({ page, complaints } = started);
  await page.goto(appUrl);
  await settled();
});

afterAll(async () => {
  await started.close();
});

describe('the six pages', () => {
  it('are led by one sentence each, with its number', async () => {
    const sentences: Record<string, string> = {};
    for (const id of ids) {
      await open(id);
      sentences[id] = await heading();
    }
    expect(sentences.air).toMatch(/^The blower is big enough at 6000 rpm, by \d/);
    expect(sentences.pulses).toMatch(
      /^Seven fires a turn, \d+ to \d+° apart .* torque peaks at [\d.]+ times/,
    );
    expect(sentences.breathing).toMatch(/^Cylinder \d gets most: .* Cylinder \d gets least/);
    expect(sentences.heat).toMatch(/^Cylinder \d works its walls hardest: [\d.]+ k?W/);
    expect(sentences.fit).toMatch(/^It goes together: the tightest are crown.1 and head.1, 1\.00.mm/);
    expect(sentences.output).toMatch(/^[\d.]+ kW \([\d.]+ hp\) at 6000 rpm, for \d+ g of fuel per kWh/);
  });

  it('have addresses: #heat opens Heat, going back returns, an unknown one opens Air', async () => {
    const other = await page.context().browser()!.newPage();
    await other.goto(`${appUrl}#heat`);
    await other.locator('main[data-page="heat"]').waitFor();
    expect(await other.title()).toBe('Heat, Umbel');
    await other.getByRole('link', { name: 'Output' }).click();
    await other.locator('main[data-page="output"]').waitFor();
    await other.goBack();
    await other.locator('main[data-page="heat"]').waitFor();
    await other.goto(`${appUrl}#nothing`);
    await other.locator('main[data-page="air"]').waitFor();
    await other.close();
  });

  it('names parts that collide, in the table, in the sentence and where they meet in the engine', async () => {
    const other = await page
      .context()
      .browser()!
      .newPage({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' });
    await other.goto(`${appUrl}#fit`);
    await other.locator('main[data-settled="true"]').waitFor();
    const mark = other.locator('[data-fit-mark]');
    await other.getByRole('button', { name: 'Skirts side by side', exact: true }).click();
    expect(await mark.getAttribute('data-fit-mark')).toBe('nearest');
    expect(await mark.textContent()).toMatch(/skirt 2, skirt 3.*2\.32.mm apart/);
    await other.getByRole('navigation', { name: 'Parts' }).getByRole('button', { name: 'Cylinder' }).click();
    await other.locator('summary', { hasText: 'More' }).click();
    await other.getByRole('textbox', { name: 'Crown edge to skirt edge' }).fill('50');
    await other.getByRole('button', { name: 'Skirts side by side', exact: true }).click();
    await other.locator('[data-fit-mark="collides"]').first().waitFor();
    expect(await mark.first().textContent()).toMatch(/skirt 2, skirt 3.*collide, by 1\.19.mm/);
    expect(await readText(other.locator('h2').first())).toMatch(
      /^It does not go together: skirt.2 and skirt.3 overlap by 1\.19.mm at 250/,
    );
    await other.close();
  });

  it('share the crank angle: what is set on the dial stands in the torque, in Breathing and in the score', async () => {
    await open('pulses');
    await page.getByRole('slider', { name: 'crank angle' }).first().focus();
    await page.keyboard.press('Home');
    await page.keyboard.press('PageUp');
    await page.keyboard.press('ArrowUp');
    const texts = async (): Promise<Set<string | null>> =>
      new Set(
        await page
          .getByRole('slider', { name: 'crank angle' })
          .evaluateAll((sliders) => sliders.map((slider) => slider.getAttribute('aria-valuetext'))),
      );
    expect(await texts()).toEqual(new Set(['11°']));
    await open('breathing');
    expect(await texts()).toEqual(new Set(['11°']));
  });

  it('turn the dial under the pointer: a press to the right of its middle sets 90°', async () => {
    await open('pulses');
    const dial = page.locator('figure', { hasText: 'Firing round the turn' }).locator('svg').first();
    const box = (await dial.boundingBox())!;
    await page.mouse.click(box.x + 0.8 * box.width, box.y + box.height / 2);
    await page.locator('[role="slider"][aria-valuetext="90°"]').first().waitFor();
  });

  it('tell what has to bear the pulses: the caution, a force on the pin, a line for every rod', async () => {
    await open('pulses');
    const part = page.getByRole('region', { name: 'What has to bear it' });
    await part.scrollIntoViewIfNeeded();
    await part.getByText(/no strength proof/).waitFor();
    await part.getByRole('group', { name: /^Force on the crank pin, seen from the crank/ }).waitFor();
    const rods = part.getByRole('region', { name: 'Table: Rods and knuckle pins' });
    expect(await rods.locator('tbody tr').count()).toBe(7);
    expect(await part.textContent()).not.toMatch(/NaN|undefined/);
  });

  it('choose a cylinder by the keyboard in any bar chart, for all pages', async () => {
    await open('heat');
    await page.getByRole('slider', { name: /^cylinder in: Heat into the walls/ }).focus();
    await page.keyboard.press('Home');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await open('breathing');
    await page.getByRole('heading', { name: 'Purity, cylinder 3' }).waitFor();
  });

  it('hand out the table as CSV: a heading and seven cylinders, unrounded', async () => {
    await open('breathing');
    const waiting = page.waitForEvent('download');
    await page.getByRole('button', { name: 'CSV of: Cylinder by cylinder' }).click();
    const download = await waiting;
    expect(download.suggestedFilename()).toBe('cylinder-by-cylinder.csv');
    const lines = (await readFile(await download.path(), 'utf8')).trim().split('\r\n');
    expect(lines.length).toBe(8);
    expect(lines[0]).toMatch(/^cylinder,"delivered, × swept",/);
    expect(lines[1]!.split(',')[1]).toMatch(/^\d\.\d{9,}$/);
  });

  it('give every drawing an accessible name and every chart a table of its figures', async () => {
    for (const id of ids) {
      await open(id);
      const nameless = await page
        .locator('figure svg[role]')
        .evaluateAll((drawings) => drawings.filter((drawing) => !drawing.getAttribute('aria-label')).length);
      expect(nameless).toBe(0);
      const charts = page.locator('figure').filter({ has: page.locator('svg[role]') });
      const count = await charts.count();
      expect(count).toBeGreaterThan(2);
      expect(await charts.getByRole('button', { name: /^table of:/ }).count()).toBe(count);
    }
  });

  it('answer a newcomer: Parsley 5’s blower is too small at every speed, and cylinder 5 of Lovage 7 gets most', async () => {
    await choose('Parsley 5');
    await open('air');
    await settled();
    expect(await heading()).toMatch(/not big enough.*Short at 500 to \d+ rpm, by up to 49\u202f%/);
    await choose('Lovage 7');
    await open('breathing');
    await settled();
    expect(await heading()).toMatch(/^Cylinder 5 gets most/);
  });

  it('show no figure of the old engine when the example changes in the middle of a sweep', async () => {
    await open('output');
    await choose('Lovage 7');
    await page.locator('h2', { hasText: 'kW' }).first().waitFor();
    // Lovage 7 runs to 9500 rpm, Parsley 5 to 8000 and Caraway 1 has one cylinder.
    await choose('Caraway 1');
    const seen = await page.evaluate(async () => {
      const told: string[] = [];
      const main = document.querySelector('main')!;
      do {
        const rows = [...document.querySelectorAll('.answer tbody tr td:first-child')];
        told.push(...rows.map((cell) => cell.textContent ?? ''));
        const power = document.querySelector('.answer h2')?.textContent ?? '';
        if (/kW/.test(power)) told.push(`power ${power}`);
        await new Promise((resolve) => setTimeout(resolve, 5));
      } while (main.dataset.settled !== 'true');
      return [...new Set(told)];
    });
    const powers = seen
      .filter((text) => text.startsWith('power '))
      .map((text) => Number.parseFloat(text.slice(6)));
    expect(powers.length).toBeGreaterThan(0);
    // Seven cylinders give some 20 kW, one gives some 3.
    expect(Math.max(...powers)).toBeLessThan(8);
    const last = await page.locator('.answer tbody tr td:first-child').allInnerTexts();
    expect(seen.filter((text) => !text.startsWith('power ')).every((speed) => last.includes(speed))).toBe(
      true,
    );
    await choose('Lovage 7');
    await settled();
  });

  describe.each(ids)('%s', (id) => {
    it('has every control within reach of the tabulator', async () => {
      await open(id);
      await settled();
      const stops = await page.evaluate(() => {
        const wanted = [
          ...document.querySelectorAll<HTMLElement>(
            ':is(a[href], button, select, input, summary, [tabindex="0"]):not([tabindex="-1"])',
          ),
        ].filter((each) => each.checkVisibility({ visibilityProperty: true }));
        wanted.forEach((each, i) => (each.dataset['stop'] = String(i)));
        (document.activeElement as HTMLElement | null)?.blur();
        return wanted.length;
      });
      const reached = new Set<string>();
      await page.mouse.click(1, 1);
      for (let step = 0; step < stops + 5; step++) {
        await page.keyboard.press('Tab');
        const stop = await page.evaluate(
          () => (document.activeElement as HTMLElement | null)?.dataset['stop'] ?? '',
        );
        if (stop !== '') reached.add(stop);
      }
      const never = await page.evaluate(
        (seen) =>
          [...document.querySelectorAll<HTMLElement>('[data-stop]')]
            .filter((each) => !seen.includes(each.dataset['stop']!))
            .map((each) => each.outerHTML.slice(0, 120)),
        [...reached],
      );
      // A button that goes while they are walked through, as one that stops a study does, need not be reached.
      expect(never).toEqual([]);
      expect(reached.size).toBeGreaterThan(20);
    });

    it.each([390, 768, 1440, 2560])('fits a window %i px wide without scrolling sideways', async (width) => {
      await page.setViewportSize({ width, height: 900 });
      await open(id);
      const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(overflow).toBeLessThanOrEqual(0);
      await page.setViewportSize({ width: 1440, height: 900 });
    });

    it.each(['light', 'dark'] as const)('has no fault that axe-core knows of, %s', async (colorScheme) => {
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      await open(id);
      await settled();
      expect(await axeFaults(page)).toEqual([]);
    });
  });

  it('write no error or warning to the console', () => {
    expect(complaints).toEqual([]);
  });
});
