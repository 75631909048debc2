import type { TableColumn } from './chart-types.ts';

const quoted = (text: string): string => (/[",\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

const cell = (value: number | string | null | undefined): string => {
  if (typeof value === 'string') return quoted(value);
  return value === null || value === undefined || !Number.isFinite(value) ? '' : String(value);
};

/** The figures behind a drawing as comma-separated values (RFC 4180), unrounded; a missing one is an empty cell. */
export function csv(columns: readonly TableColumn[]): string {
  const rowCount = Math.max(0, ...columns.map(({ values }) => values.length));
  const rows = Array.from({ length: rowCount }, (_, row) => columns.map(({ values }) => cell(values[row])));
  return [columns.map(({ heading }) => quoted(heading.replaceAll('\u00a0', ' '))), ...rows]
    .map((row) => `${row.join(',')}\r\n`)
    .join('');
}

/** A name for a file about something: its title in small letters and hyphens. */
export const fileName = (title: string, ending: string): string =>
  `${title
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')}.${ending}`;
