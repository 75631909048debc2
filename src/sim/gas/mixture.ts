import type { Ambient, Charge } from '../engine.ts';
import type { Fault, Outcome } from '../outcome.ts';
import { failure, success } from '../outcome.ts';
import { AIR_MOLE_FRACTIONS } from './air.ts';
import { chargeFuel } from './charge-fuel.ts';
import type { Constituent } from './constituent.ts';
import type { Evaporation } from './evaporation.ts';
import { evaporateInto } from './evaporation.ts';
import type { Fuel } from './fuel.ts';
import { molarEnthalpy, stoichiometricAirFuelRatio } from './fuel.ts';
import { FUELS } from './fuels.ts';
import { breathedAir } from './moist-air.ts';
import { liquidFuel } from './liquid-fuel.ts';
import type { ProductMoles } from './products.ts';
import { oxygenDemand, productMoles, productsConstituent, sootLimit } from './products.ts';
import { SPECIES, speciesConstituent } from './species.ts';

const [CO, CO2, H2, H2O, O2] = [SPECIES.CO, SPECIES.CO2, SPECIES.H2, SPECIES.H2O, SPECIES.O2].map(
  speciesConstituent,
);

/** Place of each constituent in the default set; liquid fuel is the fourth of a design that carries any. */
export const AIR_INDEX = 0;
export const FUEL_INDEX = 1;
export const PRODUCTS_INDEX = 2;
export const LIQUID_INDEX = 3;

const FUEL_KEYS = Object.keys(FUELS).join(', ');

/** The mixture a design runs on. Per kilogram of fuel means fuel as fed, oil included. */
export interface DesignMixture {
  /** Air, fuel vapour, the products of the two in the design's proportion, and liquid fuel where it is carried or injected. */
  readonly constituents: readonly Constituent[];
  /** Mass fractions of what the throttle lets in, in the order of the constituents [-]. */
  readonly drawn: readonly number[];
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
  /** What the fuel does to the air at the throttle, at ambient pressure and temperature: nothing where none joins there. */
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
  const report = (field: string, value: string | number, allowed: string) =>
    faults.push({ path: `charge.${field}`, message: `${field} is ${value}; allowed: ${allowed}` });
  const { blend } = charge;
  const known = (key: string): boolean => Object.hasOwn(FUELS, key);
  if (!known(charge.fuel)) report('fuel', charge.fuel, FUEL_KEYS);
  if (blend && !known(blend.fuel)) report('blend.fuel', blend.fuel, FUEL_KEYS);
  if (blend && !(blend.share >= 0 && blend.share <= 1)) report('blend.share', blend.share, '0 to 1');
  if (!(charge.oilShare >= 0 && charge.oilShare < 1)) report('oilShare', charge.oilShare, '0 to below 1');
  if (!(charge.evaporatedShare >= 0 && charge.evaporatedShare <= 1))
    report('evaporatedShare', charge.evaporatedShare, '0 to 1');
  if (faults.length > 0) return failure(faults);

  const fuel = chargeFuel(charge);
  const leastLambda = sootLimit(fuel.atoms);
  const burns = `above ${leastLambda.toFixed(3)} (soot forms below) and finite`;
  if (!(charge.lambda > leastLambda && charge.lambda < Infinity)) {
    report('lambda', charge.lambda, burns);
    return failure(faults);
  }
  const table = charge.lambdaOverSpeed;
  const sooty = table?.lambdas.find((lambda) => !(lambda > leastLambda && lambda < Infinity));
  if (sooty !== undefined) {
    report('lambdaOverSpeed.lambdas', sooty, burns);
    return failure(faults);
  }

  const { gas: air, waterPerAir, dryShare } = breathedAir(ambient);
  const stoichiometric = stoichiometricAirFuelRatio(fuel) / dryShare;
  const airFuelRatio = charge.lambda * stoichiometric;
  const water = (waterPerAir * charge.lambda * oxygenDemand(fuel.atoms)) / AIR_MOLE_FRACTIONS.O2;
  const products = productMoles(fuel.atoms, charge.lambda, water);
  const evaporation = atThrottle(charge, ambient, fuel, airFuelRatio, air);
  const constituents = [
    air,
    fuel.vapour,
    productsConstituent(`products of ${fuel.name}, lambda ${charge.lambda}`, products),
  ];
  if (carriesLiquid(charge)) constituents.push(liquidFuel(fuel));
  const fuelShare = charge.feed === 'carburettor' ? 1 / (1 + airFuelRatio) : 0;
  const vapourShare = carriesLiquid(charge) ? fuelShare * evaporation.evaporatedShare : fuelShare;
  return success({
    constituents,
    drawn: [1 - fuelShare, vapourShare, 0, fuelShare - vapourShare].slice(0, constituents.length),
    fuel,
    products,
    dryShare,
    stoichiometricAirFuelRatio: stoichiometric,
    airFuelRatio,
    heatingValue: fuel.lowerHeatingValue,
    unburnedEnergy: unburnedEnergy(fuel, products),
    evaporation,
  });
}

/** Whether liquid fuel is a constituent of the charge. */
const carriesLiquid = ({ feed, liquidGoesOn }: Charge): boolean => feed !== 'carburettor' || liquidGoesOn;

function atThrottle(
  { feed, evaporatedShare, liquidGoesOn }: Charge,
  { temperature, pressure }: Ambient,
  fuel: Fuel,
  airFuelRatio: number,
  air: Constituent,
): Evaporation {
  if (feed !== 'carburettor') return { temperature, evaporatedShare: 0, saturated: false, heatFromWalls: 0 };
  const met = evaporateInto(fuel, airFuelRatio, temperature, pressure, evaporatedShare, air);
  return liquidGoesOn ? { ...met, heatFromWalls: 0 } : met;
}

/** Heat that the CO and H2 of the products would still give at 298.15 K [J/kg of fuel]. */
function unburnedEnergy(fuel: Fuel, products: ProductMoles): number {
  const perCO = molarEnthalpy(CO) + molarEnthalpy(O2) / 2 - molarEnthalpy(CO2);
  const perH2 = molarEnthalpy(H2) + molarEnthalpy(O2) / 2 - molarEnthalpy(H2O);
  return (products.CO * perCO + products.H2 * perH2) / fuel.molarMass;
}

/**
 * Mass fractions of a charge in which all fuel is vapour, ready to burn, in the order of the constituents [-].
 *
 * @param purity - share of it; the rest is burned gas [-]
 */
export function chargeFractions(
  { airFuelRatio, constituents }: DesignMixture,
  purity = 1,
): readonly number[] {
  const fuel = 1 / (1 + airFuelRatio);
  const fractions = constituents.map(() => 0);
  fractions[AIR_INDEX] = purity * (1 - fuel);
  fractions[FUEL_INDEX] = purity * fuel;
  fractions[PRODUCTS_INDEX] = 1 - purity;
  return fractions;
}

/** The same of what the throttle lets in, and so of what stands in inlet box and plenum. */
export const drawnFractions = ({ drawn }: DesignMixture, purity = 1): readonly number[] =>
  drawn.map((share, k) => purity * share + (k === PRODUCTS_INDEX ? 1 - purity : 0));
