/**
 * What can go wrong as expected is a value, not an exception: a design that cannot be built, a point that
 * does not converge. Only bugs throw.
 */
export interface Fault {
  /** Where: a path in the engine description, such as `train.rows[0].cylinders[2].rodLength`. */
  readonly path: string;
  /** What is wrong, in words, with the value and what is allowed. */
  readonly message: string;
}

export type Outcome<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly faults: readonly Fault[] };

export const success = <T>(value: T): Outcome<T> => ({ ok: true, value });
export const failure = (faults: readonly Fault[]): Outcome<never> => ({ ok: false, faults });
