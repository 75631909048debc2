/** Answers a study with the batch command's own code and prints how long it took and what memory it held: STUDY WORKERS. */
import { answerStudy } from '../src/cli/batch/run-batch.ts';
import type { StudyReport } from './rows/study.ts';

const [study, workers] = process.argv.slice(2);
const memory: number[] = [];
let answered = 0;
const began = performance.now();
await answerStudy(
  { study, out: study.replace('.jsonl', '.answers.jsonl'), shard: { part: 1, of: 1 }, jobs: Number(workers) },
  { err: (text) => void process.stderr.write(text) },
  () => {
    answered += 1;
    if (answered % 100 === 0) memory.push(process.memoryUsage.rss());
  },
);
const report: StudyReport = { seconds: (performance.now() - began) / 1000, memory };
console.log(JSON.stringify(report));
