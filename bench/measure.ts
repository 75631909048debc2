export interface Measured {
  /** Of the present state [s]. */
  readonly median: number;
  /** From the quarter to the three quarters of the runs, as a share of the median [-]. */
  readonly spread: number;
  /** Median of present over baseline, pair by pair [-]. */
  readonly ratio: number | null;
}

type Run = () => unknown;

const sorted = (values: readonly number[]): number[] => [...values].sort((a, b) => a - b);
export const quantile = (values: readonly number[], share: number): number =>
  sorted(values)[Math.min(values.length - 1, Math.floor(share * values.length))];
export const median = (values: readonly number[]): number => quantile(values, 0.5);

/** Shortest stretch that is timed [s]. */
const SHORTEST = 0.02;

async function clock(run: Run, times: number): Promise<number> {
  const began = performance.now();
  for (let i = 0; i < times; i++) await run();
  return (performance.now() - began) / 1000 / times;
}

/**
 * Times work in pairs: present, baseline, baseline, present, … so that what else the machine does meets both alike and falls
 * out of the ratio. A few runs before are not counted: by then it is compiled.
 *
 * @param pairs - an odd number
 */
export async function measure(present: Run, baseline: Run | null, pairs: number): Promise<Measured> {
  const warmUp = async (run: Run): Promise<number> => {
    const once = Math.min(await clock(run, 1), await clock(run, 1), await clock(run, 1));
    return Math.max(1, Math.ceil(SHORTEST / once));
  };
  const times = await warmUp(present);
  const baselineTimes = baseline ? await warmUp(baseline) : 0;
  const taken: number[] = [];
  const ratios: number[] = [];
  for (let pair = 0; pair < pairs; pair++) {
    const before = baseline && pair % 2 === 1 ? await clock(baseline, baselineTimes) : null;
    const ours = await clock(present, times);
    taken.push(ours);
    if (baseline) ratios.push(ours / (before ?? (await clock(baseline, baselineTimes))));
  }
  const middle = median(taken);
  return {
    median: middle,
    spread: (quantile(taken, 0.75) - quantile(taken, 0.25)) / middle,
    ratio: baseline ? median(ratios) : null,
  };
}
