import { orificeMassFlow } from '../../exchange/orifice.ts';
import { AIR } from '../../gas/air.ts';
import { heatRatio } from '../../gas/polynomial.ts';
import { findRoot } from '../../numerics/find-root.ts';
import type { Outcome } from '../../outcome.ts';
import { failure, success } from '../../outcome.ts';
import { TURN } from '../../units.ts';

/** A blower turned by hand or drill against a closed outlet, its inlet open to the air. */
export interface LeakTest {
  /** Displacement of the blower for a turn of its rotors [m^3]. */
  readonly displacement: number;
  /** Of the rotors [rad/s]. */
  readonly rotorSpeed: number;
  /** What the gauge holds, absolute, and the air at the inlet [Pa]. */
  readonly heldPressure: number;
  readonly inletPressure: number;
  readonly inletTemperature: number;
  /** Of the gas that leaks back [K]: that of the inlet in a short test. */
  readonly gasTemperature: number;
}

/** What a stream through one square metre of clearance would be [kg/(s m^2)]. */
function throughUnitArea(pressure: number, temperature: number, back: number): number {
  return orificeMassFlow(1, pressure, temperature, back, heatRatio(AIR, temperature), AIR.gasConstant);
}

/** Displaced mass [kg/s]: V n / turn at inlet density. */
const displaced = ({ displacement, rotorSpeed, inletPressure, inletTemperature }: LeakTest): number =>
  (displacement * rotorSpeed * inletPressure) / (TURN * AIR.gasConstant * inletTemperature);

/**
 * Effective clearance area that a leak test shows: all that is displaced goes back through it.
 *
 *   Cd A = (V n p_1 / (R T_1)) / mdot_orifice(1 m^2, p_2, T, p_1)
 *
 * @returns discharge coefficient times area of one blower [m^2], or what is wrong with the reading
 *
 * Valid: dry air; nothing else leaks, which soap water on the pipework shows. The gas warms as it goes round: read early.
 * Source: continuity; orifice as in exchange/orifice.ts.
 */
export function clearanceFromTest(test: LeakTest): Outcome<number> {
  const wrong = (field: keyof LeakTest, allowed: string) =>
    failure([{ path: field, message: `is ${test[field]}; allowed: ${allowed}` }]);
  if (!(test.rotorSpeed > 0)) return wrong('rotorSpeed', 'above 0');
  if (!(test.displacement > 0)) return wrong('displacement', 'above 0');
  if (!(test.gasTemperature >= 200 && test.gasTemperature <= 800))
    return wrong('gasTemperature', '200 to 800 K');
  if (!(test.heldPressure > test.inletPressure))
    return wrong(
      'heldPressure',
      `above the inlet's ${test.inletPressure} Pa: a blower that holds nothing tells nothing`,
    );
  return success(
    displaced(test) / throughUnitArea(test.heldPressure, test.gasTemperature, test.inletPressure),
  );
}

/**
 * Pressure that a blower of known clearance holds against a closed outlet [Pa]; the inverse of `clearanceFromTest`.
 *
 * @param effectiveArea - discharge coefficient times area, > 0 [m^2]
 */
export function heldPressure(effectiveArea: number, test: Omit<LeakTest, 'heldPressure'>): number {
  const flow = displaced({ ...test, heldPressure: test.inletPressure });
  const excess = (p: number) =>
    effectiveArea * throughUnitArea(p, test.gasTemperature, test.inletPressure) - flow;
  let high = 2 * test.inletPressure;
  while (excess(high) < 0) high *= 2;
  return findRoot(excess, test.inletPressure, high, 1e-3);
}
