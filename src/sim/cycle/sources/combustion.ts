import type { BurnTiming } from '../../combustion/burn-timing.ts';
import { beyondMixture, burnedShare, mixtureShare } from '../../combustion/completeness.ts';
import { wiebeFraction, wiebePhase } from '../../combustion/wiebe.ts';
import type { Combustion } from '../../engine.ts';
import { AIR_INDEX, FUEL_INDEX, LIQUID_INDEX, PRODUCTS_INDEX } from '../../gas/mixture.ts';
import { restOfTurn } from '../../geometry/angles.ts';
import type { GasStates } from '../gas-states.ts';
import type { Instant, StepSource } from '../instant.ts';
import type { Memory } from '../memory.ts';

/**
 * How a charge near the misfire limit burns: `averaged`, in the share that stands for many turns, so that a periodic state
 * exists; or `by turns`, wholly or not at all, as single turns do: not above the residual limit, not where too lean or too rich.
 */
export type Firing = 'averaged' | 'by turns';

export interface BurningCylinder {
  readonly node: number;
  /** Crank angle of the spark, within one turn [rad]. */
  readonly sparkAngle: number;
}

/**
 * Burning in every cylinder: air and fuel turn into products in the design's proportion; heat release is the change of
 * absolute energy that follows, so no heat is added.
 *
 *   fuel burned over a step = m_0 eta (x(end) - x(begin)) a       x: Wiebe fraction, eta: completeness
 *   a = min(1, fuel present / (m_0 (1 - eta x(begin))))           gas lost through a window takes its fuel along
 *
 * The burn is integrated exactly and spread evenly over each step, so a coarse step still burns the right amount.
 * m_0: fuel, vapour and liquid, with its air beside it at the spark [kg]; only vapour burns, and what comes too late stays unburned. Products of the design's mixture only, so a charge that drifted in mixture
 * burns its lesser part. Source: Wiebe's function, see combustion/wiebe.ts.
 *
 * At the spark `ignite` fixes m_0, delay, duration and completeness from the gas of that instant.
 * Records the fuel burned in each cylinder [kg].
 */
export class Burning implements StepSource {
  readonly recordCount: number;
  recordAt = 0;
  /** What `addTo` multiplies with [s]. */
  weight = 0;
  /** Of the fuel in each cylinder at its last spark, what was still liquid [-]. */
  readonly liquidAtSpark: Float64Array;
  /** Air over fuel over stoichiometric in each cylinder at its last spark, liquid fuel counted; Infinity without fuel [-]. */
  readonly lambdaAtSpark: Float64Array;
  /** Mass fraction of burned gas in each cylinder at its last spark [-]. */
  readonly residualAtSpark: Float64Array;
  /** Burning is over here, in shares of its duration [-]. */
  private readonly lastProgress: number;
  /** Fuel rate of the step prepared [kg/s]. */
  private readonly rate: Float64Array;
  /** Where the step prepared ends [rad], and what is burned there: the next step begins with it. */
  private readonly endAngle: Float64Array;
  private readonly endFraction: Float64Array;

  constructor(
    private readonly cylinders: readonly BurningCylinder[],
    private readonly settings: Combustion,
    private readonly timing: BurnTiming,
    private readonly airFuelRatio: number,
    private readonly lambda: number,
    private readonly firing: Firing,
    private readonly instant: Instant,
    private readonly memory: Memory,
    private readonly gas: GasStates,
  ) {
    this.recordCount = cylinders.length;
    this.liquidAtSpark = new Float64Array(cylinders.length);
    this.lambdaAtSpark = new Float64Array(cylinders.length).fill(Infinity);
    this.residualAtSpark = new Float64Array(cylinders.length);
    this.rate = new Float64Array(cylinders.length);
    this.endAngle = new Float64Array(cylinders.length).fill(NaN);
    this.endFraction = new Float64Array(cylinders.length);
    this.lastProgress = wiebePhase(1 - 1e-9, settings.wiebeA, settings.wiebeM);
  }

  /** Fixes the burn of cylinder j from the gas now unpacked. In single turns a spark finds vapour alone. */
  ignite(j: number): void {
    const { gas, settings, memory, instant, timing } = this;
    const { node } = this.cylinders[j];
    const base = node * gas.set.count;
    const residual = gas.fraction[base + PRODUCTS_INDEX];
    const fuel = this.fuelAt(node);
    const lambda = this.lambdaOf(node, fuel);
    this.liquidAtSpark[j] = fuel > 0 ? 1 - gas.fraction[base + FUEL_INDEX] / fuel : 0;
    this.lambdaAtSpark[j] = lambda;
    this.residualAtSpark[j] = residual;
    timing.evaluate(
      instant.omega,
      gas.temperature[node],
      gas.pressure[node],
      Number.isFinite(lambda) ? lambda : this.lambda,
      residual,
    );
    const { completeness, misfireResidual, misfireWidth } = settings;
    const share =
      this.firing === 'averaged'
        ? burnedShare(residual, completeness, misfireResidual, misfireWidth) * mixtureShare(lambda, settings)
        : residual > misfireResidual ||
            beyondMixture(this.lambdaOf(node, gas.fraction[base + FUEL_INDEX]), settings)
          ? 0
          : completeness;
    this.endAngle[j] = NaN;
    memory.setBurn(j, this.burnable(node, fuel), timing.delay, timing.duration, share);
    if (memory.keepsSparks) memory.setSpark(j, gas.pressure[node], gas.temperature[node], gas.volume[node]);
  }

  private get stoichiometric(): number {
    return this.airFuelRatio / this.lambda;
  }

  /** Air over a mass fraction of fuel, over stoichiometric; Infinity without fuel [-]. */
  private lambdaOf(node: number, fuel: number): number {
    const { gas } = this;
    return fuel > 0 ? gas.fraction[node * gas.set.count + AIR_INDEX] / fuel / this.stoichiometric : Infinity;
  }

  /** Mass fraction of fuel in a node, vapour and liquid [-]. */
  private fuelAt(node: number): number {
    const { gas } = this;
    const n = gas.set.count;
    const vapour = gas.fraction[node * n + FUEL_INDEX];
    return n > LIQUID_INDEX ? vapour + gas.fraction[node * n + LIQUID_INDEX] : vapour;
  }

  /** Of a mass fraction of fuel, what has its air beside it [kg]. */
  private burnable(node: number, fraction: number): number {
    const { gas } = this;
    const air = gas.fraction[node * gas.set.count + AIR_INDEX];
    return gas.mass[node] * Math.min(fraction, air / this.airFuelRatio);
  }

  /**
   * Works out the rates of the step in hand from the present instant, where it begins and the gas was unpacked last. They hold
   * until the next call.
   */
  prepare(): void {
    const { cylinders, settings, memory, instant, gas } = this;
    const { theta, span } = instant;
    const { wiebeA, wiebeM } = settings;
    for (let j = 0; j < cylinders.length; j++) {
      this.rate[j] = 0;
      const mass = memory.burnMass(j);
      if (mass === 0) continue;
      const { node, sparkAngle } = cylinders[j];
      const since = restOfTurn(theta - sparkAngle);
      const duration = memory.burnDuration(j);
      const begin = (since - memory.burnDelay(j)) / duration;
      const end = begin + span / duration;
      if (end <= 0 || begin >= this.lastProgress) continue;
      const eta = memory.completeness(j);
      const before = theta === this.endAngle[j] ? this.endFraction[j] : wiebeFraction(begin, wiebeA, wiebeM);
      this.endAngle[j] = theta + span;
      this.endFraction[j] = wiebeFraction(end, wiebeA, wiebeM);
      const expected = mass * (1 - eta * before);
      const present = this.burnable(node, gas.fraction[node * gas.set.count + FUEL_INDEX]);
      const share = present < expected ? present / expected : 1;
      const burned = mass * eta * share * (this.endFraction[j] - before);
      this.rate[j] = (burned * instant.omega) / span;
    }
  }

  /** Adds `weight` times the prepared rates to a vector of the state. */
  addTo(vector: Float64Array, record: boolean): void {
    const { cylinders, rate, gas, airFuelRatio, weight } = this;
    for (let j = 0; j < cylinders.length; j++) {
      if (rate[j] === 0) continue;
      const at = cylinders[j].node * gas.stride;
      const burned = weight * rate[j];
      vector[at + AIR_INDEX] -= burned * airFuelRatio;
      vector[at + FUEL_INDEX] -= burned;
      vector[at + PRODUCTS_INDEX] += burned * (1 + airFuelRatio);
      if (record) vector[this.recordAt + j] += burned;
    }
  }
}
