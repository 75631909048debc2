import { createContext } from 'svelte';
import { UNIT_SETS } from './shown-units.ts';
import type { ShownUnits } from './shown-units.ts';

const [get, set, has] = createContext<() => ShownUnits>();

export const setShownUnits = set;

/** The units to show figures in, for parts of the page that know nothing else of it. */
export const shownUnits = (): (() => ShownUnits) => (has() ? get() : () => UNIT_SETS[0]!);
