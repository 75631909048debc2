import type { Blower } from '../../engine.ts';
import { ROTOR_MATERIALS } from './materials.ts';
import { rotorOutline } from './outline.ts';
import { measurePolygon } from './polygon.ts';
import { idealSection } from './rotor-pair.ts';
import { sectionFault } from './section-fault.ts';

/** Largest departure of the outline measured: its polar moment is true to a thousandth [m]. */
const CHORD_ERROR = 5e-6;

/** Thickness of the disc that stands for an impeller, over its diameter. Typical. */
const WHEEL_THICKNESS = 0.1;

/**
 * Moment of inertia of one rotor about its axis, without its shaft and gears; null for rotors that cannot mesh.
 *
 *   J = density (I - pi/32 bore^4) L          I polar moment of the finished section [m^4]
 *
 * Centrifugal blowers have no second rotor: half of a solid aluminium disc, pi/32 density t D^4, t a tenth of D; an estimate.
 *
 * @returns [kg m^2]
 */
export function rotorInertia(blower: Blower): number | null {
  if (blower.impeller) {
    const disc =
      (Math.PI / 32) * ROTOR_MATERIALS.aluminium.density * WHEEL_THICKNESS * blower.tipDiameter ** 5;
    return disc / 2;
  }
  const section = idealSection(blower);
  if (sectionFault(section) !== null) return null;
  const { gaps, length, bore, material } = blower.rotors;
  const { polarMoment } = measurePolygon(rotorOutline(section, gaps.mesh / 2, CHORD_ERROR));
  return ROTOR_MATERIALS[material].density * (polarMoment - (Math.PI / 32) * bore ** 4) * length;
}
