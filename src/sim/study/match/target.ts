import type { SolvedPoint } from '../../results/point-result.ts';

/** What a design may be asked to reach at a speed. */
export const TARGETS = ['deliveryRatio', 'chargingEfficiency', 'plenumPressure'] as const;
export type TargetName = (typeof TARGETS)[number];

/** A figure and the value it is to have: plenum pressure absolute, time mean [Pa]; the others [-]. */
export interface Target {
  readonly figure: TargetName;
  readonly value: number;
}

export const figureOf = (figure: TargetName, { engine, plenum }: SolvedPoint): number =>
  figure === 'plenumPressure' ? plenum.meanPressure : engine[figure];
