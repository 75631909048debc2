/**
 * What each cylinder remembers between events of its cycle. It belongs to the periodic solution like the gas itself:
 * restart and acceleration carry it along.
 */
export class Memory {
  /** Numbers per cylinder. */
  static readonly STRIDE = 5;
  private static readonly STALE = 0;
  private static readonly BURN_MASS = 1;
  private static readonly BURN_DELAY = 2;
  private static readonly BURN_DURATION = 3;
  private static readonly COMPLETENESS = 4;

  readonly values: Float64Array;

  constructor(readonly cylinders: number) {
    this.values = new Float64Array(cylinders * Memory.STRIDE);
  }

  /** Mass fraction of unburned air and fuel in the gas that stood in the cylinder when its exhaust opened [-]. */
  stalePurity(j: number): number {
    return this.values[j * Memory.STRIDE + Memory.STALE];
  }

  setStalePurity(j: number, purity: number): void {
    this.values[j * Memory.STRIDE + Memory.STALE] = purity;
  }

  /** Fuel that the burn in progress started with [kg]. */
  burnMass(j: number): number {
    return this.values[j * Memory.STRIDE + Memory.BURN_MASS];
  }

  /** Crank angle after the cylinder's own spark at which heat release begins [rad]. */
  burnDelay(j: number): number {
    return this.values[j * Memory.STRIDE + Memory.BURN_DELAY];
  }

  burnDuration(j: number): number {
    return this.values[j * Memory.STRIDE + Memory.BURN_DURATION];
  }

  completeness(j: number): number {
    return this.values[j * Memory.STRIDE + Memory.COMPLETENESS];
  }

  setBurn(j: number, mass: number, delay: number, duration: number, completeness: number): void {
    const at = j * Memory.STRIDE;
    this.values[at + Memory.BURN_MASS] = mass;
    this.values[at + Memory.BURN_DELAY] = delay;
    this.values[at + Memory.BURN_DURATION] = duration;
    this.values[at + Memory.COMPLETENESS] = completeness;
  }

  /** Scale of every number, inverted: purities, angles and completeness as they are, fuel by the last burn's. */
  weigh(weights: Float64Array): void {
    for (let j = 0; j < this.cylinders; j++) {
      const at = j * Memory.STRIDE;
      const mass = this.burnMass(j);
      weights.fill(1, at, at + Memory.STRIDE);
      weights[at + Memory.BURN_MASS] = mass > 0 ? 1 / mass : 0;
    }
  }
}
