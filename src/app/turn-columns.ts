import type { GasTrace, SolvedPoint } from '../sim/index.ts';
import { TURN, deg } from '../sim/units.ts';

/** How many samples of a result's traces lie in the first turn, its end included. */
export function samplesOfFirstTurn(angle: Float64Array): number {
  let count = angle.length;
  while (count > 0 && angle[count - 1]! > TURN * (1 + 1e-9)) count -= 1;
  return count;
}

/** The first turn of a result's traces: crank angle and pressures [Pa]. */
export interface TurnColumns {
  readonly angle_deg: Float64Array;
  readonly plenum: Float64Array;
  readonly passages: readonly Float64Array[];
  readonly cylinders: readonly Float64Array[];
  readonly collectors: readonly Float64Array[];
  readonly count: number;
}

export function turnColumns({ traces }: SolvedPoint): TurnColumns {
  const count = samplesOfFirstTurn(traces.angle);
  const pressure = (trace: GasTrace): Float64Array => trace.pressure.subarray(0, count);
  return {
    angle_deg: traces.angle.subarray(0, count).map((angle) => angle / deg),
    plenum: pressure(traces.plenum),
    passages: traces.passages.map(pressure),
    cylinders: traces.cylinders.map(pressure),
    collectors: traces.collectors.map(pressure),
    count,
  };
}
