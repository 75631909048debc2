import type { Model } from '../../cycle/model.ts';
import { AIR_INDEX, FUEL_INDEX, PRODUCTS_INDEX } from '../../gas/mixture.ts';

/**
 * Mass fractions of the charge that the carburettor makes, in the order of the model's constituents [-].
 *
 * @param purity - share of it; the rest is burned gas [-]
 */
export function freshCharge({ set, mixture }: Model, purity = 1): number[] {
  const fuel = 1 / (1 + mixture.airFuelRatio);
  const shares = new Map([
    [AIR_INDEX, purity * (1 - fuel)],
    [FUEL_INDEX, purity * fuel],
    [PRODUCTS_INDEX, 1 - purity],
  ]);
  return set.constituents.map((_, k) => shares.get(k) ?? 0);
}
