import type { Locator } from 'playwright-core';

/** What stands in an element, with plain spaces where a figure is held together with its unit. */
export const readText = async (element: Locator): Promise<string> =>
  (await element.innerText()).replaceAll('\u00a0', ' ');
