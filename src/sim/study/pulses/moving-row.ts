import type { Model } from '../../cycle/model.ts';
import type { RodSystem } from '../../geometry/crank-train.ts';
import type { RodAccelerations } from '../../geometry/rod-accelerations.ts';
import { rodAccelerations } from '../../geometry/rod-accelerations.ts';
import { dot } from '../../geometry/vectors.ts';

/** One cylinder's rod as two mass points [kg]. */
export interface MovingRod {
  /** Place in the flat list of cylinders. */
  readonly index: number;
  readonly rods: RodSystem;
  /** The master rod of a row with knuckle pins. */
  readonly isMaster: boolean;
  /** Piston and upper share of the rod, at the gudgeon pin. */
  readonly upperMass: number;
  /** At the rod's lower pin: crank pin for a master or plain rod, knuckle pin for the others. */
  readonly lowerMass: number;
}

/** A row of rods on one crank pin. */
export interface MovingRow {
  readonly rods: readonly MovingRod[];
  /** The master rod among them; null where all are plain. */
  readonly master: MovingRod | null;
  readonly crankRadius: number;
  readonly throwMass: number;
  /** Pin angle in the frame of the row = crank angle + this [rad]. */
  readonly pinOffset: number;
  /** The row's frame in the engine's [rad]. */
  readonly stagger: number;
  /** Along the crank from the middle of the rows [m]. */
  readonly along: number;
}

/**
 * Rods as two mass points each, of the rod's mass and centre of mass. Its moment of inertia about that centre comes out as that of
 * the two points, m a b, some ten per cent above a real rod's: it touches only the tilting of the rod.
 *
 * Source: Biezeno & Grammel, Engineering Dynamics, vol. 4, 1954, ch. 13 (equivalent mass points).
 */
export function movingRows({ engine, geometry }: Pick<Model, 'engine' | 'geometry'>): readonly MovingRow[] {
  const { masses, train } = engine;
  const plain = train.knuckleRadius === 0;
  const middle = (train.rows.length - 1) / 2;
  return train.rows.map((row, rowIndex) => {
    const cylinders = geometry.cylinders.filter((cylinder) => cylinder.rowIndex === rowIndex);
    const rods = cylinders.map(({ index, motion, isMaster }): MovingRod => {
      const master = isMaster && !plain;
      const mass = master ? masses.masterRod : masses.rod;
      const upperShare = master ? masses.masterRodCentre / train.masterRodLength : masses.rodUpperShare;
      return {
        index,
        rods: motion.rods,
        isMaster: master,
        upperMass: masses.piston + mass * upperShare,
        lowerMass: mass * (1 - upperShare),
      };
    });
    return {
      rods,
      master: rods.find(({ isMaster }) => isMaster) ?? null,
      crankRadius: train.crankRadius,
      throwMass: masses.throw,
      pinOffset: cylinders[0]!.pinOffset,
      stagger: row.staggerAngle,
      along: (rowIndex - middle) * masses.rowSpacing,
    };
  });
}

/** Where all rods of a row stand. @param angle - of the crank [rad] */
export const rodsAt = (row: MovingRow, angle: number): readonly RodAccelerations[] =>
  row.rods.map(({ rods }) => rodAccelerations(rods, angle + row.pinOffset));

/**
 * Half the moment of inertia that the moving masses of a row have at the crank, and half its slope by the crank angle.
 *
 *   E = omega^2 e,   e = 1/2 sum m q'^2;     torque of the inertia forces = -omega^2 e',   e' = sum m q'.q''
 *
 * q' and q'' of every mass point by the crank angle; the throw included. Constant speed.
 * @returns e [kg m^2], e' [kg m^2/rad]
 */
export function motionOf(
  row: MovingRow,
  at: readonly RodAccelerations[],
): { readonly inertia: number; readonly slope: number } {
  let inertia = 0.5 * row.throwMass * row.crankRadius ** 2;
  let slope = 0;
  row.rods.forEach(({ upperMass, lowerMass }, j) => {
    const { gudgeonPin, lowerPin } = at[j]!;
    inertia +=
      0.5 *
      (upperMass * dot(gudgeonPin.rate, gudgeonPin.rate) + lowerMass * dot(lowerPin.rate, lowerPin.rate));
    slope +=
      upperMass * dot(gudgeonPin.rate, gudgeonPin.bend) + lowerMass * dot(lowerPin.rate, lowerPin.bend);
  });
  return { inertia, slope };
}
