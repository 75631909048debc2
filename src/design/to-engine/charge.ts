import type { Charge } from '../../sim/engine.ts';
import { USUAL_DROP } from '../../sim/gas/drop-evaporation.ts';
import type { Si } from './si.ts';

export function charge({ fuel }: Si): Charge {
  return {
    fuel: fuel.kind,
    blend: fuel.blend && { fuel: fuel.blend.kind, share: fuel.blend.share },
    lambda: fuel.lambda,
    lambdaOverSpeed: fuel.mixture === 'over speed' ? { ...fuel.lambdaTable } : null,
    jet:
      fuel.mixture === 'main jet'
        ? { bore: fuel.jet.bore, dischargeCoefficient: fuel.jet.discharge, lift: fuel.jet.lift }
        : null,
    oilShare: fuel.oilShare,
    feed: fuel.feed,
    evaporatedShare: fuel.evaporatedShare,
    liquidGoesOn: fuel.liquidGoesOn,
    dropDiameter: fuel.drop ?? USUAL_DROP[fuel.feed],
    injection: { ...fuel.injection },
  };
}
