import { runBatch } from './batch/run-batch.ts';
import { run } from './run.ts';
import { isStudy, runStudy } from './studies/run-study.ts';

const streams = {
  out: (text: string) => void process.stdout.write(text),
  err: (text: string) => void process.stderr.write(text),
};
const argv = process.argv.slice(2);

const [name, ...rest] = argv;

process.exitCode =
  name === 'batch'
    ? await runBatch(rest, streams)
    : isStudy(name)
      ? runStudy(argv, streams)
      : run(argv, streams);
