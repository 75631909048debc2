import type { Engine, OperatingPoint, PointResult, SolvedPoint } from '../sim/index.ts';
import type { Running, SimClient, SweepProgress } from '../workers/sim-client.ts';

/** The range of speeds, filled in point by point as they are solved. */
export class SweepRun {
  /** What has been worked out so far, by speed; points without an answer among them. */
  points = $state.raw<readonly PointResult[]>([]);
  progress = $state.raw<SweepProgress>({ done: 0, total: 0, timeLeft: null });
  state = $state<'working' | 'done' | 'stopped'>('done');
  /** What went wrong on the way, in words; empty when nothing did. */
  trouble = $state('');
  /** The points belong to an older design. */
  stale = $state(false);
  readonly solved = $derived(this.points.filter((point): point is SolvedPoint => point.converged));

  readonly #client: SimClient;
  #running: Running | null = null;

  constructor(client: SimClient) {
    this.#client = client;
  }

  ask(engine: Engine, points: readonly OperatingPoint[]): void {
    this.#running?.stop();
    this.points = [];
    this.stale = false;
    this.trouble = '';
    this.state = 'working';
    this.#running = this.#client.sweep(engine, points, {
      onPoint: (_, reply) => {
        if (reply.status === 'solved' || reply.status === 'unsolved') {
          this.points = [...this.points, reply.result].sort((a, b) => a.speed - b.speed);
        } else {
          this.trouble = reply.reason;
        }
      },
      onProgress: (progress) => (this.progress = progress),
      onEnd: () => (this.state = 'done'),
      onTrouble: (reason) => (this.trouble = `The computation broke off and was started again: ${reason}`),
    });
  }

  /** A newer question is about to be asked: what there is stays until then, as an older answer. */
  expire(): void {
    this.#running?.stop();
    this.state = 'working';
    this.stale = true;
  }

  /** Keeps what there is. */
  stop(): void {
    this.#running?.stop();
    if (this.state === 'working') this.state = 'stopped';
  }
}
