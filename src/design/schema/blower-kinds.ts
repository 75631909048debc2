export const KINDS = ['roots', 'internal compression', 'centrifugal'] as const;
/** Inputs that count for some kinds only. */
export const of = (...kinds: readonly (typeof KINDS)[number][]) => ({ only: { key: 'kind', is: kinds } });
export const displacing = of('roots', 'internal compression');
