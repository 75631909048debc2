import type { DesignStore } from '../design-store.svelte.ts';

/** Why the change that was asked for at a place of a sheet was not made, in words. */
export const notChanged = (store: DesignStore, path: string): readonly string[] =>
  store.whyUnmade(path).map(({ message }) => `Not changed: ${message}`);
