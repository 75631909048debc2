import { cylinderName } from '../design/cylinder-name.ts';
import type { EngineGeometry } from '../sim/geometry/cylinder-geometry.ts';

/** Names of the cylinders as the page shows them: the number alone where there is one row, `B3` where there are more. */
export function cylinderLabels({ cylinders }: Pick<EngineGeometry, 'cylinders'>): string[] {
  const several = cylinders.some((cylinder) => cylinder.rowIndex > 0);
  return cylinders.map(({ rowIndex, cylinderIndex, number }) =>
    several ? cylinderName(rowIndex, cylinderIndex) : `${number}`,
  );
}
