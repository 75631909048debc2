import type { Turning } from '../../../sim/study/pulses/pulses.ts';

/** Share of the strongest below which an order is not drawn at the end, nor a broken one at all. */
const FAINT = 0.01;

/** Amplitudes by engine order [N m]. */
export interface HarmonicBars {
  readonly names: readonly string[];
  readonly total: readonly number[];
  readonly gas: readonly number[];
  readonly inertia: readonly number[];
  readonly blower: readonly number[];
  /** Place of the strongest of the total. */
  readonly strongest: number;
}

/** Every whole order as far as there is something to see, and those broken ones that are. */
export function harmonicBars({ total, gas, inertia, blower }: Turning['harmonics']): HarmonicBars {
  const sizes = total.map(({ amplitude }, i) =>
    Math.max(amplitude, gas[i]!.amplitude, inertia[i]!.amplitude),
  );
  const most = Math.max(...sizes);
  const seen = sizes.map((size) => size > FAINT * most);
  const last = seen.lastIndexOf(true);
  const shown = total.flatMap(({ order }, i) =>
    i <= last && (seen[i] || Math.abs(order - Math.round(order)) < 1e-9) ? [i] : [],
  );
  const column = (of: Turning['harmonics']['total']) => shown.map((i) => of[i]!.amplitude);
  const totals = column(total);
  return {
    names: shown.map((i) => String(Number(total[i]!.order.toFixed(2)))),
    total: totals,
    gas: column(gas),
    inertia: column(inertia),
    blower: column(blower),
    strongest: totals.indexOf(Math.max(...totals)),
  };
}
