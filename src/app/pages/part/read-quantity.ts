import { parseQuantity } from '../../../design/parse-quantity.ts';
import type { Unit } from '../../../design/unit-table.ts';
import { failure, success } from '../../../sim/outcome.ts';
import type { Outcome } from '../../../sim/outcome.ts';

/**
 * What is typed into a small form, in base SI.
 *
 * @param unit    - in which a bare number is meant
 * @param range   - least and greatest that are allowed, base SI
 * @param allowed - the same in words
 */
export function readQuantity(
  text: string,
  unit: Unit,
  range: readonly [number, number],
  allowed: string,
): Outcome<number> {
  const read = parseQuantity(text, unit);
  if (!read.ok)
    return failure(
      read.faults.map(({ message }) => ({ path: '', message: `${message}; allowed ${allowed}` })),
    );
  const { value } = read.value;
  const slack = 1e-9 * Math.max(...range.map(Math.abs));
  return value >= range[0] - slack && value <= range[1] + slack
    ? success(value)
    : failure([{ path: '', message: `${text.trim()} is out of range; allowed ${allowed}` }]);
}

/** What is wrong with what is typed; empty where nothing is, or nothing is typed. */
export const faultOf = (read: Outcome<number> | null): string =>
  read === null || read.ok ? '' : read.faults.map(({ message }) => message).join('; ');
