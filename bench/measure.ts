export interface Measured {
  /** Median of the runs [s]. */
  readonly median: number;
  /** From the fastest to the slowest run, as a share of the median [-]. */
  readonly spread: number;
}

/**
 * Times a function: warm-up first, so that it is compiled, then an odd number of runs. A run of less than a twentieth of a
 * second is repeated until it lasts that long.
 */
export function measure(run: () => unknown, runs: number): Measured {
  const clock = (times: number): number => {
    const began = performance.now();
    for (let i = 0; i < times; i++) run();
    return (performance.now() - began) / 1000 / times;
  };
  run();
  const once = clock(1);
  const times = Math.max(1, Math.ceil(0.05 / once));
  clock(times);
  const taken = Array.from({ length: runs }, () => clock(times)).sort((a, b) => a - b);
  const median = taken[(runs - 1) / 2];
  return { median, spread: (taken[runs - 1] - taken[0]) / median };
}
