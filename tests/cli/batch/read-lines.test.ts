import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLines } from '../../../src/cli/batch/read-lines.ts';
import type { Line } from '../../../src/cli/batch/read-lines.ts';

const path = join(mkdtempSync(join(tmpdir(), 'umbel-lines-')), 'some.jsonl');

async function linesOf(bytes: string | Uint8Array): Promise<Line[]> {
  writeFileSync(path, bytes);
  const lines: Line[] = [];
  for await (const line of readLines(path)) lines.push(line);
  return lines;
}

describe('readLines', () => {
  it('gives text, number and end in bytes of every line that holds anything, and tells a last one without a line feed', async () => {
    expect(await linesOf('\uFEFFé\r\n\n  \nlast')).toEqual([
      { number: 1, text: 'é', end: 7, whole: true },
      { number: 4, text: 'last', end: 15, whole: false },
    ]);
  });

  it('gives nothing for an empty file', async () => {
    expect(await linesOf('')).toEqual([]);
  });

  it('puts lines together that are longer than what is read at once, and cuts no letter in two', async () => {
    const long = 'µ'.repeat(150_001);
    const lines = await linesOf(`a\n${long}\nb\n`);
    expect(lines.map(({ text }) => text)).toEqual(['a', long, 'b']);
    expect(lines[1]!.end).toBe(2 + 2 * 150_001 + 1);
  });

  it('leaves, cut at the end of any whole line, a file of just the lines before', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.string({ unit: 'grapheme' }).filter((text) => !/[\r\n]/.test(text))),
        async (texts) => {
          const lines = await linesOf(texts.map((text) => `${text}\n`).join(''));
          const bytes = readFileSync(path);
          for (const [index, { end }] of lines.entries()) {
            const before = await linesOf(bytes.subarray(0, end));
            expect(before).toEqual(lines.slice(0, index + 1));
          }
        },
      ),
      { seed: 7, numRuns: 30 },
    );
  });
});
