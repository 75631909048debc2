/** What a wall temperature is weighed by [K]: about what walls stand above the air. */
const WALL_SCALE = 100;

/**
 * What each cylinder remembers between events of its cycle, and a valve that sticks between steps. It belongs to the periodic solution like the gas itself:
 * restart and acceleration carry it along.
 */
export class Memory {
  /** Numbers per cylinder. */
  static readonly STRIDE = 6;
  private static readonly STALE = 0;
  private static readonly BURN_MASS = 1;
  private static readonly BURN_DELAY = 2;
  private static readonly BURN_DURATION = 3;
  private static readonly COMPLETENESS = 4;
  private static readonly INJECTION = 5;

  /** Numbers per cylinder of the state at the spark, where it is kept: pressure, temperature, volume. */
  private static readonly SPARK_STRIDE = 3;

  readonly values: Float64Array;
  /** Where the states at the spark begin, -1 where none are kept; the relief valve's lift and the wall temperatures likewise. */
  private readonly sparkAt: number;
  private readonly liftAt: number;
  private readonly wallsAt: number;

  /**
   * @param sparks - whether the state of the gas at the spark is kept
   * @param walls  - wall temperatures kept per cylinder
   * @param lift   - whether the lift of a relief valve is kept
   */
  constructor(
    readonly cylinders: number,
    sparks = false,
    walls = 0,
    lift = false,
  ) {
    const burns = cylinders * Memory.STRIDE;
    const states = sparks ? cylinders * Memory.SPARK_STRIDE : 0;
    const lifts = lift ? 1 : 0;
    this.values = new Float64Array(burns + states + lifts + cylinders * walls);
    this.sparkAt = sparks ? burns : -1;
    this.liftAt = lift ? burns + states : -1;
    this.wallsAt = walls > 0 ? burns + states + lifts : -1;
  }

  /** Wall temperatures, cylinder by cylinder, as a view of `values`; empty where none are kept [K]. */
  get walls(): Float64Array {
    return this.values.subarray(this.wallsAt < 0 ? this.values.length : this.wallsAt);
  }

  get keepsLift(): boolean {
    return this.liftAt >= 0;
  }

  /** Lift of the relief valve over its whole lift, as the last step left it; only where it is kept [-]. */
  get lift(): number {
    return this.values[this.liftAt];
  }

  set lift(lift: number) {
    this.values[this.liftAt] = lift;
  }

  get keepsSparks(): boolean {
    return this.sparkAt >= 0;
  }

  /** State of the gas when its spark fired [Pa, K, m^3]; 0 before the first. Only where it is kept. */
  sparkPressure(j: number): number {
    return this.values[this.sparkAt + j * Memory.SPARK_STRIDE];
  }

  sparkTemperature(j: number): number {
    return this.values[this.sparkAt + j * Memory.SPARK_STRIDE + 1];
  }

  sparkVolume(j: number): number {
    return this.values[this.sparkAt + j * Memory.SPARK_STRIDE + 2];
  }

  setSpark(j: number, pressure: number, temperature: number, volume: number): void {
    const at = this.sparkAt + j * Memory.SPARK_STRIDE;
    this.values[at] = pressure;
    this.values[at + 1] = temperature;
    this.values[at + 2] = volume;
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

  /** Fuel that is injected into the cylinder in this turn [kg]. */
  injection(j: number): number {
    return this.values[j * Memory.STRIDE + Memory.INJECTION];
  }

  setInjection(j: number, mass: number): void {
    this.values[j * Memory.STRIDE + Memory.INJECTION] = mass;
  }

  setBurn(j: number, mass: number, delay: number, duration: number, completeness: number): void {
    const at = j * Memory.STRIDE;
    this.values[at + Memory.BURN_MASS] = mass;
    this.values[at + Memory.BURN_DELAY] = delay;
    this.values[at + Memory.BURN_DURATION] = duration;
    this.values[at + Memory.COMPLETENESS] = completeness;
  }

  /**
   * Scale of every number, inverted: purities, angles and completeness as they are, fuel by the last burn's, the state at the spark
   * by itself, lift as it is, wall temperatures by 100 K.
   */
  weigh(weights: Float64Array): void {
    for (let j = 0; j < this.cylinders; j++) {
      const at = j * Memory.STRIDE;
      const mass = this.burnMass(j);
      weights.fill(1, at, at + Memory.STRIDE);
      weights[at + Memory.BURN_MASS] = mass > 0 ? 1 / mass : 0;
      const injected = this.injection(j);
      weights[at + Memory.INJECTION] = injected > 0 ? 1 / injected : 0;
    }
    for (let i = this.cylinders * Memory.STRIDE; i < this.values.length; i++) {
      const wall = this.wallsAt >= 0 && i >= this.wallsAt;
      const value = this.values[i];
      weights[i] = wall ? 1 / WALL_SCALE : i === this.liftAt ? 1 : value > 0 ? 1 / value : 0;
    }
  }
}
