import { cylinderLabels } from '../../../src/app/cylinder-labels.ts';
import { UNIT_SETS } from '../../../src/app/units/shown-units.ts';
import type { ShownUnits } from '../../../src/app/units/shown-units.ts';
import { toEngine } from '../../../src/design/to-engine.ts';
import { buildGeometry } from '../../../src/sim/geometry/build-geometry.ts';
import type { SolvedPoint } from '../../../src/sim/index.ts';
import { preset, sound } from '../../design/designs.ts';
import { solveAt, solved } from '../../helpers/engines.ts';

export const [metric, , workshop] = UNIT_SETS as [ShownUnits, ShownUnits, ShownUnits];

/** Lovage 7 as it stands on the page when it opens. */
export const engine = toEngine(preset('lovage-7'));
export const geometry = sound(buildGeometry(engine));
export const labels = cylinderLabels(geometry);

let point: SolvedPoint | null = null;
/** At 6000 rpm, throttle open; solved once for a test file. */
export const lovage = (): SolvedPoint => (point ??= solved(solveAt(engine, 6000)));

export const unsolvedPoint = (speed: number) => ({
  speed,
  throttle: 1,
  converged: false as const,
  reason: 'it does not settle',
  turnsPerPeriod: 1,
  cycles: 90,
  change: 0.1,
});
