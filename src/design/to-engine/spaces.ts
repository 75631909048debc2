import type { Collector, Crankcase, Passages, Plenum } from '../../sim/engine.ts';
import { circle } from './circle.ts';
import type { Si } from './si.ts';
import { wall } from './wall.ts';

export function plenumOf({ plenum }: Si): Plenum {
  const { volume, relief, bypass } = plenum;
  return {
    volume,
    wall: wall(plenum),
    relief: relief && {
      crackingPressure: relief.cracking,
      fullOpenPressure: relief.fullOpen,
      reseatingPressure: relief.reseating ?? relief.cracking,
      area: circle(relief.bore),
      dischargeCoefficient: relief.discharge,
    },
    bypass: bypass && {
      into: bypass.into,
      area: circle(bypass.bore),
      dischargeCoefficient: bypass.discharge,
      control: bypass.control === 'by pressure' ? { opensAt: bypass.opens, range: bypass.until } : null,
    },
  };
}

export function passagesOf({ plenum: { passages } }: Si): Passages {
  return {
    volume: passages.volume,
    entryArea: passages.entryArea,
    entryDischarge: passages.entryDischarge,
    length: passages.length ?? null,
    wall: wall(passages),
  };
}

export function collector(si: Si['exhaust']['collectors'][number]): Collector {
  return {
    volume: si.volume,
    outletArea: circle(si.outlet),
    outletDischarge: si.outletDischarge,
    pipe:
      si.pipeLength === undefined
        ? null
        : { length: si.pipeLength, area: circle(si.pipeBore ?? si.outlet), friction: si.pipeFriction },
    wall: wall(si),
  };
}

export function crankcase({ crank, cylinder: { bore } }: Si): Crankcase | null {
  const si = crank.crankcase;
  if (!si) return null;
  const cylinders = crank.rows.reduce((count, row) => count + row.cylinders, 0);
  const volume = si.volume ?? 3 * cylinders * circle(bore) * crank.stroke;
  return {
    isPlenum: si.role === 'plenum',
    volume,
    breather: { area: circle(si.breather), dischargeCoefficient: si.breatherDischarge },
    blowBy: { area: si.rings, dischargeCoefficient: si.ringsDischarge },
    wall: wall({ volume, wall: si.wall }),
  };
}
