/** Where the value comes from that ours is held against. */
export type Origin =
  /** Worked out without this program from an equation that has an exact answer. */
  | 'closed form'
  /** Printed in a table of physical data or of an independent calculation. */
  | 'tabulated'
  /** Printed as the answer of a worked example, or in a book or report as the author's result. */
  | 'published'
  /** Taken from a machine. */
  | 'measured';

/** One published point, closed form or table, and what this program makes of it. */
export interface Comparison {
  readonly quantity: string;
  readonly origin: Origin;
  /** Author, title or report, place in it. */
  readonly source: string;
  /** Of all values; '' for a ratio. */
  readonly unit: string;
  /** Printed against ours; several make a table of which the worst counts. */
  readonly values: readonly (readonly [printed: number, ours: number])[];
  /** Largest difference that passes: a share of the printed value, or an amount in its unit. */
  readonly within: { readonly share: number } | { readonly amount: number };
  /** Why that much. */
  readonly because: string;
}

/** Comparisons of one subject; each file beside this one makes one. */
export interface Subject {
  readonly title: string;
  /** What a reader must know before the table. */
  readonly note?: string;
  readonly comparisons: readonly Comparison[];
  /** Plain sentences on what of it nothing here validates. */
  readonly unproven: readonly string[];
}

export interface Verdict {
  readonly printed: number;
  readonly ours: number;
  /** ours - printed, in the unit. */
  readonly difference: number;
  /** The difference over what is allowed; above 1 it is out of its band. */
  readonly ofBand: number;
}

/** Of all its values the one that uses most of its band. A value that is no number is out of any band. */
export function worst({ values, within }: Comparison): Verdict {
  return values
    .map(([printed, ours]) => {
      const difference = ours - printed;
      const allowed = 'share' in within ? within.share * Math.abs(printed) : within.amount;
      const ofBand = Math.abs(difference) / allowed;
      return { printed, ours, difference, ofBand: Number.isNaN(ofBand) ? Infinity : ofBand };
    })
    .reduce((most, each) => (each.ofBand > most.ofBand ? each : most));
}

export const passes = (comparison: Comparison): boolean => worst(comparison).ofBand <= 1;
