import type { CrankTrain, Row, RowCylinder } from '../../sim/engine.ts';
import { TURN } from '../../sim/units.ts';
import { cylinderName } from '../cylinder-name.ts';
import type { Si } from './si.ts';

export function train({ crank, fuel }: Si): CrankTrain {
  const corrections = new Map(crank.corrections.map((each) => [each.cylinder, each]));
  const rows = crank.rows.map((row, rowIndex): Row => {
    const axes = row.axes ?? Array.from({ length: row.cylinders }, (_, j) => (TURN * j) / row.cylinders);
    const master = row.master - 1;
    const cylinders = axes.map((axisAngle, j): RowCylinder => {
      const own = corrections.get(cylinderName(rowIndex, j));
      return {
        axisAngle,
        knuckleAngle: own?.knuckle ?? axisAngle - (axes[master] ?? 0),
        knuckleRadius: own?.knuckleRadius ?? null,
        rodLength: own?.rod ?? crank.masterRod - crank.knuckleRadius,
        barrelOffset: own?.barrel ?? 0,
        headVolume: own?.head ?? 0,
        exhaustTrim: own?.exhaustTrim ?? 0,
        transferTrim: own?.transferTrim ?? 0,
        sparkAdvance: own?.spark ?? fuel.spark,
        collector: (own?.collector ?? row.collector) - 1,
      };
    });
    return { throwAngle: row.throw, staggerAngle: row.stagger, master, cylinders };
  });
  return {
    crankRadius: crank.stroke / 2,
    masterRodLength: crank.masterRod,
    knuckleRadius: crank.knuckleRadius,
    sparkFrom: fuel.sparkFrom,
    rows,
  };
}
