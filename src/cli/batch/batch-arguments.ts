import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import { failure, success } from '../../sim/outcome.ts';
import type { Fault, Outcome } from '../../sim/outcome.ts';

/** Every `of`-th line, beginning with the `part`-th, both from 1. */
export interface Shard {
  readonly part: number;
  readonly of: number;
}

export interface BatchRequest {
  readonly study: string;
  readonly out: string;
  readonly shard: Shard;
  /** Threads that solve. */
  readonly jobs: number;
}

const MOST_JOBS = 256;
const MOST_SHARDS = 100_000;

/** What follows `batch` on the command line to a request, 'help' where it is asked for, or everything that is wrong with it. */
export function readBatchArguments(argv: readonly string[]): Outcome<BatchRequest | 'help'> {
  let parsed;
  try {
    parsed = parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: {
        shard: { type: 'string' },
        jobs: { type: 'string' },
        out: { type: 'string' },
        help: { type: 'boolean', short: 'h' },
      },
    });
  } catch (error) {
    return failure([{ path: '', message: (error as Error).message }]);
  }
  const { values, positionals } = parsed;
  if (values.help) return success('help');
  const [study, ...more] = positionals;
  const faults: Fault[] = [];
  const shard = readShard(values.shard);
  const jobs = readJobs(values.jobs);
  if (study === undefined)
    faults.push({ path: '', message: 'no study is given: a file with a line of JSON for each design' });
  if (more.length > 0) faults.push({ path: '', message: `too much is given: ${more.join(' ')}` });
  for (const each of [shard, jobs]) if (!each.ok) faults.push(...each.faults);
  if (study === undefined || !shard.ok || !jobs.ok || faults.length > 0) return failure(faults);
  const out = values.out ?? answersBeside(study, shard.value);
  if (out === study) return failure([{ path: '--out', message: `is the study itself, ${study}` }]);
  return success({ study, out, shard: shard.value, jobs: jobs.value });
}

/** `study.jsonl` is answered in `study.answers.jsonl`, its third part of eight in `study.answers.3-of-8.jsonl`. */
function answersBeside(study: string, { part, of }: Shard): string {
  const stem = study.replace(/\.jsonl?$/i, '');
  return `${stem}.answers${of > 1 ? `.${part}-of-${of}` : ''}.jsonl`;
}

function readShard(text: string | undefined): Outcome<Shard> {
  if (text === undefined) return success({ part: 1, of: 1 });
  const [, part = 0, of = 0] = (/^(\d+)\/(\d+)$/.exec(text) ?? []).map(Number);
  if (part >= 1 && part <= of && of <= MOST_SHARDS) return success({ part, of });
  const message = `is “${text}”; allowed 1/n to n/n, as 3/8 for the third of eight parts, n up to ${MOST_SHARDS}`;
  return failure([{ path: '--shard', message }]);
}

function readJobs(text: string | undefined): Outcome<number> {
  if (text === undefined) return success(Math.max(1, availableParallelism() - 1));
  const jobs = /^\d+$/.test(text) ? Number(text) : NaN;
  if (jobs >= 1 && jobs <= MOST_JOBS) return success(jobs);
  return failure([{ path: '--jobs', message: `is “${text}”; allowed 1 to ${MOST_JOBS}` }]);
}
