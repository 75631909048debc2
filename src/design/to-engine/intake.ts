import type { Intake, Throat } from '../../sim/engine.ts';
import type { Si } from './si.ts';
import { wall } from './wall.ts';

export function intake({ fuel, plenum: { inletBox } }: Si): Intake {
  const { carburettor } = fuel;
  return {
    throttle: {
      kind: carburettor.kind,
      bore: carburettor.bore,
      shaftRatio: carburettor.shaftRatio,
      closedAngle: carburettor.closed,
      leakShare: carburettor.leakShare,
      dischargeCoefficient: carburettor.discharge,
    },
    restrictor: throat(fuel.restrictor),
    venturi: throat(fuel.venturi),
    arrester: fuel.arrester,
    boxVolume: inletBox.volume,
    boxWall: wall(inletBox),
  };
}

function throat(si: Si['fuel']['restrictor']): Throat | null {
  return si && { bore: si.bore, dischargeCoefficient: si.discharge, recovered: si.recovered };
}
