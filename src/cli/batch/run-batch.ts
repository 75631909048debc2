import { statSync } from 'node:fs';
import { dirname } from 'node:path';
import { failure, success } from '../../sim/outcome.ts';
import type { Fault, Outcome } from '../../sim/outcome.ts';
import { HELP } from '../help.ts';
import { BAD_INPUT, NO_ANSWER, SOLVED, tell } from '../streams.ts';
import type { Streams } from '../streams.ts';
import { AnswerThread } from './answer-thread.ts';
import type { LineTask } from './answer-thread.ts';
import { AnswersFile } from './answers-file.ts';
import type { Tally } from './answers-file.ts';
import { readBatchArguments } from './batch-arguments.ts';
import type { BatchRequest, Shard } from './batch-arguments.ts';
import { readLines } from './read-lines.ts';
import { nameOf, parseLine } from './study-line.ts';

/** `umbel batch`: answers a study of many designs line by line; returns the exit code. */
export async function runBatch(argv: readonly string[], streams: Streams): Promise<number> {
  const request = readBatchArguments(argv);
  if (!request.ok) {
    tell(request.faults, streams);
    streams.err('umbel --help tells more.\n');
    return BAD_INPUT;
  }
  if (request.value === 'help') {
    streams.out(HELP);
    return SOLVED;
  }
  const done = await answerStudy(request.value, streams);
  if (!done.ok) return tell(done.faults, streams);
  const { solved, unsolved, faulty } = done.value;
  streams.err(
    `${solved + unsolved + faulty} lines answered in ${request.value.out}: ${solved} solved, ${unsolved} without an answer, ${faulty} at fault\n`,
  );
  return unsolved + faulty === 0 ? SOLVED : NO_ANSWER;
}

/**
 * Answers what a study, or a part of it, still lacks. A few threads take one line after the other; nothing of a line is kept
 * once its answer is on the disk.
 *
 * @param watch - told of every answer that was written
 */
export async function answerStudy(
  { study, out, shard, jobs }: BatchRequest,
  { err }: Pick<Streams, 'err'>,
  watch: () => void = () => undefined,
): Promise<Outcome<Tally>> {
  try {
    if (!statSync(study).isFile()) return failure([{ path: '', message: `${study} is not a file` }]);
    const names = await namesOf(study);
    if (!names.ok) return names;
    const answers = await AnswersFile.open(out, names.value);
    if (!answers.ok) return answers;
    const { before, tally } = answers.value;
    if (before.size > 0) err(`${before.size} lines were answered before; going on\n`);
    const tasks = tasksOf(study, shard, before);
    const work = async (): Promise<void> => {
      const thread = new AnswerThread(dirname(study));
      try {
        for await (const task of shared(tasks)) {
          answers.value.add(await thread.answer(task));
          watch();
        }
      } finally {
        await tasks.return();
        await thread.close();
      }
    };
    await Promise.all(Array.from({ length: jobs }, work));
    answers.value.close();
    return success(tally);
  } catch (error) {
    // What the file system refuses: a missing study, a folder that may not be written to, a full disk.
    if (!(error instanceof Error && 'syscall' in error)) throw error;
    return failure([{ path: '', message: error.message }]);
  }
}

/** Faults of a study after which no more are looked for. */
const MOST_FAULTS = 20;

/** Every name of a study with its line, or where two lines have one name. */
async function namesOf(study: string): Promise<Outcome<ReadonlyMap<string, number>>> {
  const names = new Map<string, number>();
  const faults: Fault[] = [];
  for await (const { number, text } of readLines(study)) {
    const name = nameOf(parseLine(text), number);
    const first = names.get(name);
    if (first !== undefined) {
      const message = `Name is “${name}”, which line ${first} has already; allowed: a text of its own for each line`;
      faults.push({ path: `${study}, line ${number}, name`, message });
      if (faults.length === MOST_FAULTS) break;
    } else names.set(name, number);
  }
  if (faults.length > 0) return failure(faults);
  if (names.size === 0) return failure([{ path: '', message: `${study} holds no line` }]);
  return success(names);
}

/** The lines of a part of a study that are not answered yet. Lines are dealt out like cards. */
async function* tasksOf(
  study: string,
  shard: Shard,
  answered: ReadonlySet<string>,
): AsyncGenerator<LineTask, void> {
  let count = 0;
  for await (const { number, text } of readLines(study)) {
    if (count++ % shard.of !== shard.part - 1) continue;
    if (!answered.has(nameOf(parseLine(text), number))) yield { number, text };
  }
}

/** One row of tasks for several takers: that one of them is served does not end it for the others. */
const shared = <T>(tasks: AsyncGenerator<T, void>): AsyncIterable<T> => ({
  [Symbol.asyncIterator]: () => ({ next: () => tasks.next() }),
});
