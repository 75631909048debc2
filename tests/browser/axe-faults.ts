import { createRequire } from 'node:module';
import type * as Axe from 'axe-core';
import type { Page } from 'playwright-core';

const axePath = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

/** What axe-core finds wrong with the page as it stands, by WCAG 2.2 A and AA; a line for each rule. */
export async function axeFaults(page: Page): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.addScriptTag({ path: axePath });
  return page.evaluate(async () => {
    const { axe } = window as unknown as { axe: typeof Axe };
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
    const { violations } = await axe.run(document, { runOnly: { type: 'tag', values: tags } });
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' | ')}`);
  });
}
