import type { Combustion } from '../../../sim/engine.ts';
import type { BurnZones } from '../../../sim/results/burn-zones.ts';
import type { ShownUnits } from '../../units/shown-units.ts';

/** How hot either zone gets, and how far two zones at one pressure are from the one zone of the cycle. */
export function zonesSentence(
  { unburned, burned, mean, peakRatio }: BurnZones,
  products: Combustion['products'],
  units: ShownUnits,
): string {
  const hottest = (of: Float64Array) => units.text('temperature', Math.max(...of.filter(Number.isFinite)));
  const apart = 100 * (peakRatio - 1);
  const pressure = Number.isFinite(apart)
    ? ` Two zones come to a peak pressure ${Math.abs(apart).toFixed(1)}\u202f% ${apart >= 0 ? 'above' : 'below'} that of the mean.`
    : '';
  return (
    `Unburned gas is squeezed to ${hottest(unburned)}, burned gas reaches ${hottest(burned)}, the mean that the cycle is stepped with ${hottest(mean)}.${pressure} ` +
    (products === 'frozen'
      ? 'Burned gas is kept from dissociating, so it is shown some 50 to 100 K too hot.'
      : 'Burned gas is in equilibrium.')
  );
}
