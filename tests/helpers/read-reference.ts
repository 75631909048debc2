import { readFileSync } from 'node:fs';

/** Rows of a file in tests/reference by column name; comment lines and quotes dropped. */
export function readReference(file: string): Record<string, string>[] {
  const text = readFileSync(new URL(`../reference/${file}`, import.meta.url), 'utf8');
  const rows = text
    .split('\n')
    .filter((line) => line.trim() !== '' && !line.startsWith('#'))
    .map((line) => (line.match(/"[^"]*"|[^,]+/g) ?? []).map((cell) => cell.replaceAll('"', '').trim()));
  const [head, ...body] = rows;
  return body.map((cells) => Object.fromEntries(head.map((name, i) => [name, cells[i] ?? ''])));
}
