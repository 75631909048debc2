import type { Design } from '../schema/design.ts';
import type { CrossFault } from './cross-fault.ts';
import { fault } from './cross-fault.ts';

/** A blend is of two fuels. */
export function* blend({ fuel }: Design): Generator<CrossFault> {
  if (fuel.blend?.kind !== fuel.kind) return;
  yield fault(
    'fuel.blend.kind',
    `the second fuel is ${fuel.kind}, as the first is; allowed: another fuel, or no blend`,
    'fuel.kind',
  );
}
