import type { Combustion } from '../engine.ts';
import type { Flame } from './flame.ts';
import { flameSpeed } from './flame.ts';

/** Mixture at which delay and duration are stated: a usual one for full power [-]. */
export const REFERENCE_LAMBDA = 0.88;

type Reference = Pick<
  Combustion,
  | 'delay'
  | 'duration'
  | 'referenceSpeed'
  | 'speedExponent'
  | 'referenceResidual'
  | 'referenceTemperature'
  | 'referencePressure'
  | 'flameSpeedExponent'
>;

/**
 * Delay from spark to burning, and duration of burning, from those at a reference state.
 *
 *   delay, duration = reference (N / N_ref)^e (S / S_ref)^-n
 *
 * S is the laminar flame speed at spark; both angles share the exponents. Turbulence grows nearly with speed, which leaves a weak
 * e in crank angle (typical 0.2-0.5); n is typically 0.5-0.7, because the turbulent flame depends less than proportionally on
 * the laminar one.
 *
 * Valid: near the reference state; beyond the fits of the flame speed as flame-speed.ts says. The angles grow without limit as the
 * charge is diluted: the misfire limit, not the timing, ends burning.
 * Numerics: `evaluate` allocates nothing; it overwrites `delay` and `duration`.
 * Source: form after Heywood 1988, sec. 9.3.3 and 14.4.2; flame speed after Metghalchi & Keck 1982 and Rhodes & Keck 1985.
 */
export class BurnTiming {
  /** As last evaluated [rad of crank]. */
  delay: number;
  duration: number;
  readonly #referenceFlameSpeed: number;

  /**
   * @param reference      - see Combustion
   * @param flame          - of the fuel
   * @param molarMassRatio - fresh charge over burned gas [-]: turns mass into mole fractions
   * @param lambda         - at which the reference is stated [-]
   */
  constructor(
    private readonly reference: Reference,
    private readonly flame: Flame,
    private readonly molarMassRatio: number,
    lambda: number = REFERENCE_LAMBDA,
  ) {
    this.delay = reference.delay;
    this.duration = reference.duration;
    this.#referenceFlameSpeed = this.#flameSpeed(
      reference.referenceTemperature,
      reference.referencePressure,
      lambda,
      reference.referenceResidual,
    );
  }

  /**
   * @param speed       - of the crank [rad/s]
   * @param temperature - of the unburned charge at spark [K]
   * @param pressure    - at spark [Pa]
   * @param lambda      - of the fresh charge [-]
   * @param residual    - mass fraction of burned gas [-]
   */
  evaluate(speed: number, temperature: number, pressure: number, lambda: number, residual: number): void {
    const { reference } = this;
    const flame = this.#flameSpeed(temperature, pressure, lambda, residual) / this.#referenceFlameSpeed;
    const factor =
      (speed / reference.referenceSpeed) ** reference.speedExponent * flame ** -reference.flameSpeedExponent;
    this.delay = reference.delay * factor;
    this.duration = reference.duration * factor;
  }

  #flameSpeed(temperature: number, pressure: number, lambda: number, residual: number): number {
    const burnedMoles = residual * this.molarMassRatio;
    return flameSpeed(this.flame, temperature, pressure, lambda, burnedMoles / (1 - residual + burnedMoles));
  }
}
