import type { Engine, PointResult } from '../../src/sim/index.ts';
import type { Pace, Solver } from '../../src/workers/sim-service.ts';
import { createSimService } from '../../src/workers/sim-service.ts';
import type { PointRequest } from '../../src/workers/api.ts';
import type { SpawnWorker } from '../../src/workers/worker-pool.ts';

export const engineNamed = (name: string): Engine => ({ name }) as Engine;

/** A solver whose answer carries the speed it was asked for, after a given number of turns. */
export function countingSolver(
  turns: number,
): Solver<{ name: string }> & { built: string[]; stepped: number } {
  return {
    built: [],
    stepped: 0,
    build(engine) {
      this.built.push(engine.name);
      return engine.name === 'unbuildable'
        ? { ok: false, faults: [{ path: 'train.crankRadius', message: 'The rod cannot go round.' }] }
        : { ok: true, value: { name: engine.name } };
    },
    *solve(_model, operating) {
      for (let cycle = 1; cycle <= turns; cycle++) {
        this.stepped += 1;
        yield { cycle, change: 1 / cycle };
      }
      const { speed, throttle } = operating;
      const result =
        speed < 0
          ? { converged: false, reason: 'The crank turns backwards.' }
          : { converged: true, speed, throttle };
      return { result: result as PointResult };
    },
  };
}

/** Breathes after every turn, and lets everything that waits run meanwhile. */
export const everyTurn: Pace = {
  now: () => 0,
  breathe: () => new Promise((resolve) => setImmediate(resolve)),
  longestStretch_ms: 0,
};

export interface FakeWorkers {
  readonly spawn: SpawnWorker;
  /** Requests in the order in which workers got them. */
  readonly handed: PointRequest[];
  readonly terminated: number[];
  /** Crashes the worker of this number; workers count from 0 in the order of their start. */
  crash(worker: number, reason: string): void;
}

/** Workers of the real service, in this thread. `fails` may throw for a request, as a bug would. */
export function fakeWorkers(
  turns: number,
  fails: (request: PointRequest) => void = () => undefined,
): FakeWorkers {
  const handed: PointRequest[] = [];
  const terminated: number[] = [];
  const crashes: ((reason: string) => void)[] = [];
  return {
    handed,
    terminated,
    crash: (worker, reason) => crashes[worker]!(reason),
    spawn: (events) => {
      const number = crashes.length;
      crashes.push((reason) => events.onCrash(reason));
      const service = createSimService(countingSolver(turns), everyTurn);
      service.watch((report) => events.onTurn(report));
      return {
        solve: async (request) => {
          handed.push(request);
          fails(request);
          return service.solve(request);
        },
        drop: (runId) => service.drop(runId),
        terminate: () => void terminated.push(number),
      };
    },
  };
}
