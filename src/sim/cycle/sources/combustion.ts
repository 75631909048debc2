import type { BurnTiming } from '../../combustion/burn-timing.ts';
import { burnedShare } from '../../combustion/completeness.ts';
import { wiebeFraction, wiebePhase, wiebeRate } from '../../combustion/wiebe.ts';
import type { Combustion } from '../../engine.ts';
import { AIR_INDEX, FUEL_INDEX, PRODUCTS_INDEX } from '../../gas/mixture.ts';
import type { GasStates } from '../gas-states.ts';
import type { Instant, Source } from '../instant.ts';
import type { Memory } from '../memory.ts';
import { TURN } from '../../units.ts';

export interface BurningCylinder {
  readonly node: number;
  /** Crank angle of the spark, within one turn [rad]. */
  readonly sparkAngle: number;
}

/**
 * Burning in every cylinder: air and fuel turn into products in the design's proportion; heat release is the change of
 * absolute energy that follows, so no heat is added.
 *
 *   dm_fuel/dt = -m_0 eta x'(theta) omega a       x: Wiebe fraction, eta: completeness
 *   a = min(1, fuel present / (m_0 (1 - eta x)))  so that gas lost through a window takes its fuel along
 *
 * At the spark `ignite` fixes m_0, delay, duration and completeness from the gas of that instant.
 * Records the fuel burned in each cylinder [kg/s].
 */
export class Burning implements Source {
  readonly recordCount: number;
  recordAt = 0;
  /** Burning is over here, in shares of its duration [-]. */
  private readonly lastProgress: number;

  constructor(
    private readonly cylinders: readonly BurningCylinder[],
    private readonly settings: Combustion,
    private readonly timing: BurnTiming,
    private readonly airFuelRatio: number,
    private readonly lambda: number,
    private readonly instant: Instant,
    private readonly memory: Memory,
    private readonly gas: GasStates,
  ) {
    this.recordCount = cylinders.length;
    this.lastProgress = wiebePhase(1 - 1e-9, settings.wiebeA, settings.wiebeM);
  }

  /** Fixes the burn of cylinder j from the gas now unpacked. */
  ignite(j: number): void {
    const { gas, settings, memory, instant, timing } = this;
    const { node } = this.cylinders[j];
    const base = node * gas.set.count;
    const residual = gas.fraction[base + PRODUCTS_INDEX];
    timing.evaluate(instant.omega, gas.temperature[node], gas.pressure[node], this.lambda, residual);
    const { completeness, misfireResidual, misfireWidth } = settings;
    const share = burnedShare(residual, completeness, misfireResidual, misfireWidth);
    memory.setBurn(j, this.fuelPresent(node), timing.delay, timing.duration, share);
  }

  /** Fuel that has its air beside it [kg]. */
  private fuelPresent(node: number): number {
    const { gas } = this;
    const base = node * gas.set.count;
    return (
      gas.mass[node] *
      Math.min(gas.fraction[base + FUEL_INDEX], gas.fraction[base + AIR_INDEX] / this.airFuelRatio)
    );
  }

  addTo(rates: Float64Array, record: boolean): void {
    const { cylinders, settings, memory, gas, instant, airFuelRatio } = this;
    const { wiebeA, wiebeM } = settings;
    for (let j = 0; j < cylinders.length; j++) {
      const { node, sparkAngle } = cylinders[j];
      let burned = 0;
      const mass = memory.burnMass(j);
      if (mass > 0) {
        let since = (instant.theta - sparkAngle) % TURN;
        if (since < 0) since += TURN;
        const duration = memory.burnDuration(j);
        const progress = (since - memory.burnDelay(j)) / duration;
        if (progress > 0 && progress < this.lastProgress) {
          const eta = memory.completeness(j);
          const present = this.fuelPresent(node);
          const expected = mass * (1 - eta * wiebeFraction(progress, wiebeA, wiebeM));
          const share = present < expected ? present / expected : 1;
          burned = (mass * eta * wiebeRate(progress, wiebeA, wiebeM) * instant.omega * share) / duration;
          const at = node * gas.stride;
          rates[at + AIR_INDEX] -= burned * airFuelRatio;
          rates[at + FUEL_INDEX] -= burned;
          rates[at + PRODUCTS_INDEX] += burned * (1 + airFuelRatio);
        }
      }
      if (record) rates[this.recordAt + j] = burned;
    }
  }
}
