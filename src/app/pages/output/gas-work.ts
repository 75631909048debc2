import { GAS_WORK_LABELS } from '../../../sim/results/gas-work-words.ts';
import type { GasWorkPart, WorkShare } from '../../../sim/results/gas-work.ts';
import { gasWork } from '../../../sim/results/gas-work.ts';
import type { SolvedPoint } from '../../../sim/index.ts';

/** As they stand under a bar. */
const SHORT: Readonly<Record<GasWorkPart, string>> = {
  rings: 'rings',
  bearings: 'bearings',
  windage: 'windage',
  oilPump: 'oil',
  starter: 'starter',
  blowerGas: 'blower',
  blowerDrag: 'its drag',
  crankcase: 'case',
  outputGears: 'gears',
  brake: 'output',
};

/** Mean effective pressure below which a part is left out [Pa]. */
const NOTHING = 1;

export interface GasWorkRow extends WorkShare {
  readonly label: string;
  readonly short: string;
}

/** Parts of the gas's work that are there, in their order; what is nothing is left out. */
export const gasWorkRows = (point: SolvedPoint): readonly GasWorkRow[] =>
  gasWork(point)
    .filter(({ what, meanPressure }) => what === 'brake' || Math.abs(meanPressure) > NOTHING)
    .map((each) => ({ ...each, label: GAS_WORK_LABELS[each.what], short: SHORT[each.what] }));
