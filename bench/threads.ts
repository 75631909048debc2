import { Worker } from 'node:worker_threads';
import * as Comlink from 'comlink';
import nodeEndpoint from 'comlink/dist/esm/node-adapter.mjs';
import type { Engine, OperatingPoint } from '../src/sim/index.ts';
import type { SpawnWorker } from '../src/workers/worker-pool.ts';
import type { PointReply, SimService } from '../src/workers/api.ts';
import type { State } from './core/cores.ts';

/** The app's own client and worker service of a state, on threads of Node.js instead of a browser's. */
export class Threads {
  readonly #client;

  constructor({ core, path }: State, count: number) {
    const spawn: SpawnWorker = () => {
      const worker = new Worker(new URL('./core/worker.mjs', import.meta.url), {
        workerData: { core: path },
      });
      worker.on('error', (error) => {
        throw error;
      });
      const service = Comlink.wrap<SimService>(nodeEndpoint(worker));
      return {
        solve: (request) => service.solve(request),
        study: (request) => service.study(request),
        drop: (runId) => void service.drop(runId),
        terminate: () => void worker.terminate(),
      };
    };
    this.#client = new core.SimClient(spawn, count, () => performance.now() / 1000);
  }

  /** All points of a sweep as the app asks for them, see src/workers/sweep-plan.ts; the baseline starts each cold. */
  sweep(engine: Engine, points: readonly OperatingPoint[]): Promise<PointReply[]> {
    return new Promise((resolve) => {
      const replies: PointReply[] = [];
      this.#client.sweep(engine, points, {
        onPoint: (index, reply) => (replies[index] = reply),
        onProgress: () => undefined,
        onEnd: () => resolve(replies),
      });
    });
  }

  /** Several engines at a point each. */
  each(asked: readonly (readonly [Engine, OperatingPoint])[]): Promise<PointReply[]> {
    return Promise.all(asked.map(([engine, point]) => this.sweep(engine, [point]).then(([reply]) => reply)));
  }

  close(): void {
    this.#client.close();
  }
}
