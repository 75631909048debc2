/** A quantity and its unit as a heading; an empty unit is a plain number. */
export const withUnit = (quantity: string, unit: string): string =>
  unit === '' ? quantity : `${quantity}, ${unit}`;
