import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { AnswersFile } from '../../../src/cli/batch/answers-file.ts';

const path = join(mkdtempSync(join(tmpdir(), 'umbel-answers-')), 'answers.jsonl');
const asked = new Map(['a', 'b', 'c'].map((name, index) => [name, index]));
const answerTo = (name: string) => `{"name":"${name}","converged":true}`;

async function opened(text: string) {
  writeFileSync(path, text);
  return AnswersFile.open(path, asked);
}

describe('AnswersFile.open', () => {
  it.each([
    ['in the middle of a text', '{"name":"b","conver'],
    ['before its line feed', answerTo('b')],
    ['with a line feed behind rubbish', '\0\0\0\n'],
  ])('cuts off a last line that was torn %s, and keeps what is before', async (_, torn) => {
    const file = await opened(`${answerTo('a')}\n${torn}`);
    if (!file.ok) throw new Error(file.faults[0]!.message);
    expect([...file.value.before]).toEqual(['a']);
    file.value.add({ standing: 'solved', text: answerTo('b') });
    file.value.close();
    expect(readFileSync(path, 'utf8')).toBe(`${answerTo('a')}\n${answerTo('b')}\n`);
    expect(file.value.tally).toEqual({ solved: 2, unsolved: 0, faulty: 0 });
  });

  it.each([
    [
      'a line in the middle that is no answer',
      `${answerTo('a')}\nrubbish\n${answerTo('b')}\n`,
      'line 2',
      'is not an answer',
    ],
    [
      'an answer that the study does not ask',
      `${answerTo('z')}\n`,
      'line 1',
      'answers “z”, which the study does not ask',
    ],
    [
      'an answer that is there already',
      `${answerTo('a')}\n${answerTo('a')}\n`,
      'line 2',
      'answers “a” once more',
    ],
  ])('refuses a file with %s, and leaves it as it is', async (_, text, where, what) => {
    const file = await opened(text);
    expect(file.ok ? [] : file.faults).toEqual([
      { path: `${path}, ${where}`, message: `${what}; move the file or give another --out` },
    ]);
    expect(readFileSync(path, 'utf8')).toBe(text);
  });
});
