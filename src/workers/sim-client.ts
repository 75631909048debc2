import type { Engine, OperatingPoint } from '../sim/index.ts';
import type { PointReply, TurnReport } from './api.ts';
import { coarseFirst } from './coarse-first.ts';
import { WorkerPool } from './worker-pool.ts';
import type { SpawnWorker, Task, Urgency } from './worker-pool.ts';

export interface PointEvents {
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

export interface Running {
  /** Drops what has not replied yet; nothing is reported from here on. */
  stop(): void;
}

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

  /** One point, ahead of all background work. */
  point(engine: Engine, operating: OperatingPoint, events: PointEvents): Running {
    const task = this.#task(engine, operating, 'now', events);
    this.#pool.add(task);
    return { stop: () => this.#pool.drop(task) };
  }

  /** Many points, shared over the pool; both ends come first, then the middles of the gaps. */
  sweep(engine: Engine, points: readonly OperatingPoint[], events: SweepEvents): Running {
    const began = this.#now();
    const total = points.length;
    let done = 0;
    const open = new Set<Task>();
    for (const index of coarseFirst(total)) {
      const task = this.#task(engine, points[index]!, 'background', {
        onReply: (reply) => {
          open.delete(task);
          done += 1;
          const perPoint = (this.#now() - began) / done;
          events.onPoint(index, reply);
          events.onProgress({ done, total, timeLeft: perPoint * (total - done) });
          if (done === total) events.onEnd();
        },
        ...(events.onTrouble && { onTrouble: events.onTrouble }),
      });
      open.add(task);
    }
    events.onProgress({ done, total, timeLeft: null });
    for (const task of [...open]) this.#pool.add(task);
    return {
      stop: () => {
        for (const task of open) this.#pool.drop(task);
        open.clear();
      },
    };
  }

  close(): void {
    this.#pool.close();
  }

  #task(engine: Engine, operating: OperatingPoint, urgency: Urgency, events: PointEvents): Task {
    return {
      request: { runId: ++this.#runs, engine, engineId: this.#idOf(engine), operating },
      urgency,
      onTurn: (report) => events.onTurn?.(report),
      onReply: (reply) => events.onReply(reply),
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
