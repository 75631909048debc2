import type { Scavenging } from '../engine.ts';

/**
 * Purity of the gas that leaves through the exhaust as a function of the purity inside, chi:
 *
 *   perfect mixing            beta = chi
 *   perfect displacement      beta = 0 until chi = 1
 *   displacement then mixing  beta = 0 until chi = x, then beta = chi
 *   table                     straight lines between given points
 *
 * At constant volume and equal temperatures they give SE = 1 - exp(-SR), min(SR, 1), and SR up to x then
 * 1 - (1 - x) exp(x - SR).
 *
 * A jump is spread over `smoothing` below its place with the cubic 3 s^2 - 2 s^3, so that beta is continuous and never
 * exports gas that is not there: beta <= chi everywhere but for tables, and beta(1) = 1.
 *
 * Source: Benson & Brandham, Int. J. Mech. Sci. 11 (1969) 299-312, for displacement followed by mixing.
 */
export class OutflowPurity {
  private readonly jump: number;
  private readonly width: number;
  private readonly inside: Float64Array;
  private readonly leaving: Float64Array;

  constructor(scavenging: Pick<Scavenging, 'law' | 'smoothing'>) {
    const { law } = scavenging;
    this.inside = Float64Array.from(law.kind === 'table' ? law.inside : []);
    this.leaving = Float64Array.from(law.kind === 'table' ? law.leaving : []);
    this.jump =
      law.kind === 'perfect displacement'
        ? 1
        : law.kind === 'displacement then mixing'
          ? law.displacedShare
          : 0;
    this.width = Math.min(scavenging.smoothing, this.jump);
  }

  /** Whether what leaves is always the bulk. */
  get mixesPerfectly(): boolean {
    return this.inside.length === 0 && this.jump === 0;
  }

  /** @param chi - purity inside, 0 to 1 [-]. @returns purity of what leaves [-]. */
  evaluate(chi: number): number {
    if (this.inside.length > 0) return this.fromTable(chi);
    const begin = this.jump - this.width;
    if (chi >= this.jump || this.jump === 0) return chi;
    if (chi <= begin) return 0;
    const s = (chi - begin) / this.width;
    return chi * s * s * (3 - 2 * s);
  }

  private fromTable(chi: number): number {
    const { inside, leaving } = this;
    const last = inside.length - 1;
    if (chi <= inside[0]) return leaving[0];
    if (chi >= inside[last]) return leaving[last];
    let i = 1;
    while (inside[i] < chi) i++;
    const s = (chi - inside[i - 1]) / (inside[i] - inside[i - 1]);
    return leaving[i - 1] + s * (leaving[i] - leaving[i - 1]);
  }
}
