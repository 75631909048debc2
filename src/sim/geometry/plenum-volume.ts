import type { Engine } from '../engine.ts';

/** Volume of the plenum, with the crankcase where it is part of it, every piston half way down [m^3]. */
export const plenumVolume = ({ plenum, crankcase }: Pick<Engine, 'plenum' | 'crankcase'>): number =>
  plenum.volume + (crankcase?.isPlenum ? crankcase.volume : 0);
