import { parentPort, workerData } from 'node:worker_threads';
import { answerLine, brokenAnswer } from './answer-line.ts';
import type { Answer } from './answer-line.ts';
import { DesignShelf } from './design-shelf.ts';
import { READY } from './answer-thread.ts';
import type { LineTask, ThreadData } from './answer-thread.ts';

/** One thread of a batch: lines in, answers out, one at a time. */
const shelf = new DesignShelf((workerData as ThreadData).folder);

function answer({ text, number }: LineTask): Answer {
  try {
    return answerLine(text, number, shelf);
  } catch (error) {
    return brokenAnswer(text, number, String(error));
  }
}

parentPort!.on('message', (task: LineTask) => parentPort!.postMessage(answer(task)));
parentPort!.postMessage(READY);
