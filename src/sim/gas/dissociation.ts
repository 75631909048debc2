import { MOLAR_GAS_CONSTANT } from '../constants.ts';
import type { Constituent } from './constituent.ts';
import { enthalpyOf, equilibrium, molesOf } from './equilibrium.ts';
import { internalEnergy } from './polynomial.ts';

/** Below this burned gas is frozen; from the second on it is in full equilibrium [K]. */
export const FROZEN_BELOW = 1500;
const EQUILIBRIUM_FROM = 1800;
const STEP = 50;
const ROWS = 43;
/** Logarithms of density: 0.05 to 60 kg/m^3. */
const LEAST = Math.log(0.05);
const SPACING = (Math.log(60) - LEAST) / 11;
const COLUMNS = 12;
/** Numbers at a point of the table: value, its differences along T, along ln rho, and along both; of energy, then of gas constant. */
const STRIDE = 8;

/**
 * What equilibrium adds to burned gas of fixed composition, over temperature and density, tabulated once.
 *
 *   energy = s(T) (u_eq(T, rho) - u(T)),   gasConstant = s(T) (R sum n_i - R_frozen),   s rising from 0 at 1500 K to 1 at 1800 K
 *
 * A function of T and rho alone, both known from a volume's masses, energy and size, so energy is conserved whatever it says.
 * The burned gas stands as if alone at the density of all gas; a zone hotter than the mean would hold more dissociated gas.
 *
 * Valid: 1500-3600 K, 0.05-60 kg/m^3; outside these densities held. Numerics: bicubic, slopes from central differences, so both slopes are
 * continuous; true to 0.5 % of what is added. `evaluate` allocates nothing.
 * Source: equilibrium.ts.
 */
export class Dissociation {
  /** As last evaluated: [J/kg], its slope by T [J/(kg K)], and [J/(kg K)]. */
  energy = 0;
  heat = 0;
  gasConstant = 0;
  readonly #table = new Float64Array(ROWS * COLUMNS * STRIDE);

  /**
   * @param products - the burned gas, frozen
   * @param index    - its place in the constituents
   */
  constructor(
    products: Constituent,
    readonly index: number,
  ) {
    const table = this.#table;
    for (let row = 1; row < ROWS; row++)
      for (let column = 0; column < COLUMNS; column++) {
        const T = FROZEN_BELOW + row * STEP;
        const amounts = equilibrium(products.elements, T, Math.exp(LEAST + column * SPACING));
        const R = MOLAR_GAS_CONSTANT * molesOf(amounts);
        const x = Math.min(1, (T - FROZEN_BELOW) / (EQUILIBRIUM_FROM - FROZEN_BELOW));
        const share = x * x * (3 - 2 * x);
        const at = (row * COLUMNS + column) * STRIDE;
        table[at] = share * (enthalpyOf(amounts, T) - R * T - internalEnergy(products, T));
        table[at + 4] = share * (R - products.gasConstant);
      }
    for (const of of [0, 4]) {
      this.#differences(of, of + 1, ROWS, COLUMNS, COLUMNS);
      this.#differences(of, of + 2, COLUMNS, ROWS, 1);
      this.#differences(of + 1, of + 3, COLUMNS, ROWS, 1);
    }
    // Nothing is added below: the first row begins without slope.
    for (let column = 0; column < COLUMNS; column++)
      for (const k of [1, 3, 5, 7]) table[column * STRIDE + k] = 0;
  }

  /** Central differences of one number along rows or columns, one-sided at the ends, per step of the table. */
  #differences(from: number, to: number, count: number, lines: number, stride: number): void {
    const table = this.#table;
    const other = stride === 1 ? COLUMNS : 1;
    for (let line = 0; line < lines; line++)
      for (let i = 0; i < count; i++) {
        const at = (k: number) => (line * other + k * stride) * STRIDE;
        const [a, b] = [Math.max(0, i - 1), Math.min(count - 1, i + 1)];
        table[at(i) + to] = (table[at(b) + from] - table[at(a) + from]) / (b - a);
      }
  }

  /**
   * @param T          - [K]
   * @param lnDensity  - natural logarithm of the density [kg/m^3]
   */
  evaluate(T: number, lnDensity: number): void {
    const along = (T - FROZEN_BELOW) / STEP;
    if (!(along > 0)) {
      this.energy = 0;
      this.heat = 0;
      this.gasConstant = 0;
      return;
    }
    const row = Math.min(ROWS - 2, Math.floor(along));
    const t = along - row;
    const across = Math.min(COLUMNS - 1, Math.max(0, (lnDensity - LEAST) / SPACING));
    const column = Math.min(COLUMNS - 2, Math.floor(across));
    const at = (row * COLUMNS + column) * STRIDE;
    const x = across - column;
    // Weights of the values at both rows and of their differences, for the value and for its slope along T.
    const u = 1 - t;
    const v0 = (1 + 2 * t) * u * u;
    const v1 = t * t * (3 - 2 * t);
    const d0 = t * u * u;
    const d1 = -t * t * u;
    const s1 = 6 * t * u;
    this.energy = this.#sum(at, v0, v1, d0, d1, x);
    this.heat = this.#sum(at, -s1, s1, u * (1 - 3 * t), t * (3 * t - 2), x) / STEP;
    this.gasConstant = this.#sum(at + 4, v0, v1, d0, d1, x);
  }

  /** Weighs two rows by what is given, and two columns by the cubic between them. */
  #sum(at: number, v0: number, v1: number, d0: number, d1: number, x: number): number {
    const c = this.#table;
    const up = at + COLUMNS * STRIDE;
    const left = v0 * c[at] + v1 * c[up] + d0 * c[at + 1] + d1 * c[up + 1];
    const leftSlope = v0 * c[at + 2] + v1 * c[up + 2] + d0 * c[at + 3] + d1 * c[up + 3];
    const r = at + STRIDE;
    const q = up + STRIDE;
    const right = v0 * c[r] + v1 * c[q] + d0 * c[r + 1] + d1 * c[q + 1];
    const rightSlope = v0 * c[r + 2] + v1 * c[q + 2] + d0 * c[r + 3] + d1 * c[q + 3];
    const y = 1 - x;
    return (
      (1 + 2 * x) * y * y * left +
      x * x * (3 - 2 * x) * right +
      x * y * y * leftSlope -
      x * x * y * rightSlope
    );
  }
}

/** Tables remembered, by the atoms and frozen energy of their burned gas: a table takes 30 ms. */
const MOST = 4;
const remembered = new Map<string, Dissociation>();

/**
 * As `new Dissociation`, but one that was worked out lately is not worked out again. What it was last asked is read at once, so points that
 * are solved by turns may share it.
 */
export function dissociationOf(products: Constituent, index: number): Dissociation {
  const key = JSON.stringify([products.elements, products.gasConstant, products.pieces, index]);
  const known = remembered.get(key);
  if (known) return known;
  const made = new Dissociation(products, index);
  if (remembered.size >= MOST) remembered.delete([...remembered.keys()][0]!);
  remembered.set(key, made);
  return made;
}
