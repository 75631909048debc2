import type { Load, Masses } from '../../sim/engine.ts';
import type { Si } from './si.ts';

/** Where nothing was weighed: like pistons and rods weigh with the cube of their size. */
export function masses({ crank, cylinder: { bore } }: Si): Masses {
  const { masses: given, knuckleRadius, masterRod } = crank;
  const ofBore = (density: number) => density * bore ** 3;
  const rod = given.rod ?? ofBore(800);
  return {
    piston: given.piston ?? ofBore(1000),
    rod,
    rodUpperShare: given.rodUpperShare ?? (knuckleRadius > 0 ? 0.45 : 0.3),
    masterRod: given.masterRod ?? 2.5 * rod,
    masterRodCentre: given.masterRodCentre ?? 0.2 * masterRod,
    throw: given.throw ?? ofBore(2500),
    balancedShare: given.balancedShare,
    rowSpacing: crank.rowSpacing ?? 1.5 * bore,
  };
}

/** Where nothing was measured: inertias of like parts go with the fifth power of their size. */
export function load({ crank: { load: given }, cylinder: { bore } }: Si): Load {
  return {
    flywheelInertia: given.flywheel ?? 6e3 * bore ** 5,
    inertia: given.inertia ?? 9e4 * bore ** 5,
    gearRatio: given.gearRatio,
    gearPitchDiameter: given.gearPitch ?? 1.5 * bore,
    shaftDiameter: given.shaft ?? 0.5 * bore,
    shockFactor: given.shock,
  };
}
