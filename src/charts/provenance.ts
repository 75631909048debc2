import { createContext } from 'svelte';

/** Whose figures the charts show, a line each, such as `Lovage 7, 6000 rpm`. Asked for when a drawing is saved. */
export type Provenance = () => readonly string[];

const [get, set, has] = createContext<Provenance>();
export const setProvenance = set;

/** The page's provenance; none where nobody gave one. */
export const provenance = (): Provenance => (has() ? get() : () => []);
