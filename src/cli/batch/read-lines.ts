import { createReadStream } from 'node:fs';

export interface Line {
  /** Counted from 1. */
  readonly number: number;
  readonly text: string;
  /** Bytes of the file up to and with its line feed. */
  readonly end: number;
  /** Whether a line feed ends it: the last line of a file that was cut off has none. */
  readonly whole: boolean;
}

const LINE_FEED = 0x0a;

/**
 * The lines of a UTF-8 file that hold anything, one at a time and with no more in memory than a piece of the file and the
 * line itself. Carriage returns and a byte order mark are left out.
 */
export async function* readLines(path: string): AsyncGenerator<Line, void> {
  let pieces: Buffer[] = [];
  let number = 0;
  let end = 0;
  const line = (whole: boolean): Line => {
    const bytes = Buffer.concat(pieces);
    pieces = [];
    number += 1;
    end += bytes.length + (whole ? 1 : 0);
    const text = bytes.toString('utf8');
    return { number, text: (number === 1 ? text.replace(/^\uFEFF/, '') : text).trim(), end, whole };
  };
  for await (const chunk of createReadStream(path) as AsyncIterable<Buffer>) {
    let from = 0;
    for (let at = chunk.indexOf(LINE_FEED); at >= 0; at = chunk.indexOf(LINE_FEED, from)) {
      pieces.push(chunk.subarray(from, at));
      from = at + 1;
      const found = line(true);
      if (found.text !== '') yield found;
    }
    if (from < chunk.length) pieces.push(chunk.subarray(from));
  }
  if (pieces.length === 0) return;
  const last = line(false);
  if (last.text !== '') yield last;
}
