import { createContext } from 'svelte';

/** Opens what a term means, beside the element that asked. */
export type Definer = (term: string, opener: HTMLElement) => void;

const [get, set, has] = createContext<Definer>();
export const setDefiner = set;

/** The page's definer; null where nobody gave one, so that terms are plain words there. */
export const definer = (): Definer | null => (has() ? get() : null);
