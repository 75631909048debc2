import type { Engine, OperatingPoint, SolvedPoint } from '../sim/index.ts';
import type { Running, SimClient } from '../workers/sim-client.ts';

/**
 * The point that stands on the page. The last good result of the same engine stays while the next is worked out, or
 * when it fails; `stale` says so.
 */
export class PointRun {
  /** The last good result; null before the first one of an engine. */
  result = $state.raw<SolvedPoint | null>(null);
  state = $state<'working' | 'solved' | 'failed'>('working');
  /** Why there is no answer, when it failed. */
  reason = $state('');
  /** Periods stepped so far in the running work, and their last relative change. */
  cycle = $state(0);
  change = $state(Infinity);
  readonly stale = $derived(this.state !== 'solved');

  readonly #client: SimClient;
  #engine: Engine | null = null;
  #running: Running | null = null;

  constructor(client: SimClient) {
    this.#client = client;
  }

  ask(engine: Engine, operating: OperatingPoint): void {
    this.#running?.stop();
    if (engine !== this.#engine) this.result = null;
    this.#engine = engine;
    this.state = 'working';
    this.reason = '';
    this.cycle = 0;
    this.#running = this.#client.point(engine, operating, {
      onTurn: ({ cycle, change }) => {
        this.cycle = cycle;
        this.change = change;
      },
      onReply: (reply) => {
        if (reply.status === 'solved') {
          this.result = reply.result;
          this.state = 'solved';
        } else {
          this.reason = reply.reason;
          this.state = 'failed';
        }
      },
      onTrouble: (reason) => (this.reason = `The computation broke off and starts again: ${reason}`),
    });
  }
}
