import type { Engine, OperatingPoint, PointResult, SolvedPoint } from '../sim/index.ts';
import type { Running, SimClient, SweepProgress } from '../workers/sim-client.ts';

/** Points that come first, both ends and what lies between, are enough to show the range by. */
const ENOUGH_TO_SHOW = 4;

/**
 * The range of speeds, filled in point by point as they are solved. The range of an older question of the same design
 * stays until there is enough of the new one; `stale` says so.
 */
export class SweepRun {
  /** What is shown, by speed; points without an answer among them. */
  points = $state.raw<readonly PointResult[]>([]);
  progress = $state.raw<SweepProgress>({ done: 0, total: 0, timeLeft: null });
  state = $state<'working' | 'done' | 'stopped'>('done');
  /** What went wrong on the way, in words; empty when nothing did. */
  trouble = $state('');
  /** The points belong to an older question. */
  stale = $state(false);
  readonly solved = $derived(this.points.filter((point): point is SolvedPoint => point.converged));

  readonly #client: SimClient;
  #running: Running | null = null;
  #arrived: readonly PointResult[] = [];

  constructor(client: SimClient) {
    this.#client = client;
  }

  ask(engine: Engine, points: readonly OperatingPoint[]): void {
    this.#running?.stop();
    this.#arrived = [];
    this.stale = this.points.length > 0;
    this.trouble = '';
    this.state = 'working';
    this.#running = this.#client.sweep(engine, points, {
      onPoint: (_, reply) => {
        if (reply.status === 'solved' || reply.status === 'unsolved') {
          this.#arrived = [...this.#arrived, reply.result].sort((a, b) => a.speed - b.speed);
          if (!this.stale || this.#arrived.length >= ENOUGH_TO_SHOW) this.#show();
        } else {
          this.trouble = reply.reason;
        }
      },
      onProgress: (progress) => (this.progress = progress),
      onEnd: () => {
        this.#show();
        this.state = 'done';
      },
      onTrouble: (reason) => (this.trouble = `The computation broke off and was started again: ${reason}`),
    });
  }

  /** A newer question is about to be asked: what there is stays until then, as an older answer. */
  expire(): void {
    this.#running?.stop();
    this.state = 'working';
    this.#arrived = [];
    this.stale = this.points.length > 0;
  }

  /** Another engine altogether: nothing known of the last one is shown. */
  forget(): void {
    this.#running?.stop();
    this.points = [];
    this.#arrived = [];
    this.stale = false;
  }

  /** Keeps what there is, of the older question when the new one has no point yet. */
  stop(): void {
    this.#running?.stop();
    if (this.state === 'working') this.state = 'stopped';
    if (this.#arrived.length > 0) this.#show();
  }

  #show(): void {
    this.points = this.#arrived;
    this.stale = false;
  }
}
