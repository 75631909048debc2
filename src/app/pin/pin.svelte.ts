import type { PointResult, SolvedPoint } from '../../sim/index.ts';
import type { Bench } from '../presets.ts';
import type { SweepRun } from '../sweep-run.svelte.ts';

/** A result that later ones are held against. */
export interface Pinned {
  readonly bench: Bench;
  readonly speed_rpm: number;
  readonly throttle: number;
  readonly point: SolvedPoint;
}

/** The one pinned result of the page. It stays until it is taken down, whatever else is opened. */
export class Pin {
  /** Null while nothing is pinned. */
  kept = $state.raw<Pinned | null>(null);
  /** Null while the range of the pinned design is still being worked out. */
  #points = $state.raw<readonly PointResult[] | null>(null);
  /** The range of the pinned design, as far as it was worked out. */
  readonly points = $derived.by((): readonly PointResult[] =>
    this.kept === null ? [] : (this.#points ?? this.#sweep.points),
  );

  readonly #sweep: SweepRun;

  constructor(sweep: SweepRun) {
    this.#sweep = sweep;
  }

  take(pinned: Pinned): void {
    this.kept = pinned;
    this.#points = this.#sweep.state === 'working' ? null : this.#sweep.points;
  }

  drop(): void {
    this.kept = null;
    this.#points = null;
  }

  /** Another range is about to be asked for: what there is of the pinned one stays. */
  freeze(): void {
    if (this.kept !== null) this.#points ??= this.#sweep.points;
  }
}
