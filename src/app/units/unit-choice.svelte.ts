import { UNIT_SETS } from './shown-units.ts';
import type { ShownUnits } from './shown-units.ts';

const place = 'umbel.units';

/** The units that the reader has chosen, kept on this machine. */
export class UnitChoice {
  #id = $state(kept());
  readonly shown: ShownUnits = $derived(UNIT_SETS.find(({ id }) => id === this.#id) ?? UNIT_SETS[0]!);

  choose(id: string): void {
    this.#id = id;
    try {
      localStorage.setItem(place, id);
    } catch {
      // A browser that keeps nothing shows the units all the same.
    }
  }
}

function kept(): string | null {
  try {
    return localStorage.getItem(place);
  } catch {
    return null;
  }
}
