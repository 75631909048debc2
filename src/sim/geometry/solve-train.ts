import type { CrankTrain, Row } from '../engine.ts';
import { PistonMotion } from './crank-train.ts';
import { deadCentres, largestOffAxis } from './dead-centres.ts';
import type { DeadCentres } from './dead-centres.ts';
import { LENGTH, cylinderName, show } from './fault-list.ts';
import type { FaultList } from './fault-list.ts';

/** One piston's motion with its dead centres, and where it sits in the engine. */
export interface TrainCylinder extends DeadCentres {
  readonly rowIndex: number;
  readonly cylinderIndex: number;
  readonly motion: PistonMotion;
  /** Pin angle in the frame of the row = crank angle + this [rad]. */
  readonly pinOffset: number;
}

/** The rods of one cylinder of a row. The master hangs on the crank pin itself. */
export function pistonMotion(train: CrankTrain, row: Row, cylinderIndex: number): PistonMotion {
  const cylinder = row.cylinders[cylinderIndex]!;
  const isMaster = cylinderIndex === row.master;
  return new PistonMotion({
    crankRadius: train.crankRadius,
    masterRodLength: train.masterRodLength,
    masterAxis: row.cylinders[row.master]!.axisAngle,
    axisAngle: cylinder.axisAngle,
    knuckleRadius: isMaster ? 0 : (cylinder.knuckleRadius ?? train.knuckleRadius),
    knuckleAngle: isMaster ? 0 : cylinder.knuckleAngle,
    rodLength: isMaster ? train.masterRodLength : cylinder.rodLength,
  });
}

/**
 * All pistons of the engine, row by row; null, with faults told, if rods do not go round.
 *
 *   pin angle of a row = crank angle + throw - stagger + offset
 *
 * with the one offset that puts crank angle 0 at the true top dead centre of cylinder 1 of row A, master or not.
 */
export function solveTrain(train: CrankTrain, list: FaultList): readonly TrainCylinder[] | null {
  const before = list.length;
  const solved = train.rows.flatMap((row, rowIndex) =>
    row.cylinders.map((_, cylinderIndex) => {
      const motion = pistonMotion(train, row, cylinderIndex);
      const path = `train.rows[${rowIndex}].cylinders[${cylinderIndex}]`;
      const name = cylinderName(rowIndex, cylinderIndex);
      const swing = largestOffAxis(motion);
      if (!(motion.rods.rodLength > swing)) {
        list.add(
          `${path}.rodLength`,
          `the rod of ${name} is ${show(motion.rods.rodLength, LENGTH)} and cannot go round: its lower pin swings ` +
            `${show(swing, LENGTH)} off the axis, and the rod must be longer than that`,
        );
        return null;
      }
      const centres = deadCentres(motion);
      if (centres.reversals !== 2) {
        list.add(
          `${path}.rodLength`,
          `the piston of ${name} (rod ${show(motion.rods.rodLength, LENGTH)}) turns round ${centres.reversals} times ` +
            'in a turn of the crank: rods and knuckle pins must let it turn round 2 times',
        );
        return null;
      }
      return { rowIndex, cylinderIndex, motion, ...centres };
    }),
  );
  if (list.length > before) return null;
  const rowA = train.rows[0]!;
  const offset = solved[0]!.topPin - (rowA.throwAngle - rowA.staggerAngle);
  return solved.map((cylinder) => {
    const row = train.rows[cylinder!.rowIndex]!;
    return { ...cylinder!, pinOffset: row.throwAngle - row.staggerAngle + offset };
  });
}
