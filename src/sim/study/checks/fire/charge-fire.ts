import type { Model } from '../../../cycle/model.ts';
import { chargeFractions, FUEL_INDEX, PRODUCTS_INDEX } from '../../../gas/mixture.ts';
import { entropy, internalEnergy, specificHeat } from '../../../gas/polynomial.ts';
import { findRoot } from '../../../numerics/find-root.ts';

/** Between which the temperature of what burned is looked for [K]. */
const COLDEST_FIRE = 400;
const HOTTEST_FIRE = 5000;

/** Fresh charge of a design and what it burns to, at constant volume and without loss. */
export class ChargeFire {
  readonly freshGasConstant: number;
  readonly burnedGasConstant: number;
  /** Of fresh charge, lower heating value of the fuel in it [J/kg]. */
  readonly energy: number;
  private readonly fresh: readonly number[];

  constructor(private readonly model: Model) {
    const { set, mixture } = model;
    this.fresh = chargeFractions(mixture);
    this.freshGasConstant = this.mixed((k) => set.gasConstants[k]!);
    this.burnedGasConstant = set.gasConstants[PRODUCTS_INDEX]!;
    this.energy = this.fresh[FUEL_INDEX]! * mixture.heatingValue;
  }

  /** Internal energy of what is fresh, and of what is burned [J/kg]. */
  freshEnergy(T: number): number {
    return this.mixed((k) => internalEnergy(this.model.set.constituents[k]!, T));
  }

  burnedEnergy(T: number): number {
    return internalEnergy(this.model.set.constituents[PRODUCTS_INDEX]!, T);
  }

  /** Specific heats at constant volume [J/(kg K)]. */
  freshHeat(T: number): number {
    return this.mixed((k) => specificHeat(this.model.set.constituents[k]!, T)) - this.freshGasConstant;
  }

  burnedHeat(T: number): number {
    return specificHeat(this.model.set.constituents[PRODUCTS_INDEX]!, T) - this.burnedGasConstant;
  }

  /**
   * Pressure and temperature after all of it has burned shut in.
   *
   *   u_burned(T_2) = u_fresh(T_1),   p_2 = p_1 R_2 T_2 / (R_1 T_1)
   *
   * Valid: no heat lost, no dissociation: an upper bound, some 10 to 25 % above what closed vessels have shown. No pressure waves.
   * Source: first law.
   */
  shutIn(pressure: number, temperature: number): { readonly pressure: number; readonly temperature: number } {
    const start = this.freshEnergy(temperature);
    const hot = findRoot((T) => this.burnedEnergy(T) - start, COLDEST_FIRE, HOTTEST_FIRE, 1e-6);
    const expansion = (this.burnedGasConstant * hot) / (this.freshGasConstant * temperature);
    return { pressure: pressure * expansion, temperature: hot };
  }

  /**
   * Temperature of fresh charge that another's fire has compressed.
   *
   *   s(T, p) = s(T_1, p_1):  s0(T) - R ln p unchanged
   *
   * Valid: isentropic, composition unchanged.
   */
  compressed(pressure: number, temperature: number, to: number): number {
    const s0 = (T: number) => this.mixed((k) => entropy(this.model.set.constituents[k]!, T));
    const wanted = s0(temperature) + this.freshGasConstant * Math.log(to / pressure);
    return findRoot((T) => s0(T) - wanted, 0.5 * temperature, HOTTEST_FIRE, 1e-6);
  }

  private mixed(of: (constituent: number) => number): number {
    return this.fresh.reduce((sum, share, k) => (share === 0 ? sum : sum + share * of(k)), 0);
  }
}
