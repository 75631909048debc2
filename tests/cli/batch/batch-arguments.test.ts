import { describe, expect, it } from 'vitest';
import { readBatchArguments } from '../../../src/cli/batch/batch-arguments.ts';

const read = (...argv: string[]) => readBatchArguments(argv);

describe('readBatchArguments', () => {
  it('answers beside the study, every shard in a file of its own, unless a file is given', () => {
    const outs = [['s/a.jsonl'], ['s/a.jsonl', '--shard', '3/8'], ['a', '--out', 'b']].map((argv) => {
      const request = read(...argv);
      return request.ok && request.value !== 'help' && request.value.out;
    });
    expect(outs).toEqual(['s/a.answers.jsonl', 's/a.answers.3-of-8.jsonl', 'b']);
  });

  it('solves with at least one thread', () => {
    const request = read('a.jsonl');
    expect(request.ok && request.value !== 'help' && request.value.jobs).toBeGreaterThanOrEqual(1);
  });

  it.each([
    ['', 'no study is given'],
    ['a b', 'too much is given: b'],
    ['a --shard 0/8', 'is “0/8”; allowed 1/n to n/n'],
    ['a --shard 9/8', 'is “9/8”; allowed 1/n to n/n'],
    ['a --shard half', 'is “half”; allowed 1/n to n/n'],
    ['a --jobs 0', 'is “0”; allowed 1 to 256'],
    ['a --jobs many', 'is “many”; allowed 1 to 256'],
    ['a --out a', 'is the study itself, a'],
    ['a --speed 3', "Unknown option '--speed'"],
  ])('refuses “%s”, and says why', (argv, said) => {
    const request = read(...argv.split(' ').filter((each) => each !== ''));
    expect(request.ok ? '' : request.faults.map(({ message }) => message).join()).toContain(said);
  });
});
