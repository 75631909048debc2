import { chromium } from 'playwright-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchOptions } from '../../scripts/find-browser.ts';
import { toEngine } from '../../src/design/to-engine.ts';
import { buildGeometry } from '../../src/sim/geometry/build-geometry.ts';
import { preset } from '../design/designs.ts';

let browser: Browser;
let page: Page;

beforeAll(async () => {
  browser = await chromium.launch(launchOptions(inject('browserPath')));
  page = await browser.newPage({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' });
  await page.goto(inject('appUrl'));
  await page.locator('main[data-point="solved"]').waitFor();
});

afterAll(async () => {
  await browser.close();
});

/** Crowns of the drawn pistons, from the crank axis along each barrel [m]. */
const drawnCrowns = (): Promise<number[]> =>
  page.locator('[data-scale]').evaluate((drawing) => {
    const scale = Number((drawing as SVGElement).dataset['scale']);
    const barrels = [...drawing.querySelectorAll<SVGGElement>('[data-barrel]')].sort((a, b) =>
      a.dataset['barrel']!.localeCompare(b.dataset['barrel']!),
    );
    return barrels.map((barrel) => -barrel.querySelector<SVGPathElement>('path.piston')!.getBBox().y / scale);
  });

describe('the drawing of the engine', () => {
  it('shows all seven pistons of Lovage 7 at the height of the model, at 24 angles', async () => {
    const engine = toEngine(preset('lovage-7'));
    const geometry = buildGeometry(engine);
    if (!geometry.ok) throw new Error('Lovage 7 has a geometry');
    await page.getByRole('slider', { name: 'crank angle' }).first().focus();
    await page.keyboard.press('Home');
    for (let angle_deg = 0; angle_deg < 360; angle_deg += 15) {
      const wanted = geometry.value.cylinders.map((cylinder) => {
        cylinder.motion.evaluate((angle_deg * Math.PI) / 180 + cylinder.pinOffset);
        // The drawing puts the edge of the crown 0.6 bores above the gudgeon pin.
        return cylinder.motion.height + 0.6 * engine.cylinder.bore;
      });
      const drawn = await drawnCrowns();
      expect(drawn).toHaveLength(7);
      // Boxes of drawings are held in single precision: 0.01 mm of some 150 mm.
      drawn.forEach((height, i) => expect(Math.abs(height - wanted[i]!)).toBeLessThan(1e-5));
      await page.keyboard.press('PageUp');
      for (let step = 0; step < 5; step++) await page.keyboard.press('ArrowRight');
    }
  });

  it.each([
    ['cylinder', 'Cylinder'],
    ['windows', 'Windows'],
    ['plenum', 'Plenum and passages'],
    ['crank', 'Crank and rods'],
    ['exhaust', 'Exhaust'],
    ['blower', 'Blower and drive'],
  ])('opens the sheet of a part that is pressed: %s, by the name of %s', async (part, label) => {
    const handle = page.locator(`[data-handle="${part}"]`).first();
    expect(await handle.getAttribute('aria-label')).toBe(`open ${label}`);
    expect(await handle.evaluate((node) => getComputedStyle(node).cursor)).toBe('pointer');
    const place = await handle.evaluate((node) => {
      // A point of the part that nothing lies over.
      const shapes = [...node.querySelectorAll<SVGGeometryElement>('path, circle, line, rect')];
      for (const shape of shapes) {
        const matrix = shape.getScreenCTM()!;
        for (let k = 0; k < 40; k++) {
          const { x, y } = shape
            .getPointAtLength(((k + 0.5) / 40) * shape.getTotalLength())
            .matrixTransform(matrix);
          if (node.contains(document.elementFromPoint(x, y))) return { x, y };
        }
      }
      return null;
    });
    expect(place).not.toBeNull();
    await page.mouse.click(place!.x, place!.y);
    await page.getByRole('heading', { name: label, level: 3, exact: true }).waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('navigation', { name: 'Parts' }).waitFor();
  });
});
