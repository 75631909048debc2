import type { Fault } from '../sim/outcome.ts';

/** Where words go: results, and what is wrong. */
export interface Streams {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

/** Exit codes. */
export const SOLVED = 0;
export const NO_ANSWER = 1;
export const BAD_INPUT = 2;

export function tell(faults: readonly Fault[], { err }: Streams): number {
  for (const { path, message } of faults) err(path === '' ? `${message}\n` : `${path}: ${message}\n`);
  return BAD_INPUT;
}
