import { once } from 'node:events';
import { Worker } from 'node:worker_threads';
import { brokenAnswer } from './answer-line.ts';
import type { Answer } from './answer-line.ts';

export interface ThreadData {
  readonly folder: string;
}

export interface LineTask {
  readonly text: string;
  /** In its file, from 1. */
  readonly number: number;
}

/**
 * Room for short-lived objects in each thread [MB]. Left to itself the engine lets it grow over some thousand lines, though nothing
 * is kept: live memory after a collection stays within 2 %.
 */
const YOUNG_MEMORY_MB = 8;

/** What a thread says first. */
export const READY = 'ready';

/** A thread that answers one line at a time. Where it dies of a line, the next one gets a new thread. */
export class AnswerThread {
  #worker: Worker | null = null;

  /** @param folder - where files named by a line are looked for */
  constructor(private readonly folder: string) {}

  /** Throws where no thread can be started. */
  async answer(task: LineTask): Promise<Answer> {
    const worker = (this.#worker ??= await this.#start());
    const over = new AbortController();
    const { signal } = over;
    try {
      const died = once(worker, 'exit', { signal }).then(([code]) => {
        throw new Error(`its thread ended with code ${code}`);
      });
      worker.postMessage(task);
      const [answer] = await Promise.race([once(worker, 'message', { signal }), died]);
      return answer as Answer;
    } catch (error) {
      this.#worker = null;
      return brokenAnswer(task.text, task.number, String(error));
    } finally {
      over.abort();
    }
  }

  async close(): Promise<void> {
    await this.#worker?.terminate();
  }

  async #start(): Promise<Worker> {
    const workerData: ThreadData = { folder: this.folder };
    const worker = new Worker(new URL('./start-thread.mjs', import.meta.url), {
      workerData,
      resourceLimits: { maxYoungGenerationSizeMb: YOUNG_MEMORY_MB },
    });
    await once(worker, 'message');
    return worker;
  }
}
