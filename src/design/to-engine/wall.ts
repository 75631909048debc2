import type { WallPatch } from '../../sim/engine.ts';
import type { Si } from './si.ts';

/** Wall of a volume; where no area is given, that of a duct with this volume and hydraulic diameter, 4 V / d. */
export function wall({ volume, wall: si }: { volume: number; wall: Si['plenum']['wall'] }): WallPatch {
  return {
    area: si.area ?? (4 * volume) / si.hydraulicDiameter,
    temperature: si.temperature,
    hydraulicDiameter: si.hydraulicDiameter,
    enhancement: si.enhancement,
  };
}
