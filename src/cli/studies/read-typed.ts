import { parseQuantity } from '../../design/parse-quantity.ts';
import type { Unit } from '../../design/unit-table.ts';
import { failure, success } from '../../sim/outcome.ts';
import type { Outcome } from '../../sim/outcome.ts';

/**
 * A quantity typed behind an option, in base SI.
 *
 * @param unit      - in which a bare number is meant
 * @param otherwise - what it is where nothing is typed
 */
export function readTyped<T>(
  option: string,
  text: string | undefined,
  unit: Unit,
  otherwise: T,
): Outcome<number | T> {
  if (text === undefined) return success(otherwise);
  const read = parseQuantity(text, unit);
  return read.ok
    ? success(read.value.value)
    : failure(read.faults.map(({ message }) => ({ path: option, message })));
}
