import type { Engine, OperatingPoint, SolvedPoint, SolvedStart } from '../sim/index.ts';
import type { PointReply, PointRequest, StudyReply, StudyReport, TurnReport } from './api.ts';
import type { StudyQuestion } from './study-questions.ts';
import { sweepPlan } from './sweep-plan.ts';
import { WorkerPool } from './worker-pool.ts';
import type { SpawnWorker, Task, Urgency } from './worker-pool.ts';

export interface PointEvents {
  /** Preliminary figures and the state they stand on, ahead of the reply: once, or twice where a start was no good. */
  onPreview?(preview: SolvedPoint, near: SolvedStart | null): void;
  onTurn?(report: TurnReport): void;
  onReply(reply: PointReply): void;
  /** A worker crashed and the work starts again. */
  onTrouble?(reason: string): void;
}

export interface SweepProgress {
  readonly done: number;
  readonly total: number;
  /** Estimated from the pace so far; null before the first point is done [s]. */
  readonly timeLeft: number | null;
}

export interface SweepEvents {
  /** As each point is solved, in whatever order; `index` counts in the list that was asked for. */
  onPoint(index: number, reply: PointReply): void;
  onProgress(progress: SweepProgress): void;
  /** All points have replied. Not called when the sweep is stopped. */
  onEnd(): void;
  onTrouble?(reason: string): void;
}

export interface StudyEvents {
  /** What it is at, between turns. */
  onStep?(doing: string): void;
  onReply(reply: StudyReply): void;
  onTrouble?(reason: string): void;
}

export interface Running {
  /** Drops what has not replied yet; nothing is reported from here on. */
  stop(): void;
}

type Asked = Omit<PointRequest, 'runId' | 'engineId'>;

/** Workers for a machine of so many cores: one is left to the page. */
export const poolSize = (cores: number): number => Math.max(1, Math.floor(cores) - 1);

/**
 * The page's one door to the model. `now` counts seconds from any origin. Answers depend on the request alone, so
 * neither the number of workers nor the order in which they finish shows in them.
 */
export class SimClient {
  readonly #pool: WorkerPool;
  readonly #now: () => number;
  readonly #engineIds = new WeakMap<Engine, number>();
  #engines = 0;
  #runs = 0;

  constructor(spawn: SpawnWorker, size: number, now: () => number) {
    this.#pool = new WorkerPool(spawn, size);
    this.#now = now;
  }

  /** One point, ahead of all background work. `start` is a neighbour to go on from, or null for the cold start. */
  point(engine: Engine, operating: OperatingPoint, start: SolvedStart | null, events: PointEvents): Running {
    const asked = { engine, operating, start, preview: events.onPreview !== undefined };
    const task = this.#task(asked, 'now', events);
    this.#pool.add(task);
    return { stop: () => this.#pool.drop(task) };
  }

  /**
   * Many points, shared over the pool, in the order and from the starts of `sweepPlan`: a point waits for the one it goes on from.
   */
  sweep(engine: Engine, points: readonly OperatingPoint[], events: SweepEvents): Running {
    const began = this.#now();
    const total = points.length;
    let done = 0;
    const plan = sweepPlan(points);
    const open = new Set<Task>();
    let stopped = false;
    const begin = (index: number, start: SolvedStart | null): void => {
      const asked = { engine, operating: points[index]!, start, preview: false };
      const task = this.#task(asked, 'background', {
        onReply: (reply) => {
          open.delete(task);
          done += 1;
          const perPoint = (this.#now() - began) / done;
          events.onPoint(index, reply);
          events.onProgress({ done, total, timeLeft: perPoint * (total - done) });
          if (done === total) events.onEnd();
          const next = reply.status === 'solved' ? reply.next : null;
          for (const each of plan) if (each.from === index && !stopped) begin(each.index, next);
        },
        ...(events.onTrouble && { onTrouble: events.onTrouble }),
      });
      open.add(task);
      this.#pool.add(task);
    };
    events.onProgress({ done, total, timeLeft: null });
    for (const { index, from } of plan) if (from === null) begin(index, null);
    return {
      stop: () => {
        stopped = true;
        for (const task of open) this.#pool.drop(task);
        open.clear();
      },
    };
  }

  /** A study, behind all that a person watches: it gives way to a point and starts again afterwards. */
  study(engine: Engine, question: StudyQuestion, events: StudyEvents): Running {
    const runId = ++this.#runs;
    const request = { runId, engine, engineId: this.#idOf(engine), question };
    const task: Task = {
      runId,
      urgency: 'background',
      begin: async (worker) => {
        const reply = await worker.study(request);
        return { dropped: reply.status === 'dropped', handOn: () => events.onReply(reply) };
      },
      onReport: (report) => {
        if (!isTurn(report)) events.onStep?.(report.doing);
      },
      onBroken: (reason) => events.onReply({ runId, status: 'broken', reason }),
      onRetry: (reason) => events.onTrouble?.(reason),
    };
    this.#pool.add(task);
    return { stop: () => this.#pool.drop(task) };
  }

  /** To be called about once a second: notices workers that no longer answer. */
  tick(): void {
    this.#pool.tick();
  }

  close(): void {
    this.#pool.close();
  }

  #task(asked: Asked, urgency: Urgency, events: PointEvents): Task {
    const runId = ++this.#runs;
    const request = { ...asked, runId, engineId: this.#idOf(asked.engine) };
    return {
      runId,
      urgency,
      begin: async (worker) => {
        const reply = await worker.solve(request);
        return { dropped: reply.status === 'dropped', handOn: () => events.onReply(reply) };
      },
      onReport: (report) => {
        if (!isTurn(report)) return;
        events.onTurn?.(report);
        if (report.preview !== null) events.onPreview?.(report.preview, report.near);
      },
      onBroken: (reason) => events.onReply({ runId, status: 'broken', reason }),
      onRetry: (reason) => events.onTrouble?.(reason),
    };
  }

  #idOf(engine: Engine): number {
    const known = this.#engineIds.get(engine);
    if (known !== undefined) return known;
    this.#engines += 1;
    this.#engineIds.set(engine, this.#engines);
    return this.#engines;
  }
}

const isTurn = (report: TurnReport | StudyReport): report is TurnReport => 'cycle' in report;
