import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { percent } from '../../src/sim/units.ts';
import { ROOT } from '../core/at-commit.ts';
import { figuresOf, largestDifference } from '../figures.ts';
import { referenceFigures } from '../reference.ts';
import { NOTHING } from '../row.ts';
import type { Rows } from '../row.ts';
import { at } from '../solved.ts';
import { Threads } from '../threads.ts';

const LINES = 1000;
const WORKERS = 2;
/** Lines that the baseline answers: it has no batch, so its own pool answers these and the time is scaled. */
const BASELINE_LINES = 100;
/** Every so-many-th answer is held against its reference. */
const CHECKED = 100;

export interface StudyReport {
  readonly seconds: number;
  /** Resident memory of the process with all its threads after each hundred answers [bytes]. */
  readonly memory: readonly number[];
}

/** Additive recurrences: values that fill a range evenly and are the same every time. */
const even = (index: number, factor: number): number => (index * factor) % 1;

const lineOf = (index: number) => ({
  name: `${index}`,
  speed_rpm: Math.round(1500 + 8000 * even(index, Math.SQRT2)),
  throttle: 0.6 + 0.4 * even(index, Math.sqrt(3)),
  set: {
    'blower.tipGap_mm': 0.03 + 0.05 * even(index, Math.sqrt(5)),
    'fuel.lambda': 0.8 + 0.15 * even(index, Math.sqrt(7)),
    'plenum.volume_cc': 800 + 600 * even(index, Math.sqrt(11)),
  },
});
const changesOf = ({ set }: ReturnType<typeof lineOf>) =>
  Object.entries(set).map(([path, value]) => ({ path, text: String(value) }));

/** A thousand designs through the batch command's own code, in a process of its own. */
export const study: Rows = async function* ({ present, baseline, kept }) {
  const text = kept['lovage-7'];
  const lines = Array.from({ length: LINES }, (_, index) => lineOf(index));
  const folder = mkdtempSync(join(tmpdir(), 'umbel-study-'));
  const path = join(folder, 'study.jsonl');
  const design = JSON.parse(text) as object;
  writeFileSync(join(folder, 'design.json'), JSON.stringify(design));
  writeFileSync(
    path,
    lines.map((line) => `${JSON.stringify({ ...line, design: 'design.json' })}\n`).join(''),
  );
  const child = join(ROOT, 'bench/study-process.ts');
  const { stdout } = await promisify(execFile)(
    process.execPath,
    ['--import', 'tsx', child, path, String(WORKERS)],
    {
      cwd: ROOT,
    },
  );
  const { seconds, memory } = JSON.parse(stdout) as StudyReport;
  const answers = readFileSync(join(folder, 'study.answers.jsonl'), 'utf8').trim().split('\n');
  const unsolved = answers.filter((answer) => !answer.includes('"converged":true')).length;
  rmSync(folder, { recursive: true });

  const threads = new Threads(baseline, WORKERS);
  const asked = lines
    .slice(0, BASELINE_LINES)
    .map(
      (line) =>
        [baseline.core.modelOf(text, changesOf(line)).engine, at(line.speed_rpm, line.throttle)] as const,
    );
  const began = performance.now();
  await threads.each(asked);
  const baselineSeconds = ((performance.now() - began) / 1000) * (LINES / BASELINE_LINES);
  threads.close();

  const errors = lines
    .filter((_, index) => index % CHECKED === 0)
    .flatMap((line) => {
      const model = present.core.modelOf(text, changesOf(line));
      const point = at(line.speed_rpm, line.throttle);
      const { result } = present.core.solveToEnd(model, point);
      // Points without an answer are counted in the name of the row.
      if (!result.converged) return [];
      return [largestDifference(figuresOf(result), referenceFigures(present, model, point))];
    });
  yield {
    ...NOTHING,
    work: `${LINES}-point study, ${WORKERS} workers${unsolved > 0 ? `, ${unsolved} without an answer` : ''}`,
    median: `${seconds.toFixed(1)} s`,
    aim: '20 s',
    error: Math.max(...errors),
    ratio: seconds / baselineSeconds,
  };
  const [first, ...later] = memory;
  yield {
    ...NOTHING,
    work: `  its memory: ${mb(first)} after 100 points, ${mb(later[later.length - 1])} after ${LINES}; farthest off`,
    median: `${(Math.max(...later.map((bytes) => Math.abs(bytes / first - 1))) / percent).toFixed(1)} %`,
    aim: '10 %',
  };
};

const mb = (bytes: number): string => `${(bytes / 1e6).toFixed(0)} MB`;
