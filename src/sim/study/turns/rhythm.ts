/** How regularly a cylinder fires. */
export interface Rhythm {
  /** It fires in `fires` of every `of` turns, always the same ones: 1 of 1 every turn, 1 of 2 every second; null where it keeps no order. */
  readonly order: { readonly fires: number; readonly of: number } | null;
  /** Of the turns looked at, the share in which it fires [-]. */
  readonly share: number;
}

/** The longest order that is looked for [turns]; slower ones are told as irregular. */
const LONGEST = 6;

/**
 * Rhythm of a row of turns: the shortest order that repeats over all of them, at least three times.
 *
 * @param fired - turn by turn, whether the cylinder fired
 */
export function rhythmOf(fired: readonly boolean[]): Rhythm {
  const count = (turns: readonly boolean[]) => turns.filter(Boolean).length;
  const share = fired.length > 0 ? count(fired) / fired.length : 0;
  for (let of = 1; of <= LONGEST && 3 * of <= fired.length; of++)
    if (fired.every((lit, turn) => turn < of || lit === fired[turn - of]))
      return { order: { fires: count(fired.slice(0, of)), of }, share };
  return { order: null, share };
}
