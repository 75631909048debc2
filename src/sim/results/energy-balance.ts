import { THERMOCHEMICAL_TEMPERATURE } from '../constants.ts';
import type { CycleSystem } from '../cycle/system.ts';
import { FUEL_INDEX, LIQUID_INDEX, PRODUCTS_INDEX } from '../gas/mixture.ts';
import { enthalpy } from '../gas/polynomial.ts';
import type { PeriodTotals } from './period-totals.ts';
import type { EnergyBalance } from './point-result.ts';

/**
 * Where the fuel's energy goes [W]:
 *
 *   fuel = brake + friction + blower + cylinder walls + other walls + exhaust + unburned
 *
 * fuel: lower heating value of the liquid. cylinder walls: with what blow-by leaves at the rings. blower: shaft power less the work that returns with the charge. other walls:
 * inlet box, plenum, passages, collectors, crankcase, blower casings and intercooler, less the heat that the tract gives the fuel to evaporate.
 * exhaust: sensible enthalpy of all that leaves above 298.15 K, less that of what the throttle draws in. unburned: chemical
 * energy of fuel vapour, CO and H2 that leave. brake: work of the undersides on a crankcase is taken off; it is found again where its gas
 * takes it, in walls and in what leaves.
 *
 * It closes as well as the cycle's energy does, because absolute enthalpies, heating values and elements are consistent:
 * that is its test.
 */
export function energyBalance(
  system: CycleSystem,
  totals: PeriodTotals,
  perSecond: number,
  known: { readonly brake: number; readonly friction: number; readonly blowerShaft: number },
): EnergyBalance {
  const { mixture, network } = system.model;
  const { constituents } = system.gas.set;
  const { fuel } = mixture;
  const reference = constituents.map((gas) => enthalpy(gas, THERMOCHEMICAL_TEMPERATURE));
  const chemical = constituents.map(() => 0);
  chemical[FUEL_INDEX] = fuel.lowerHeatingValue + fuel.latentHeat;
  chemical[PRODUCTS_INDEX] = mixture.unburnedEnergy / (1 + mixture.airFuelRatio);
  if (chemical.length > LIQUID_INDEX) chemical[LIQUID_INDEX] = fuel.lowerHeatingValue;

  const { throttle } = network.through;
  const vapourFed = totals.through(throttle, FUEL_INDEX);
  const liquidFed = chemical.length > LIQUID_INDEX ? totals.through(throttle, LIQUID_INDEX) : 0;
  const injected = totals.injected();
  const evaporation = vapourFed * mixture.evaporation.heatFromWalls;
  // Fuel comes as a liquid: the throttle's enthalpy holds what the air and the tract's walls gave to evaporate it.
  let exhaust = evaporation - vapourFed * fuel.latentHeat;
  let unburned = vapourFed * chemical[FUEL_INDEX] + liquidFed * fuel.lowerHeatingValue;
  const { temperature } = system.model.engine.ambient;
  exhaust -= injected.mass * fuel.liquidSpecificHeat * (temperature - THERMOCHEMICAL_TEMPERATURE);
  for (const { edge, inwards } of totals.boundary()) {
    exhaust -= inwards * totals.enthalpyThrough(edge);
    constituents.forEach((_, k) => {
      exhaust += inwards * totals.through(edge, k) * reference[k];
      unburned -= inwards * totals.through(edge, k) * chemical[k];
    });
  }
  const fluidWork = totals.blowers(0);
  const casing = totals.blowers(1) + (system.cooler ? totals.sum(system.cooler) : 0);
  const rings = system.blowBy ? totals.sum(system.blowBy) : 0;
  return {
    fuel: totals.fuelFed() * fuel.lowerHeatingValue * perSecond,
    brake: known.brake,
    friction: known.friction,
    blower: known.blowerShaft - fluidWork * perSecond,
    cylinderWalls: (totals.sum(system.cylinderWalls) + rings) * perSecond,
    otherWalls: (casing - totals.sum(system.nodeWalls) - evaporation) * perSecond,
    exhaustSensible: exhaust * perSecond,
    unburned: unburned * perSecond,
  };
}
