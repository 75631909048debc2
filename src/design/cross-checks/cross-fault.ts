import type { Fault } from '../../sim/outcome.ts';

/** What cannot hold together, though each value alone is allowed. */
export interface CrossFault extends Fault {
  /** Paths of the values that it speaks of; where one of them is itself at fault, this is not reported. */
  readonly uses: readonly string[];
}

/** A fault that uses its own path, and others. */
export const fault = (path: string, message: string, ...uses: string[]): CrossFault => ({
  path,
  message,
  uses: [path, ...uses],
});
