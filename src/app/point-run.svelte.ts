import type { Engine, OperatingPoint, SolvedPoint, SolvedStart } from '../sim/index.ts';
import type { Running, SimClient } from '../workers/sim-client.ts';
import { sameLayout } from './same-layout.ts';

/**
 * How long the figures of an older question stand before they are marked as such: a quick answer mostly comes sooner, and marking
 * everything for some frames costs the time that a moving control needs.
 */
const MARK_AFTER_ms = 150;

/** How long a newer question waits for the quick answer to the one before it, so that a moving control shows something. */
const GLANCE_PATIENCE_ms = 1000;

interface Question {
  readonly engine: Engine;
  readonly operating: OperatingPoint;
}

/**
 * The point that stands on the page: first a quick answer, from where the last one ended, then the settled one. The
 * last good result of the same layout stays while the next is worked out, or when it fails; `stale` says so.
 */
export class PointRun {
  /** What is shown; `preliminary` while it settles, null before the first answer of a layout. */
  result = $state.raw<SolvedPoint | null>(null);
  state = $state<'working' | 'solved' | 'failed'>('working');
  /** Why there is no answer, when it failed. */
  reason = $state('');
  /** Periods stepped so far in the running work, and their last relative change. */
  cycle = $state(0);
  change = $state(Infinity);
  /** Something is typed that cannot be used yet, and that the figures leave out. */
  held = $state(false);
  #late = $state(false);
  #marking: ReturnType<typeof setTimeout> | undefined;
  /** The figures are the quick answer to the question that stands, and may still move a little. */
  readonly settling = $derived(!this.held && this.state === 'working' && this.result?.preliminary === true);
  /** The figures belong to an older question. */
  readonly behind = $derived(this.held || (this.state !== 'solved' && !this.settling));
  /** They have for long enough to be marked, or will for good. */
  readonly stale = $derived(this.behind && (this.held || this.state === 'failed' || this.#late));

  readonly #client: SimClient;
  readonly #now_ms: () => number;
  #engine: Engine | null = null;
  #running: Running | null = null;
  #waiting: Question | null = null;
  #settled: SolvedPoint | null = null;
  #start: SolvedStart | null = null;

  constructor(client: SimClient, now_ms: () => number = () => performance.now()) {
    this.#client = client;
    this.#now_ms = now_ms;
  }

  ask(engine: Engine, operating: OperatingPoint): void {
    if (this.#engine && !sameLayout(engine, this.#engine)) this.forget();
    this.#engine = engine;
    this.state = 'working';
    this.reason = '';
    this.#marking ??= setTimeout(() => (this.#late = true), MARK_AFTER_ms);
    if (this.#running) this.#waiting = { engine, operating };
    else this.#begin({ engine, operating });
  }

  /** Another engine altogether: nothing known of the last one is shown or started from. */
  forget(): void {
    this.#answered();
    this.#running?.stop();
    this.#running = null;
    this.#waiting = null;
    this.#settled = null;
    this.#start = null;
    this.result = null;
  }

  #begin({ engine, operating }: Question): void {
    const began_ms = this.#now_ms();
    this.#waiting = null;
    this.cycle = 0;
    this.#running = this.#client.point(engine, operating, this.#start, {
      onTurn: ({ cycle, change }) => {
        this.cycle = cycle;
        this.change = change;
        if (this.#now_ms() - began_ms > GLANCE_PATIENCE_ms) this.#giveWay();
      },
      onPreview: (preview, near) => {
        this.#answered();
        this.result = preview;
        this.#start = near ?? this.#start;
        this.#giveWay();
      },
      onReply: (reply) => {
        this.#running = null;
        this.#answered();
        if (reply.status === 'solved') {
          this.#settled = reply.result;
          this.result = reply.result;
          this.#start = reply.next ?? this.#start;
        } else {
          this.result = this.#settled;
        }
        if (this.#waiting) this.#begin(this.#waiting);
        else if (reply.status === 'solved') this.state = 'solved';
        else {
          this.reason = reply.reason;
          this.state = 'failed';
        }
      },
      onTrouble: (reason) => (this.reason = `The computation broke off and was started again: ${reason}`),
    });
  }

  #answered(): void {
    clearTimeout(this.#marking);
    this.#marking = undefined;
    this.#late = false;
  }

  /** Drops the running work between turns when a newer question waits. */
  #giveWay(): void {
    if (!this.#waiting) return;
    this.#running?.stop();
    this.#begin(this.#waiting);
  }
}
