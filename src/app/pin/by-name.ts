/** Values of other cylinders in the order of these, found by name; NaN for a cylinder that the others lack. */
export const byName = (
  names: readonly string[],
  otherNames: readonly string[],
  others: readonly number[],
): number[] => names.map((name) => others[otherNames.indexOf(name)] ?? NaN);
