import type { Repair } from './period-map.ts';

/** How the next start of a period is guessed, from the most daring to the most patient. */
export interface Temper {
  /** Differences that the acceleration keeps; 0 is the plain iteration. */
  readonly depth: number;
  readonly repair: Repair;
  /** Share of the residual taken. */
  readonly damping: number;
}

const LADDER: readonly Temper[] = [
  { depth: 12, repair: 'constituents', damping: 1 },
  { depth: 6, repair: 'nodes', damping: 1 },
  { depth: 0, repair: 'nodes', damping: 1 },
  { depth: 6, repair: 'nodes', damping: 0.4 },
  { depth: 0, repair: 'nodes', damping: 0.4 },
];
/** Periods without halving the best change after which the next temper has its turn. */
const PATIENCE = 15;

/**
 * Watches whether an iteration gets anywhere, and says with what temper to go on: no single one suits an engine that runs
 * clean, one that barely fires and one whose flows reverse.
 */
export class Tempers {
  private rung = 0;
  private best = Infinity;
  private since = 0;

  get now(): Temper {
    return LADDER[this.rung];
  }

  /** @param change - of the last period. @returns true where the temper has changed */
  note(change: number): boolean {
    if (change < 0.5 * this.best) {
      this.best = change;
      this.since = 0;
      return false;
    }
    if (++this.since < PATIENCE) return false;
    this.since = 0;
    this.best = change;
    this.rung = (this.rung + 1) % LADDER.length;
    return true;
  }
}
