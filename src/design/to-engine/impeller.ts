import { usualExitWidth, usualThroatArea, volumeOfTurn } from '../../sim/blower/centrifugal/usual-wheel.ts';
import type { Impeller } from '../../sim/engine.ts';
import type { Si } from './si.ts';

export const bestVolume = ({ tipDiameter, impeller: { bestFlow } }: Si['blower']): number =>
  volumeOfTurn(bestFlow, tipDiameter);

export function impeller({ tipDiameter, impeller: si }: Si['blower']): Impeller {
  return {
    blades: si.blades,
    backsweep: si.backsweep,
    exitWidth: si.exitWidth ?? usualExitWidth(tipDiameter),
    throatArea: si.throatArea ?? usualThroatArea(tipDiameter),
    efficiency: si.efficiency,
    efficiencyAtHalf: si.efficiencyAtHalf,
    flowWithoutHead: si.flowWithoutHead,
    workFactor: si.workFactor,
  };
}
