import { withLambda } from '../../cycle/mixture-at.ts';
import type { Model } from '../../cycle/model.ts';
import { AIR_INDEX, FUEL_INDEX, PRODUCTS_INDEX, chargeFractions } from '../../gas/mixture.ts';
import { internalEnergy } from '../../gas/polynomial.ts';
import type { CylinderGeometry } from '../../geometry/cylinder-geometry.ts';
import { findRoot } from '../../numerics/find-root.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { deg, TURN } from '../../units.ts';

/** Exponent of the compression. Typical, 1.30 to 1.37 [-]. */
export const COMPRESSION_EXPONENT = 1.34;
/** Steps from the closing of the windows to top dead centre: coarse against the flat top of the torque. */
const STEP = 1 * deg;

/** One cylinder that burns all at once while its piston still rises. */
export interface EarlyFire {
  /** Place in the flat list of cylinders. */
  readonly index: number;
  /** Before its own top dead centre [rad], where the torque against the rotation is greatest. */
  readonly beforeTdc: number;
  /** After burning, absolute [Pa]. */
  readonly pressure: number;
  /** Against the rotation, positive [N m]. */
  readonly torque: number;
}

/**
 * Kick-back: the charge of one cylinder burns at constant volume before top dead centre, at the angle where that throws the crank back
 * hardest; the worst of all cylinders.
 *
 *   p_c = p_t (V_t/V)^n,   u_products(T_b) = u_charge(T_c),   p_b = p_c R_b T_b / (R_c T_c),   torque = (p_b - p_a) A |dx/dtheta|
 *
 * p_t, V_t where the last window has shut, with what was trapped there; x the piston's travel.
 *
 * Valid: an upper bound for one cylinder: all burns at once and loses nothing; dissociation left out (over by 5 to 10 %). Detonation goes
 * beyond, and several cylinders may fire early together.
 * Source: first law; constant-volume combustion: Heywood, Internal Combustion Engine Fundamentals, 1988, sec. 5.4.
 */
export function earlyFire(
  design: Model,
  point: SolvedPoint,
  exponent = COMPRESSION_EXPONENT,
): EarlyFire | null {
  const model = withLambda(design, point.engine.lambda);
  return model.geometry.cylinders
    .map((cylinder) => worstOf(cylinder, model, point, exponent))
    .reduce<EarlyFire | null>((worst, each) => (each.torque > (worst?.torque ?? 0) ? each : worst), null);
}

function worstOf(
  { index, tdc, travel, clearanceVolume, exhaust, transfer }: CylinderGeometry,
  { set, mixture, geometry, engine }: Model,
  point: SolvedPoint,
  exponent: number,
): EarlyFire {
  const { trappedMass, purity, pressureAtExhaustClosing } = point.cylinders[index]!;
  const fresh = chargeFractions(mixture);
  const shares = set.constituents.map(
    (_, k) => purity * (fresh[k] ?? 0) + (k === PRODUCTS_INDEX ? 1 - purity : 0),
  );
  const products = set.constituents[PRODUCTS_INDEX]!;
  const mixed = (of: (k: number) => number) =>
    [AIR_INDEX, FUEL_INDEX, PRODUCTS_INDEX].reduce((sum, k) => sum + shares[k]! * of(k), 0);
  const R = mixed((k) => set.constituents[k]!.gasConstant);
  const closes = Math.max(exhaust.closesAfterOwnTdc, transfer.closesAfterOwnTdc);
  const volumeAt = (beforeTdc: number) => {
    travel.evaluate(tdc - beforeTdc);
    return clearanceVolume + geometry.boreArea * travel.value;
  };
  const shut = TURN - closes;
  const trappedVolume = volumeAt(shut);
  let worst: EarlyFire = { index, beforeTdc: 0, pressure: engine.ambient.pressure, torque: 0 };
  for (let beforeTdc = STEP; beforeTdc < shut; beforeTdc += STEP) {
    const volume = volumeAt(beforeTdc);
    const lever = geometry.boreArea * Math.abs(travel.slope);
    const before = pressureAtExhaustClosing * (trappedVolume / volume) ** exponent;
    const cold = (before * volume) / (trappedMass * R);
    const energy = mixed((k) => internalEnergy(set.constituents[k]!, cold));
    const hot = findRoot((T) => internalEnergy(products, T) - energy, 0.5 * cold, 6000, 1e-3);
    const pressure = (before * products.gasConstant * hot) / (R * cold);
    const torque = (pressure - engine.ambient.pressure) * lever;
    if (torque > worst.torque) worst = { index, beforeTdc, pressure, torque };
  }
  return worst;
}
