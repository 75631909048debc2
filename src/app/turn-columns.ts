import type { GasTrace, SolvedPoint } from '../sim/index.ts';
import { TURN, bar, deg } from '../sim/units.ts';

/** How many samples of a result's traces lie in the first turn, its end included. */
export function samplesOfFirstTurn(angle: Float64Array): number {
  let count = angle.length;
  while (count > 0 && angle[count - 1]! > TURN * (1 + 1e-9)) count -= 1;
  return count;
}

/** The first turn of a result's traces in the units of the page. */
export interface TurnColumns {
  readonly angle_deg: Float64Array;
  readonly plenum_bar: Float64Array;
  readonly passages_bar: readonly Float64Array[];
  readonly cylinders_bar: readonly Float64Array[];
  readonly collectors_bar: readonly Float64Array[];
  readonly count: number;
}

export function turnColumns({ traces }: SolvedPoint): TurnColumns {
  const count = samplesOfFirstTurn(traces.angle);
  const pressure_bar = (trace: GasTrace): Float64Array =>
    trace.pressure.subarray(0, count).map((p) => p / bar);
  return {
    angle_deg: traces.angle.subarray(0, count).map((angle) => angle / deg),
    plenum_bar: pressure_bar(traces.plenum),
    passages_bar: traces.passages.map(pressure_bar),
    cylinders_bar: traces.cylinders.map(pressure_bar),
    collectors_bar: traces.collectors.map(pressure_bar),
    count,
  };
}
