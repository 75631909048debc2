import type { Impeller } from '../../sim/engine.ts';
import { usualExitWidth } from '../usual-sizes.ts';
import type { Si } from './si.ts';

/** What a turn of a wheel carries at best flow: V = phi U D^2 with U = pi D n. */
export const bestVolume = ({ tipDiameter, impeller: { bestFlow } }: Si['blower']): number =>
  Math.PI * bestFlow * tipDiameter ** 3;

export function impeller({ tipDiameter, impeller: si }: Si['blower']): Impeller {
  return {
    blades: si.blades,
    backsweep: si.backsweep,
    exitWidth: si.exitWidth ?? usualExitWidth(tipDiameter),
    throatArea: si.throatArea ?? 0.17 * tipDiameter ** 2,
    efficiency: si.efficiency,
    efficiencyAtHalf: si.efficiencyAtHalf,
    flowWithoutHead: si.flowWithoutHead,
    workFactor: si.workFactor,
  };
}
