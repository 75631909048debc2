import type { Ambient, Charge } from '../engine.ts';
import type { Fault, Outcome } from '../outcome.ts';
import { failure, success } from '../outcome.ts';
import { AIR_MOLE_FRACTIONS } from './air.ts';
import { withOil } from './blend.ts';
import type { Constituent } from './constituent.ts';
import type { Evaporation } from './evaporation.ts';
import { evaporateInto } from './evaporation.ts';
import type { Fuel } from './fuel.ts';
import { molarEnthalpy, stoichiometricAirFuelRatio } from './fuel.ts';
import { FUELS } from './fuels.ts';
import { breathedAir } from './moist-air.ts';
import type { ProductMoles } from './products.ts';
import { oxygenDemand, productMoles, productsConstituent, sootLimit } from './products.ts';
import { SPECIES, speciesConstituent } from './species.ts';

const [CO, CO2, H2, H2O, O2] = [SPECIES.CO, SPECIES.CO2, SPECIES.H2, SPECIES.H2O, SPECIES.O2].map(
  speciesConstituent,
);

/** Place of each constituent in the default set. */
export const AIR_INDEX = 0;
export const FUEL_INDEX = 1;
export const PRODUCTS_INDEX = 2;

/** The mixture a design runs on. Per kilogram of fuel means fuel as fed, oil included. */
export interface DesignMixture {
  /** Air, fuel vapour, and the products of the two in the design's proportion. */
  readonly constituents: readonly [Constituent, Constituent, Constituent];
  /** Fuel as fed, oil included. */
  readonly fuel: Fuel;
  /** Of the products [mol per mole of fuel]. */
  readonly products: ProductMoles;
  /** Share of dry air in the air constituent, which is air as it is breathed [-]. */
  readonly dryShare: number;
  /** Air over fuel by mass, the air's water vapour counted with it [-]; lambda is the same for dry air and for moist. */
  readonly stoichiometricAirFuelRatio: number;
  readonly airFuelRatio: number;
  /** Lower heating value of the liquid [J/kg of fuel]. */
  readonly heatingValue: number;
  /** Chemical energy left in the CO and H2 of the products [J/kg of fuel]. */
  readonly unburnedEnergy: number;
  /** What the fuel does to the air at ambient pressure and temperature. */
  readonly evaporation: Evaporation;
}

/**
 * Constituents and figures of a design's mixture. Air and fuel vapour in the design's proportion, rich or lean, turn wholly into
 * the products constituent: elements are conserved, and heat release follows from absolute enthalpies alone.
 *
 *   unburned energy = sum over CO, H2 of n (h + h_O2 / 2 - h_burned) at 298.15 K
 *
 * @param charge  - fuel, lambda, oil share and evaporated share
 * @param ambient - state of the air the fuel is mixed into
 * @returns the mixture, or what is wrong with the charge
 */
export function designMixture(charge: Charge, ambient: Ambient): Outcome<DesignMixture> {
  const faults: Fault[] = [];
  const report = (field: keyof Charge, allowed: string) =>
    faults.push({ path: `charge.${field}`, message: `${field} is ${charge[field]}; allowed: ${allowed}` });
  const pureFuel = Object.hasOwn(FUELS, charge.fuel) ? FUELS[charge.fuel] : undefined;
  if (!pureFuel) report('fuel', Object.keys(FUELS).join(', '));
  if (!(charge.oilShare >= 0 && charge.oilShare < 1)) report('oilShare', '0 to below 1');
  if (!(charge.evaporatedShare >= 0 && charge.evaporatedShare <= 1)) report('evaporatedShare', '0 to 1');
  if (!pureFuel || faults.length > 0) return failure(faults);

  const fuel = withOil(pureFuel, charge.oilShare);
  const leastLambda = sootLimit(fuel.atoms);
  if (!(charge.lambda > leastLambda && charge.lambda < Infinity)) {
    report('lambda', `above ${leastLambda.toFixed(3)} (soot forms below) and finite`);
    return failure(faults);
  }

  const { gas: air, waterPerAir, dryShare } = breathedAir(ambient);
  const stoichiometric = stoichiometricAirFuelRatio(fuel) / dryShare;
  const airFuelRatio = charge.lambda * stoichiometric;
  const water = (waterPerAir * charge.lambda * oxygenDemand(fuel.atoms)) / AIR_MOLE_FRACTIONS.O2;
  const products = productMoles(fuel.atoms, charge.lambda, water);
  return success({
    constituents: [
      air,
      fuel.vapour,
      productsConstituent(`products of ${fuel.name}, lambda ${charge.lambda}`, products),
    ],
    fuel,
    products,
    dryShare,
    stoichiometricAirFuelRatio: stoichiometric,
    airFuelRatio,
    heatingValue: fuel.lowerHeatingValue,
    unburnedEnergy: unburnedEnergy(fuel, products),
    evaporation: evaporateInto(
      fuel,
      airFuelRatio,
      ambient.temperature,
      ambient.pressure,
      charge.evaporatedShare,
      air,
    ),
  });
}

/** Heat that the CO and H2 of the products would still give at 298.15 K [J/kg of fuel]. */
function unburnedEnergy(fuel: Fuel, products: ProductMoles): number {
  const perCO = molarEnthalpy(CO) + molarEnthalpy(O2) / 2 - molarEnthalpy(CO2);
  const perH2 = molarEnthalpy(H2) + molarEnthalpy(O2) / 2 - molarEnthalpy(H2O);
  return (products.CO * perCO + products.H2 * perH2) / fuel.molarMass;
}

/**
 * Mass fractions of a charge as the carburettor makes it, in the order of the constituents [-].
 *
 * @param purity - share of it; the rest is burned gas [-]
 */
export function chargeFractions({ airFuelRatio }: DesignMixture, purity = 1): readonly number[] {
  const fuel = 1 / (1 + airFuelRatio);
  const fractions = [0, 0, 0];
  fractions[AIR_INDEX] = purity * (1 - fuel);
  fractions[FUEL_INDEX] = purity * fuel;
  fractions[PRODUCTS_INDEX] = 1 - purity;
  return fractions;
}
