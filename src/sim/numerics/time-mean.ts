/** Mean of a column over the angles or times it stands at, by trapezia [unit of the column]; at least two of them. */
export function timeMean(at: Float64Array, column: Float64Array): number {
  let area = 0;
  for (let i = 1; i < at.length; i++) area += 0.5 * (column[i]! + column[i - 1]!) * (at[i]! - at[i - 1]!);
  return area / (at[at.length - 1]! - at[0]!);
}
