/** Columns of text, the first to the left, the others to the right. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const lines = [head, ...rows];
  const widths = head.map((_, column) => Math.max(...lines.map((line) => (line[column] ?? '').length)));
  return lines
    .map((line) =>
      line
        .map((cell, column) => (column === 0 ? cell.padEnd(widths[0]!) : cell.padStart(widths[column]!)))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}
