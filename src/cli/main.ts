import { runBatch } from './batch/run-batch.ts';
import { run } from './run.ts';

const streams = {
  out: (text: string) => void process.stdout.write(text),
  err: (text: string) => void process.stderr.write(text),
};
const argv = process.argv.slice(2);

process.exitCode = argv[0] === 'batch' ? await runBatch(argv.slice(1), streams) : run(argv, streams);
