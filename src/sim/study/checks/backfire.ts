import type { Model } from '../../cycle/model.ts';
import { FLAME_SPEED_LAWS, laminarFlameSpeed } from '../../combustion/flame-speed.ts';
import type { FlameSpeedLaw } from '../../combustion/flame-speed.ts';
import { orificeMassFlow } from '../../exchange/orifice.ts';
import type { Constituent } from '../../gas/constituent.ts';
import { AIR_INDEX, chargeFractions, FUEL_INDEX, PRODUCTS_INDEX } from '../../gas/mixture.ts';
import { internalEnergy, specificHeat } from '../../gas/polynomial.ts';
import { findRoot } from '../../numerics/find-root.ts';
import type { SolvedPoint } from '../../results/point-result.ts';

/** What mixture stands in the plenum, and what it would do if it burned there. */
export interface Backfire {
  /** Mixture in plenum alone, and in inlet box, plenum and passages together [kg]. */
  readonly plenumMass: number;
  readonly tractMass: number;
  /** Of the fuel in the tract, lower heating value [J]. */
  readonly energy: number;
  /** Highest pressure, shut in: all of the plenum burns at constant volume [Pa]. */
  readonly closedPressure: number;
  /** The same with the relief valve venting; null without one [Pa]. */
  readonly relievedPressure: number | null;
  /** What the vented figure took for the time in which a flame crosses the plenum [s]. */
  readonly burnTime: number;
}

/** Flame in a plenum over a laminar one: 1 is laminar; crowded plenums full of swirl burn several times faster. Typical [-]. */
export const USUAL_FLAME_FACTOR = 3;
/** Steps over the burn: twice as many change the vented pressure by less than a thousandth. */
const STEPS = 4000;

/**
 * What the mixture in the plenum of a solved point would do if it caught fire.
 *
 *   shut in:  u_products(T_2) = u_fresh(T_1),   p_2 = p_1 R_2 T_2 / (R_1 T_1)
 *   vented:   burned share (t / t_b)^3 of a ball from its middle, dU = -mdot h dt through the relief valve, wide open above cracking
 *   t_b = r / (S F R_2 T_2 / (R_1 T_1)),   r = (3 V / (4 pi))^(1/3)
 *
 * S laminar flame speed [m/s], F how much faster it runs here [-]; V plenum [m^3]. Entries, blower and windows are taken as shut.
 *
 * Valid: an upper bound for a plenum that burns alone, dissociation left out (over by some 5 to 10 %); no pressure waves, no
 * detonation, which go far beyond. A valve's lift lags, but its whole area counts from cracking on, so the vented figure is on the
 * low side; it stands and falls with F. Neither is a strength to design for.
 * Source: first law; cubic growth of a flame ball; relief as in flows/relief-valve.ts.
 */
export function backfire(model: Model, point: SolvedPoint, flameFactor = USUAL_FLAME_FACTOR): Backfire {
  const { engine, mixture, set } = model;
  const { volume, relief } = engine.plenum;
  const fresh = chargeFractions(model.mixture);
  const [air, fuel, products] = [AIR_INDEX, FUEL_INDEX, PRODUCTS_INDEX].map((k) => set.constituents[k]!) as [
    Constituent,
    Constituent,
    Constituent,
  ];
  const freshR = fresh[AIR_INDEX]! * air.gasConstant + fresh[FUEL_INDEX]! * fuel.gasConstant;
  const u1 = (T: number) =>
    fresh[AIR_INDEX]! * internalEnergy(air, T) + fresh[FUEL_INDEX]! * internalEnergy(fuel, T);
  const { meanPressure: p1, meanTemperature: T1 } = point.plenum;
  const u2 = (T: number) => internalEnergy(products, T);
  const start = u1(T1);
  const T2 = findRoot((T) => u2(T) - start, 500, 4500, 1e-6);
  const expansion = (products.gasConstant * T2) / (freshR * T1);
  const plenumMass = (p1 * volume) / (freshR * T1);
  const { boxVolume } = engine.intake;
  const tractMass =
    plenumMass * (1 + (model.geometry.cylinders.length * engine.passages.volume) / volume) +
    (point.inletBox.meanPressure * boxVolume) / (freshR * point.inletBox.meanTemperature);
  const laws = FLAME_SPEED_LAWS as Readonly<Record<string, FlameSpeedLaw>>;
  const laminar = laminarFlameSpeed(laws[engine.charge.fuel]!, T1, p1, engine.charge.lambda, 0);
  const burnTime = Math.cbrt((3 * volume) / (4 * Math.PI)) / (laminar * flameFactor * expansion);
  return {
    plenumMass,
    tractMass,
    energy: tractMass * fresh[FUEL_INDEX]! * mixture.heatingValue,
    closedPressure: p1 * expansion,
    relievedPressure: relief
      ? vented({
          mass: plenumMass,
          volume,
          energy: plenumMass * start,
          temperature: T1,
          area: relief.area * relief.dischargeCoefficient,
          cracking: engine.ambient.pressure + relief.crackingPressure,
          outside: engine.ambient.pressure,
          burnTime,
          gas: (burned) => ({
            R: burned * products.gasConstant + (1 - burned) * freshR,
            u: (T) => burned * u2(T) + (1 - burned) * u1(T),
            cv: (T) =>
              burned * (specificHeat(products, T) - products.gasConstant) +
              (1 - burned) *
                (fresh[AIR_INDEX]! * specificHeat(air, T) +
                  fresh[FUEL_INDEX]! * specificHeat(fuel, T) -
                  freshR),
          }),
        })
      : null,
    burnTime,
  };
}

interface Vented {
  readonly mass: number;
  readonly volume: number;
  readonly energy: number;
  readonly temperature: number;
  readonly area: number;
  readonly cracking: number;
  readonly outside: number;
  readonly burnTime: number;
  readonly gas: (burned: number) => {
    readonly R: number;
    readonly u: (T: number) => number;
    readonly cv: (T: number) => number;
  };
}

/** Highest pressure of one well-mixed volume that burns and vents [Pa]; explicit steps, temperature by Newton. */
function vented(start: Vented): number {
  let { mass, energy, temperature: T } = start;
  let highest = 0;
  const step = start.burnTime / STEPS;
  for (let i = 0; i <= STEPS; i++) {
    const { R, u, cv } = start.gas((i / STEPS) ** 3);
    for (let k = 0; k < 5; k++) T += (energy / mass - u(T)) / cv(T);
    const p = (mass * R * T) / start.volume;
    highest = Math.max(highest, p);
    if (p <= start.cracking) continue;
    const gamma = 1 + R / cv(T);
    const out = step * orificeMassFlow(start.area, p, T, start.outside, gamma, R);
    energy -= out * (u(T) + R * T);
    mass -= out;
  }
  return highest;
}
