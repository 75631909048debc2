import type { Dimensions } from '../sim/fit/dimensions.ts';
import type { InSi } from './in-si.ts';
import type { Design } from './schema/design.ts';
import { usualCrownThickness, usualPistonLength } from './usual-sizes.ts';

/** Sizes that decide whether the engine goes together; where none is given, like engines scale with bore, stroke and rods. */
export function dimensions({ crank, cylinder, wanted }: InSi<Design>): Dimensions {
  const { bore, barrel, piston } = cylinder;
  const { knuckleRadius, masterRod, stroke, rodShapes: rods } = crank;
  const { space } = wanted;
  const flange = barrel.flange ?? 1.45 * bore;
  const knucklePin = rods.knucklePin ?? 0.2 * bore;
  const articulated = knuckleRadius > 0;
  const mostRods = Math.max(...crank.rows.map(({ cylinders }) => cylinders));
  return {
    barrel: {
      base: barrel.base ?? masterRod - stroke / 2,
      flange,
      flangeAlong: barrel.flangeAlong ?? flange,
      mouth: barrel.mouth ?? 1.15 * bore,
      mouthDepth: barrel.mouthDepth ?? 0.1 * bore,
      fins: barrel.fins ?? 1.9 * bore,
      finsFrom: barrel.finsFrom ?? bore,
      head: barrel.head ?? 0.9 * bore,
      headGap: barrel.headGap,
    },
    piston: {
      pinToCrown: piston.pinToCrown ?? 0.6 * bore,
      length: piston.length ?? usualPistonLength(bore, stroke),
      skirtWall: piston.skirtWall ?? 0.05 * bore,
      crownThickness: piston.crownThickness ?? usualCrownThickness(bore),
    },
    rods: {
      bigEnd: rods.bigEnd ?? (articulated ? 2 * knuckleRadius + 2.2 * knucklePin : 0.95 * bore),
      bigEndBore: rods.bigEndBore ?? 0.6 * bore,
      bigEndWidth: rods.bigEndWidth ?? (articulated ? 0.6 : 0.3 * mostRods) * bore,
      web: rods.web ?? 0.4 * bore,
      knucklePin,
      knuckleEye: rods.knuckleEye ?? 0.35 * bore,
      smallEnd: rods.smallEnd ?? 0.42 * bore,
      shankLower: rods.shankLower ?? 0.25 * bore,
      shankUpper: rods.shankUpper ?? 0.22 * bore,
      masterShankLower: rods.masterShankLower ?? 0.35 * bore,
      masterShankUpper: rods.masterShankUpper ?? 0.28 * bore,
    },
    space: {
      diameter: space.diameter ?? null,
      length: space.length ?? null,
      ends: space.ends ?? 4 * bore,
    },
    tolerances: { ...wanted.tolerances },
  };
}
