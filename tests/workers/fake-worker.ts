import type { Engine, PointResult, SolvedPoint, SolvedStart } from '../../src/sim/index.ts';
import type { Pace, Solver, Student } from '../../src/workers/sim-service.ts';
import { createSimService } from '../../src/workers/sim-service.ts';
import type { PointRequest, StudyRequest } from '../../src/workers/api.ts';
import type { SpawnWorker } from '../../src/workers/worker-pool.ts';

export const engineNamed = (name: string): Engine => ({ name }) as Engine;

/** Where a point of this speed stands, and the speed of such a start. */
export const startOf = (speed: number): SolvedStart => ({
  state: Float64Array.of(speed),
  memory: new Float64Array(0),
  volumes: new Float64Array(0),
  mesh: new Float64Array(0),
  lambda: 0.9,
  secants: { residuals: [], values: [] },
});

/**
 * A solver whose answer carries the speed it was asked for and `cycles` the speed it started from, after a given number
 * of turns; its preview comes with the first turn.
 */
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
    *solve(_model, operating, { start, preview }) {
      const { speed, throttle } = operating;
      const cycles = start?.state[0] ?? 0;
      for (let cycle = 1; cycle <= turns; cycle++) {
        this.stepped += 1;
        const glance = preview === true && cycle === 1;
        yield {
          cycle,
          change: 1 / cycle,
          preview: glance ? ({ speed, cycles, preliminary: true } as SolvedPoint) : null,
          near: glance ? startOf(speed + 0.5) : null,
        };
      }
      const result =
        speed < 0
          ? { converged: false, reason: 'The crank turns backwards.' }
          : { converged: true, speed, throttle, cycles };
      return { result: result as PointResult, next: result.converged ? startOf(speed) : null };
    },
  };
}

/** A student of as many steps; its answer is the speed of the first line, and a standing crank is at fault. */
export const countingStudent = (steps: number): Student<unknown> =>
  function* (_model, question) {
    for (let step = 1; step <= steps; step++) yield { doing: `step ${step}` };
    if (question.kind !== 'gains') throw new Error('only gains are asked for here');
    const [speed = 0] = question.speeds;
    return speed === 0
      ? { ok: false, faults: [{ path: 'speeds', message: 'The crank stands.' }] }
      : { ok: true, value: [{ speed, gain: null }] };
  };

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
  readonly studied: StudyRequest[];
  readonly terminated: number[];
  /** Crashes the worker of this number; workers count from 0 in the order of their start. */
  crash(worker: number, reason: string): void;
  /** From now on this worker neither reports nor replies. */
  silence(worker: number): void;
}

/** Workers of the real service, in this thread. `fails` may throw for a request, as a bug would. */
export function fakeWorkers(
  turns: number,
  fails: (request: PointRequest | StudyRequest) => void = () => undefined,
): FakeWorkers {
  const handed: PointRequest[] = [];
  const studied: StudyRequest[] = [];
  const terminated: number[] = [];
  const crashes: ((reason: string) => void)[] = [];
  const silent = new Set<number>();
  return {
    handed,
    studied,
    terminated,
    crash: (worker, reason) => crashes[worker]!(reason),
    silence: (worker) => void silent.add(worker),
    spawn: (events) => {
      const number = crashes.length;
      crashes.push((reason) => events.onCrash(reason));
      const service = createSimService(countingSolver(turns), everyTurn, countingStudent(turns));
      const spoken = <Reply>(reply: Reply) =>
        silent.has(number) ? new Promise<never>(() => undefined) : reply;
      service.watch((report) => {
        if (!silent.has(number)) events.onTurn(report);
      });
      service.watchStudies((report) => {
        if (!silent.has(number)) events.onStudy(report);
      });
      return {
        solve: async (request) => {
          handed.push(request);
          fails(request);
          return spoken(await service.solve(request));
        },
        study: async (request) => {
          studied.push(request);
          fails(request);
          return spoken(await service.study(request));
        },
        drop: (runId) => service.drop(runId),
        terminate: () => void terminated.push(number),
      };
    },
  };
}
