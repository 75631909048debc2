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
    this.energy = this.#bicubic(at, t, x);
    this.heat = this.#slope(at, t, x) / STEP;
    this.gasConstant = this.#bicubic(at + 4, t, x);
  }

  #bicubic(at: number, t: number, x: number): number {
    const c = this.#table;
    const [h0, h1, g0, g1] = [
      (1 + 2 * t) * (1 - t) * (1 - t),
      t * t * (3 - 2 * t),
      t * (1 - t) * (1 - t),
      t * t * (t - 1),
    ];
    return this.#across(c, at, h0, h1, g0, g1, x);
  }

  #slope(at: number, t: number, x: number): number {
    const c = this.#table;
    const h1 = 6 * t * (1 - t);
    return this.#across(c, at, -h1, h1, (1 - t) * (1 - 3 * t), t * (3 * t - 2), x);
  }

  #across(c: Float64Array, at: number, h0: number, h1: number, g0: number, g1: number, x: number): number {
    const up = at + COLUMNS * STRIDE;
    const left = h0 * c[at] + h1 * c[up] + g0 * c[at + 1] + g1 * c[up + 1];
    const leftSlope = h0 * c[at + 2] + h1 * c[up + 2] + g0 * c[at + 3] + g1 * c[up + 3];
    const r = at + STRIDE;
    const u = up + STRIDE;
    const right = h0 * c[r] + h1 * c[u] + g0 * c[r + 1] + g1 * c[u + 1];
    const rightSlope = h0 * c[r + 2] + h1 * c[u + 2] + g0 * c[r + 3] + g1 * c[u + 3];
    const y = 1 - x;
    return (
      (1 + 2 * x) * y * y * left +
      x * x * (3 - 2 * x) * right +
      x * y * y * leftSlope +
      x * x * (x - 1) * rightSlope
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
