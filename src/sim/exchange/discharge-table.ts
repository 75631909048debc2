import { intervalOf } from '../numerics/interpolate.ts';

/** Discharge coefficients over opening and pressure ratio, for both directions of the flow. */
export interface DischargeCoefficients {
  /** Open area over full area, rising from 0 to 1 [-]. */
  readonly openings: readonly number[];
  /** Pressure before over pressure behind, rising from 1 [-]. */
  readonly pressureRatios: readonly number[];
  /** Opening by opening, for each all pressure ratios [-]. */
  readonly forward: readonly number[];
  readonly backward: readonly number[];
}

/**
 * Discharge coefficient of one direction, bilinear between its places:
 *
 *   Cd = (1-s) [ (1-t) C_ij + t C_i,j+1 ] + s [ (1-t) C_i+1,j + t C_i+1,j+1 ]
 *
 * s, t: share of the way between two openings, two pressure ratios [-].
 *
 * Valid: as far as what was measured. Beyond the last pressure ratio the last column holds; results/beyond-tables.ts says so.
 * Numerics: continuous, with kinks at the places. Nothing is allocated.
 * Source of the form: Annand & Roe, Gas Flow in the Internal Combustion Engine, 1974; Blair, Design and Simulation of Two-Stroke
 * Engines, 1996, app. to ch. 2 (coefficients over area ratio and pressure ratio, each direction).
 */
export class DischargeTable {
  private readonly openings: Float64Array;
  private readonly ratios: Float64Array;
  private readonly coefficients: Float64Array;

  constructor({ openings, pressureRatios }: DischargeCoefficients, coefficients: readonly number[]) {
    if (coefficients.length !== openings.length * pressureRatios.length)
      throw new RangeError(
        `${openings.length} openings and ${pressureRatios.length} pressure ratios need their product of coefficients, not ${coefficients.length}`,
      );
    this.openings = Float64Array.from(openings);
    this.ratios = Float64Array.from(pressureRatios);
    this.coefficients = Float64Array.from(coefficients);
  }

  /** @param opening - 0 to 1 [-]; @param ratio - before over behind, >= 1 [-] */
  at(opening: number, ratio: number): number {
    const { openings, ratios, coefficients } = this;
    const columns = ratios.length;
    const i = intervalOf(openings, opening);
    const s = Math.min(1, (opening - openings[i]) / (openings[i + 1] - openings[i]));
    const row = i * columns;
    if (ratio >= ratios[columns - 1]) {
      const last = row + columns - 1;
      return coefficients[last] + s * (coefficients[last + columns] - coefficients[last]);
    }
    const j = intervalOf(ratios, ratio);
    const t = (ratio - ratios[j]) / (ratios[j + 1] - ratios[j]);
    const at = row + j;
    const here = coefficients[at] + t * (coefficients[at + 1] - coefficients[at]);
    const next =
      coefficients[at + columns] + t * (coefficients[at + columns + 1] - coefficients[at + columns]);
    return here + s * (next - here);
  }
}

/** Wide open and without a pressure difference: what sizes and scales go by. */
export const nominal = ({ openings, pressureRatios, forward, backward }: DischargeCoefficients) => {
  const at = (openings.length - 1) * pressureRatios.length;
  return { forward: forward[at], backward: backward[at] };
};
