import type { Combustion } from '../engine.ts';
import { ConstituentSet } from '../gas/constituent-set.ts';
import { dissociationOf } from '../gas/dissociation.ts';
import type { DesignMixture } from '../gas/mixture.ts';
import { PRODUCTS_INDEX } from '../gas/mixture.ts';
import type { Model } from './model.ts';

/** What a model holds of the gas of one mixture. */
export const gasOf = (
  mixture: DesignMixture,
  { products }: Combustion,
): Pick<Model, 'mixture' | 'set' | 'dissociation'> => ({
  mixture,
  set: new ConstituentSet(mixture.constituents),
  dissociation:
    products === 'equilibrium' ? dissociationOf(mixture.constituents[PRODUCTS_INDEX]!, PRODUCTS_INDEX) : null,
});
