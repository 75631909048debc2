import { clearancePaths } from '../../blower/rotors/clearances.ts';
import { warmGaps } from '../../blower/slip/warm-gap.ts';
import type { SlipByPath } from '../../engine.ts';
import { PathSlip } from '../flows/path-slip.ts';
import type { Parts } from './flow-elements.ts';

/**
 * Smoothing of the clearance flow, which is there for no flow at all [Pa]: far below the pressure rise of the slowest crank,
 * some 50 Pa, so that slip at cranking speed is not hidden.
 */
export const SLIP_SMOOTHING = 2;

/** Slip by tips, mesh and ends of all blowers, each as long as its edges are. */
export function pathSlipOf({ model, gas, edges }: Parts, slip: SlipByPath): PathSlip {
  const { blower, ambient } = model.engine;
  const { rotors, tipDiameter, helixAngle, count, clearanceDischarge } = blower;
  const widths = clearancePaths(
    { tip: 1, mesh: 1, end: 1 },
    tipDiameter,
    rotors.length,
    helixAngle,
    rotors.centreDistance,
  );
  const gaps = warmGaps(blower, slip.filmShare, slip.closeWithHeat, ambient.temperature);
  const paths = [
    { width: count * widths.tips, land: slip.lands.tip, gap: gaps.tip },
    { width: count * widths.mesh, land: slip.lands.mesh, gap: gaps.mesh },
    { width: count * widths.ends, land: slip.lands.end, gap: gaps.end },
  ];
  return new PathSlip(
    model.network.through.slip,
    paths.filter(({ gap }) => gap.cold > 0),
    clearanceDischarge,
    SLIP_SMOOTHING,
    gas,
    edges,
  );
}
