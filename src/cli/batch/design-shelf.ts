import type { Design } from '../../design/schema/design.ts';
import type { Outcome } from '../../sim/outcome.ts';
import { loadDesign } from '../load-design.ts';

const MOST_KEPT = 16;

/**
 * Presets and design files that lines of a study name, read once: checking a design takes 4 ms, a tenth of a point. A study is
 * about files as they are when it starts.
 */
export class DesignShelf {
  readonly #kept = new Map<string, Outcome<Design>>();

  /** @param folder - where a path begins that is not absolute */
  constructor(private readonly folder: string) {}

  take(file: string): Outcome<Design> {
    const kept = this.#kept.get(file);
    if (kept) return kept;
    const read = loadDesign(file, [], this.folder);
    if (this.#kept.size === MOST_KEPT) this.#kept.clear();
    this.#kept.set(file, read);
    return read;
  }
}
