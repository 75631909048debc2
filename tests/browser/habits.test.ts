import { readFile } from 'node:fs/promises';
import { chromium } from 'playwright-core';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchOptions } from '../../scripts/find-browser.ts';
import { readText } from './read-text.ts';
import { axeFaults } from './axe-faults.ts';

const appUrl = inject('appUrl');
let browser: Browser;
let page: Page;
const complaints: string[] = [];

const settled = (): Promise<void> => page.locator('main[data-settled="true"]').waitFor();
const open = async (id: string): Promise<void> => {
  await page.evaluate((hash) => (location.hash = hash), `#${id}`);
  await page.locator(`main[data-page="${id}"]`).waitFor();
};
const chart = (title: string) =>
  page.locator('figure').filter({ has: page.getByRole('heading', { name: title, exact: true }) });

/** Waits until so many of a mark are drawn: a page's charts follow it. */
const drawn = (marks: Locator, count: number): Promise<void> =>
  expect.poll(() => marks.count(), { timeout: 10_000 }).toBe(count);

/** The file that a button hands out. */
async function saved(title: string, form: 'CSV' | 'SVG' | 'PNG'): Promise<{ name: string; bytes: Buffer }> {
  await chart(title).getByRole('button', { name: 'save as a file' }).click();
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: `${form} of: ${title}` }).click();
  const download = await waiting;
  return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
}

beforeAll(async () => {
  browser = await chromium.launch(launchOptions(inject('browserPath')));
  page = await browser.newPage({
    viewport: { width: 1440, height: 900 },
    reducedMotion: 'reduce',
    colorScheme: 'dark',
  });
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(appUrl);
  await settled();
});

afterAll(async () => {
  await browser.close();
});

describe('a saved drawing', () => {
  /** What a document says when a browser reads it by itself. */
  const read = (svg: string) =>
    page.evaluate((text) => {
      const parsed = new DOMParser().parseFromString(text, 'image/svg+xml');
      const all = [...parsed.querySelectorAll('*')];
      const values = all.flatMap((element) =>
        [...element.attributes].filter(({ name }) => name !== 'xmlns').map((each) => each.value),
      );
      const inner = values.flatMap((value) =>
        [...value.matchAll(/url\(['"]?#([^)'"]+)['"]?\)/g)].map((m) => m[1]!),
      );
      return {
        fault: parsed.querySelector('parsererror')?.textContent ?? '',
        texts: all
          .filter(({ tagName }) => tagName === 'text')
          .map((each) => each.textContent?.trim().replaceAll('\u00a0', ' ') ?? ''),
        paths: all.filter(({ tagName }) => tagName === 'path').map((each) => each.getAttribute('d') ?? ''),
        dangling: inner.filter((id) => parsed.getElementById(id) === null),
        values,
        size: [
          parsed.documentElement.getAttribute('width'),
          parsed.documentElement.getAttribute('height'),
        ].map(Number),
      };
    }, svg);

  it.each([
    [
      'air',
      'Air over speed',
      ['delivered', 'kept', 'wanted 1.00', 'crank speed, rpm', 'at ambient density, × swept volume'],
    ],
    ['pulses', 'Firing round the turn', ['exhaust opens', 'transfer opens', '7']],
    ['breathing', 'Windows, cylinder 1', ['exhaust', 'transfer', 'open area, mm²', 'crank angle']],
    ['breathing', 'Pressure and volume, cylinder 1', ['pressure, bar', 'volume, cc']],
    ['heat', 'Heat into the walls, cylinder by cylinder', ['crown', 'mean over the turn, W']],
    ['output', 'Where the fuel’s energy goes, 6000 rpm', []],
    ['air', 'Charge of each cylinder', ['delivered', '7']],
    ['air', 'One turn, by crank angle', ['cylinder pressure', '360°']],
  ])('stands alone: %s, %s', async (id, title, words) => {
    await open(id);
    const { name, bytes } = await saved(title, 'SVG');
    expect(name).toMatch(/^[a-z0-9-]+\.svg$/);
    const text = bytes.toString('utf8');
    const svg = await read(text);
    expect(svg.fault).toBe('');
    expect(svg.texts).toEqual(expect.arrayContaining([title, ...words]));
    expect(svg.texts.join('\n')).toMatch(/Lovage 7.*6000 rpm/);
    expect(svg.dangling).toEqual([]);
    expect(text).not.toMatch(/NaN|undefined|var\(|light-dark|color-mix|oklab/);
    const strangers = svg.values.filter((value) => /^(https?:|blob:|file:|data:|\/)/.test(value));
    expect(strangers).toEqual([]);
    const shapes = (text.match(/<(path|rect|circle)\b/g) ?? []).length;
    expect(shapes).toBeGreaterThan(1);
  });

  it('is drawn on light paper while the page is dark, with the same lines', async () => {
    await open('air');
    const drawn = await chart('Air over speed')
      .locator('svg[role] path.line')
      .evaluateAll((lines) => lines.map((each) => each.getAttribute('d')));
    const svg = await read((await saved('Air over speed', 'SVG')).bytes.toString('utf8'));
    expect(drawn.length).toBe(2);
    expect(svg.paths).toEqual(expect.arrayContaining(drawn));
    expect(svg.values).toContain('rgb(252, 250, 246)');
    expect(svg.values).not.toContain('rgb(20, 25, 29)');
  });

  it('as PNG has two dots for each unit of the SVG and is not blank', async () => {
    const { bytes } = await saved('Air over speed', 'PNG');
    const { size } = await read((await saved('Air over speed', 'SVG')).bytes.toString('utf8'));
    expect(bytes.subarray(1, 4).toString('latin1')).toBe('PNG');
    expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual(size.map((each) => 2 * each));
    const colours = await page.evaluate(async (base64) => {
      const image = await createImageBitmap(await (await fetch(`data:image/png;base64,${base64}`)).blob());
      const canvas = new OffscreenCanvas(image.width, image.height);
      const context = canvas.getContext('2d')!;
      context.drawImage(image, 0, 0);
      const { data } = context.getImageData(0, 0, image.width, image.height);
      const seen = new Set<string>();
      for (let i = 0; i < data.length; i += 4) seen.add(`${data[i]},${data[i + 1]},${data[i + 2]}`);
      return [...seen];
    }, bytes.toString('base64'));
    // Paper, and the colour of fresh charge.
    expect(colours.includes('252,250,246')).toBe(true);
    expect(colours.includes('20,122,124')).toBe(true);
  });

  it('can be had while the table hides it, by keyboard alone, and says so', async () => {
    const frame = chart('Slip over speed');
    await frame.getByRole('button', { name: /^table of/ }).click();
    await frame.getByRole('button', { name: 'save as a file' }).focus();
    await page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    const waiting = page.waitForEvent('download');
    await page.keyboard.press('Enter');
    expect((await waiting).suggestedFilename()).toBe('slip-over-speed.svg');
    await frame.getByText('Saved as slip-over-speed.svg.').waitFor({ state: 'attached' });
  });
});

describe('the loop of pressure and volume', () => {
  const title = 'Pressure and volume, cylinder 1';
  const angleText = () =>
    page.getByRole('slider', { name: 'crank angle' }).first().getAttribute('aria-valuetext');
  const drawing = async () => {
    const svg = chart(title).locator('svg[role]');
    await svg.evaluate((each) => each.scrollIntoView({ block: 'center' }));
    return (await svg.boundingBox())!;
  };
  const readout = () => chart(title).locator('.readout').innerText();

  it('reads at the point nearest to the pointer, and lets go when it leaves', async () => {
    await open('breathing');
    const before = await readout();
    expect(before).toMatch(/^at 0°/);
    const box = await drawing();
    await page.mouse.move(box.x + 0.6 * box.width, box.y + 0.7 * box.height);
    const hovered = await readout();
    expect(hovered).toMatch(/at \d+°\s*pressure [\d.]+ bar\s*volume [\d.]+ cc/);
    expect(hovered).not.toBe(before);
    expect(await angleText()).toBe('0°');
    await page.mouse.move(5, 5);
    expect(await readout()).toBe(before);
  });

  it('turns the crank of all charts to the point that is pressed, and by arrows', async () => {
    const box = await drawing();
    await page.mouse.click(box.x + 0.95 * box.width, box.y + 0.9 * box.height);
    // Far right of the loop the volume is largest: near bottom dead centre.
    const pressed = Number.parseFloat((await angleText())!);
    expect(pressed).toBeGreaterThan(120);
    expect(pressed).toBeLessThan(240);
    await chart(title).getByRole('slider', { name: 'crank angle' }).focus();
    await page.keyboard.press('Home');
    await page.keyboard.press('PageUp');
    await page.keyboard.press('ArrowRight');
    expect(await angleText()).toBe('11°');
    expect(await readout()).toMatch(/^at 11°/);
    await page.keyboard.press('Home');
  });
});

describe('units', () => {
  const choose = (label: string) => page.getByRole('combobox', { name: 'Units' }).selectOption({ label });
  const axisTitle = (title: string) => chart(title).locator('svg[role] .axis text').allTextContents();
  const sentence = () => readText(page.locator('.answer h2').first());

  it('turn figures, axes, tables, sentences and the parts’ key figures to the workshop’s', async () => {
    await open('output');
    expect(await sentence()).toMatch(/^[\d.]+ kW \([\d.]+ hp\)/);
    const kW = Number.parseFloat(await sentence());
    await choose('in · psi · hp');
    expect(await sentence()).toMatch(/^[\d.]+ hp \([\d.]+ kW\) .* lb of fuel per hp/);
    expect(Number.parseFloat(await sentence()) / kW).toBeCloseTo(1.341, 1);
    expect((await axisTitle('Power over speed')).join(' ')).toContain('at the output shaft, hp');
    const headings = await page.locator('.answer th').allInnerTexts();
    expect(headings.join('|')).toMatch(/power, hp\|torque, lb\sft\|bmep, psi/);
    expect(await page.locator('[data-part="cylinder"]').getAttribute('title')).toMatch(/bore 1\.575 in/);
    await open('air');
    expect(await readText(page.locator('.detail'))).toMatch(/read [\d.]+ psi \([\d.]+ bar\)/);
    await open('heat');
    expect((await axisTitle('Exhaust gas, cylinder by cylinder')).join(' ')).toContain('°F');
    for (const id of ['air', 'pulses', 'breathing', 'heat', 'output']) {
      await open(id);
      const axes = await page.locator('.answer .axis text').allTextContents();
      expect(axes.join(' '), id).not.toMatch(/\b(bar|kW|N\sm|g\/s|mm²|°C|cc)(\s|$)/);
    }
  });

  it('are kept on the machine: the page opens with them again', async () => {
    await page.reload();
    await settled();
    expect(await page.getByRole('combobox', { name: 'Units' }).inputValue()).toBe('workshop');
    await open('output');
    expect(await sentence()).toMatch(/^[\d.]+ hp/);
  });

  it('leave what is typed in a sheet as typed', async () => {
    await page
      .getByRole('button', { name: /^Cylinder/ })
      .first()
      .click();
    const bore = page.getByRole('textbox', { name: 'Bore', exact: true });
    await bore.fill('4.1 cm');
    await choose('mm · bar · kW');
    expect(await bore.inputValue()).toBe('4.1 cm');
    await page.getByRole('button', { name: 'undo' }).click();
    await page.getByRole('button', { name: 'all parts' }).click();
    await settled();
  });
});

describe('a pinned result', () => {
  const strip = () => page.getByRole('region', { name: 'What is pinned' });

  it('says what it is, and that nothing changed yet', async () => {
    await open('air');
    await page.getByRole('button', { name: 'pin', exact: true }).click();
    const text = await strip().innerText();
    expect(text).toMatch(/Pinned Lovage 7, 6000 rpm, throttle open/);
    expect(text).toContain('the same');
    expect(text).not.toContain('Now');
  });

  it('stands as dotted lines where the present ones have moved away, with differences in numbers', async () => {
    await page
      .getByRole('button', { name: /^Cylinder/ })
      .first()
      .click();
    await page.getByRole('textbox', { name: 'Bore', exact: true }).fill('44');
    await page.waitForFunction(() => document.querySelector('main')!.dataset.behind === 'false');
    await settled();
    expect(await strip().innerText()).toMatch(/Now bore 44 mm/);
    // A larger bore with the same blower: fewer swept volumes delivered, about by the ratio of the areas, 1 - (40/44)².
    const delivered = await strip().locator('div', { hasText: 'delivered' }).first().innerText();
    expect(delivered).toMatch(/−0\.1\d \(−1[5-9]\u202f%/);
    const lines = await chart('Air over speed')
      .locator('svg[role] path')
      .evaluateAll((paths) => paths.map((path) => [path.getAttribute('class'), path.getAttribute('d')]));
    const pinned = lines.filter(([kind]) => kind!.includes('pinned')).map(([, d]) => d);
    const present = lines.filter(([kind]) => kind!.includes('line')).map(([, d]) => d);
    expect([pinned.length, present.length]).toEqual([2, 2]);
    expect(pinned.some((d) => present.includes(d))).toBe(false);
    expect(pinned.every((d) => (d!.match(/[ML]/g) ?? []).length > 1 || d!.includes(','))).toBe(true);
    const { bytes } = await saved('Air over speed', 'CSV');
    expect(bytes.toString('utf8').split('\r\n')[0]).toContain('pinned: ');
  });

  it('stands as ghosts in bars and loop on the other pages, and in what is saved', async () => {
    await open('breathing');
    await drawn(chart('Charge, cylinder by cylinder').locator('svg[role] .ghost'), 14);
    await drawn(chart('Pressure and volume, cylinder 1').locator('svg[role] path.pinned'), 1);
    await open('heat');
    await drawn(chart('Heat into the walls, cylinder by cylinder').locator('svg[role] .ghost'), 7);
    const svg = (await saved('Heat into the walls, cylinder by cylinder', 'SVG')).bytes.toString('utf8');
    expect(svg).toMatch(/Pinned, dotted: Lovage 7, 6000 rpm, throttle open/);
  });

  it('stays when another example opens, and says whose it is', async () => {
    await page.getByRole('combobox', { name: 'Example engine' }).selectOption({ label: 'Parsley 5' });
    await settled();
    expect(await strip().innerText()).toMatch(/Pinned Lovage 7, 6000 rpm.*Now Parsley 5/s);
    // Five of the seven cylinders have the same names.
    await drawn(chart('Heat into the walls, cylinder by cylinder').locator('svg[role] .ghost'), 5);
    await open('output');
    const pinned = await chart('Power over speed').locator('path.pinned').getAttribute('d');
    expect(pinned!.length).toBeGreaterThan(40);
  });

  it.each(['light', 'dark'] as const)('leaves nothing for axe-core to find, %s', async (colorScheme) => {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await open('air');
    expect(await axeFaults(page)).toEqual([]);
  });

  it.each([390, 768, 1440])('fits a window %i px wide without scrolling sideways', async (width) => {
    await page.setViewportSize({ width, height: 900 });
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(overflow).toBeLessThanOrEqual(0);
    await page.setViewportSize({ width: 1440, height: 900 });
  });

  it('goes when it is taken down', async () => {
    await strip().getByRole('button', { name: 'unpin' }).click();
    expect(await page.locator('.pinned, .ghost, .against').count()).toBe(0);
    await page.getByRole('combobox', { name: 'Example engine' }).selectOption({ label: 'Lovage 7' });
    await settled();
  });
});

describe('what a figure is', () => {
  it('opens at its name with equation, symbols and source, by keyboard, and gives the focus back', async () => {
    await open('air');
    const term = chart('Air over speed').getByRole('button', { name: 'kept', exact: true });
    await term.focus();
    await page.keyboard.press('Enter');
    const card = page.getByRole('dialog', { name: 'charging efficiency CE' });
    await card.waitFor();
    const text = await card.innerText();
    expect(text).toContain('trapped air that came with this turn / (ρa Vs)');
    expect(text).toMatch(/swept volume of a cylinder/);
    expect(text).toMatch(/Source: SAE J604/);
    expect(await axeFaults(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await card.waitFor({ state: 'detached' });
    expect(await term.evaluate((button) => button === document.activeElement)).toBe(true);
  });

  it('opens from key figures and table headings too, on every page', async () => {
    for (const id of ['air', 'pulses', 'breathing', 'heat', 'output']) {
      await open(id);
      const heading = page.locator('.answer th button').last();
      await heading.click();
      await page.getByRole('dialog').waitFor();
      expect((await page.getByRole('dialog').innerText()).length, id).toBeGreaterThan(60);
      await page.getByRole('button', { name: 'close', exact: true }).click();
      await page.getByRole('dialog').waitFor({ state: 'detached' });
    }
    await open('air');
    await page.locator('.answer dt button').first().click();
    await page.getByRole('dialog', { name: 'plenum gauge' }).waitFor();
    await page.keyboard.press('Escape');
  });
});

describe('numbers', () => {
  it('have no e and no hyphen for a minus anywhere on the five pages, tables included', async () => {
    for (const id of ['air', 'pulses', 'breathing', 'heat', 'output']) {
      await open(id);
      for (const button of await page.getByRole('button', { name: /^table of/ }).all()) await button.click();
      const text = await page.locator('body').innerText();
      expect(text.match(/\d[eE][+−-]?\d+/g), id).toBeNull();
      expect(text.match(/(^|[\s(])-\d[\d.]*/g), id).toBeNull();
      for (const button of await page.getByRole('button', { name: /^table of/ }).all()) await button.click();
    }
  });
});

describe('all this', () => {
  it('writes no error or warning to the console', () => {
    expect(complaints).toEqual([]);
  });
});
