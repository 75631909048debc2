import type { Charge } from '../engine.ts';
import { blend, withOil } from './blend.ts';
import type { Fuel } from './fuel.ts';
import { FUELS } from './fuels.ts';

/** One of the fuels of a charge and its share by volume, oil apart. */
export interface FuelPart {
  /** Of FUELS. */
  readonly key: string;
  readonly fuel: Fuel;
  readonly volume: number;
}

type Fuelled = Pick<Charge, 'fuel' | 'blend'>;

/** The fuels that are in a charge, each with more than none of the volume; all keys must be of FUELS. */
export function fuelParts({ fuel, blend: second }: Fuelled): readonly FuelPart[] {
  const part = (key: string, volume: number): FuelPart => ({ key, fuel: FUELS[key]!, volume });
  if (second === null || second.fuel === fuel) return [part(fuel, 1)];
  return [part(fuel, 1 - second.share), part(second.fuel, second.share)].filter(({ volume }) => volume > 0);
}

/** Fuel as it is fed: a blend of them by volume, then oil in the place of some of it. */
export function chargeFuel(charge: Fuelled & Pick<Charge, 'oilShare'>): Fuel {
  const parts = fuelParts(charge);
  const neat = parts.length === 1 ? parts[0]!.fuel : blend(blendName(parts), parts);
  return withOil(neat, charge.oilShare);
}

/** Such as "petrol with 10 % ethanol". */
function blendName([main, second]: readonly FuelPart[]): string {
  return `${main!.fuel.name} with ${Number((100 * second!.volume).toPrecision(3))} % ${second!.fuel.name}`;
}

/** Name of a charge's fuel, oil apart. */
export function fuelName(charge: Fuelled): string {
  const parts = fuelParts(charge);
  return parts.length === 1 ? parts[0]!.fuel.name : blendName(parts);
}
