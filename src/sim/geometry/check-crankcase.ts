import type { Engine } from '../engine.ts';
import type { Fault } from '../outcome.ts';
import { cc } from '../units.ts';
import type { EngineGeometry } from './cylinder-geometry.ts';
import { undersideSwing } from './underside-volume.ts';

/** Share of a crankcase's volume that pistons at their lowest must leave [-]: less is no crankcase, and no volume to compute with. */
const LEAST_LEFT = 0.05;

/** Whether a crankcase is large enough for what its pistons displace; its volume is that with every piston half way down. */
export function crankcaseFaults(
  { crankcase, plenum }: Pick<Engine, 'crankcase' | 'plenum'>,
  geometry: EngineGeometry,
): readonly Fault[] {
  if (!crankcase) return [];
  const besides = crankcase.isPlenum ? plenum.volume : 0;
  const taken = -undersideSwing(geometry).least;
  const least = taken / (1 - LEAST_LEFT) - besides;
  if (crankcase.volume >= least) return [];
  const words = (volume: number) => `${Number((volume / cc).toPrecision(4))} cc`;
  const message = `the pistons displace ${words(taken)} of its ${words(crankcase.volume)} on their way down; allowed: at least ${words(least)}`;
  return [{ path: 'crankcase.volume', message }];
}
