import type { Engine } from '../sim/index.ts';

/** What decides which volumes a solution has: rows, their cylinders, collectors. */
const layoutOf = ({ train, collectors }: Engine): string =>
  JSON.stringify([train.rows.map((row) => row.cylinders.length), collectors.length]);

/** Whether one engine's solution can stand over the other's cylinders until there is a newer one. */
export const sameLayout = (a: Engine, b: Engine): boolean => layoutOf(a) === layoutOf(b);
