/** Name of a cylinder, as on the engine: row letter and number in the row, both from the first: A1. */
export const cylinderName = (rowIndex: number, cylinderIndex: number): string =>
  `${rowLetter(rowIndex)}${cylinderIndex + 1}`;

export const rowLetter = (rowIndex: number): string => String.fromCharCode('A'.charCodeAt(0) + rowIndex);

/** Indices of row and cylinder behind a name such as A3; null where it is not one. */
export function readCylinderName(name: string): { rowIndex: number; cylinderIndex: number } | null {
  const found = /^([A-Z])(\d+)$/.exec(name);
  if (!found) return null;
  return { rowIndex: found[1]!.charCodeAt(0) - 'A'.charCodeAt(0), cylinderIndex: Number(found[2]) - 1 };
}
