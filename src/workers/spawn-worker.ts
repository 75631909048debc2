import * as Comlink from 'comlink';
import type { SimService } from './api.ts';
import type { SpawnWorker } from './worker-pool.ts';

const newWorker = (): Worker =>
  new Worker(new URL('./sim.worker.ts', import.meta.url), { type: 'module', name: 'umbel model' });

let ahead: Worker | null = null;

/** Lets the first worker load while the page itself still does. */
export function startAhead(): void {
  ahead ??= newWorker();
}

/** Starts a real worker, or takes the one that was started ahead. The only place that knows of `Worker`. */
export const spawnWorker: SpawnWorker = (events) => {
  const worker = ahead ?? newWorker();
  ahead = null;
  worker.addEventListener('error', (event) => {
    event.preventDefault();
    events.onCrash(event.message || 'The worker stopped without saying why.');
  });
  worker.addEventListener('messageerror', () => events.onCrash('A reply could not be read.'));
  const service = Comlink.wrap<SimService>(worker);
  void service.watch(Comlink.proxy((report) => events.onTurn(report)));
  void service.watchStudies(Comlink.proxy((report) => events.onStudy(report)));
  return {
    solve: (request) => service.solve(request),
    study: (request) => service.study(request),
    drop: (runId) => void service.drop(runId),
    terminate: () => worker.terminate(),
  };
};
