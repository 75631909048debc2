import type { Friction } from '../../sim/engine.ts';
import type { Si } from './si.ts';

export function friction({ crank: { friction: si } }: Si): Friction {
  return {
    law: si.law === 'Blair' ? 'stroke times speed' : 'four terms',
    bearingShare: si.bearingShare,
    windageShare: si.windageShare,
    oilPumpTorque: si.oilPump,
    starterTorque: si.starter,
    constant: si.constant,
    peakPressureFactor: si.peakPressureFactor,
    pistonSpeedFactor: si.pistonSpeedFactor,
    speedSquaredFactor: si.speedSquaredFactor,
    outputGearEfficiency: si.outputGearEfficiency,
  };
}
