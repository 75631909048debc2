import { findRoot } from '../numerics/find-root.ts';

/** Asked for where the value is not known yet. */
class Unknown {
  constructor(readonly x: number) {}
}

/**
 * `findRoot` for a function whose every value is a run of its own that yields: the search is replayed on the values known so
 * far until it asks for a new one, which is then worked out. Same places, same answer.
 *
 * @param known     - values at the ends of the bracket, of different sign, and wherever else they are known
 * @param tolerance - see findRoot
 */
export function* stepwiseRoot<Step>(
  f: (x: number) => Generator<Step, number>,
  a: number,
  b: number,
  tolerance: number,
  known: ReadonlyMap<number, number> = new Map(),
): Generator<Step, number> {
  const values = new Map(known);
  for (;;) {
    try {
      return findRoot(
        (x) => {
          const value = values.get(x);
          if (value === undefined) throw new Unknown(x);
          return value;
        },
        a,
        b,
        tolerance,
      );
    } catch (asked) {
      if (!(asked instanceof Unknown)) throw asked;
      values.set(asked.x, yield* f(asked.x));
    }
  }
}
