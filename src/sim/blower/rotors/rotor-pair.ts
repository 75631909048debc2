import type { Blower } from '../../engine.ts';
import type { Outcome } from '../../outcome.ts';
import { failure, success } from '../../outcome.ts';
import { helixAttenuation } from '../roots-ripple.ts';
import { clearancePaths } from './clearances.ts';
import type { ClearancePaths } from './clearances.ts';
import { displacedRipple, displacedVolume } from './displaced.ts';
import type { Ripple } from './displaced.ts';
import { ROTOR_MATERIALS } from './materials.ts';
import { meshGap } from './mesh-gap.ts';
import type { MeshGap } from './mesh-gap.ts';
import { rotorOutline } from './outline.ts';
import { measurePolygon } from './polygon.ts';
import type { RotorSection, Spot } from './profile.ts';
import { sectionFault } from './section-fault.ts';

/** Largest departure of a drawn outline from the equations [m]: under the 0.005 mm that is promised, rounding included. */
export const DRAWN_CHORD_ERROR = 4e-6;
/** Of the outline whose areas and gaps are measured. */
const FINE = 0.2e-6;
/** How far the gap may stray from the stated one before it counts as a fault: measuring on polygons takes its part [m]. */
const GAP_TOLERANCE = 1e-6;

/** Everything about a pair of equal rotors that can be known before metal is cut. */
export interface RotorPair {
  /** Section that would touch without a gap, and how far the finished one stands back from it [m]. */
  readonly section: RotorSection;
  readonly inset: number;
  /** Finished outline for drawing: anticlockwise, a lobe along +x [m]. */
  readonly outline: readonly Spot[];
  /** Finished section, bore not taken off [m^2]; its share of the tip circle [-]. */
  readonly sectionArea: number;
  readonly filled: number;
  readonly rootDiameter: number;
  /** What goes round between finished rotors and their tip circles in a turn of the pair [m^3]. */
  readonly sweptVolume: number;
  /** Of it, what the gap of the mesh carries back in a turn: both rotors' skins [m^3]. */
  readonly carriedBack: number;
  /** Of rotors of this tip diameter that touch: by this the model goes where no displacement is typed [m^3]. */
  readonly displacement: number;
  readonly ripple: Ripple;
  /** Depth that the twist leaves [-]. */
  readonly twistedRipple: number;
  readonly clearances: ClearancePaths;
  readonly gap: MeshGap;
  /** Angle of the twist on the tip cylinder, from the axis [rad]. */
  readonly leadAngle: number;
  /** One rotor, bore taken off [kg], [kg m^2]. */
  readonly mass: number;
  readonly inertia: number;
}

/** The ideal section of a blower's rotors: half the mesh gap outside the finished one. */
export function idealSection({ tipDiameter, lobes, rotors }: Blower): RotorSection {
  return {
    profile: rotors.profile,
    lobes,
    tipRadius: (tipDiameter + rotors.gaps.mesh) / 2,
    pitchRadius: rotors.centreDistance / 2,
  };
}

/**
 * Works out a blower's rotors, or says where they cannot mesh.
 *
 *   swept = 2 (pi R^2 - A) L,   carried back = 2 (A_0 - A) L,   m = density (A - bore) L,   J = density (I - bore) L
 *
 * R finished tip radius, A finished and A_0 ideal section, I its polar moment; in twisted rotors every slice is the same section.
 * Carried back: the skin of half the gap on either rotor passes the mesh once a turn (Couette flow between equal rolling walls).
 */
export function rotorPair(blower: Blower): Outcome<RotorPair> {
  const { tipDiameter, lobes, helixAngle, rotors } = blower;
  const { gaps, length, centreDistance, bore } = rotors;
  const section = idealSection(blower);
  const inset = gaps.mesh / 2;
  const trouble = sectionFault(section);
  if (trouble) {
    const [least, most] = trouble.allowed.map((radius) => ((2 * radius - gaps.mesh) * 1e3).toFixed(3));
    const message =
      `the rotors cannot mesh: ${trouble.reason}. Tip diameter is ${(tipDiameter * 1e3).toFixed(3)} mm; ` +
      `at axes ${(centreDistance * 1e3).toFixed(3)} mm apart with this mesh gap, above ${least} and up to ${most} mm can`;
    return failure([{ path: 'blower.tipDiameter', message }]);
  }
  const rootDiameter = 2 * centreDistance - tipDiameter - 2 * gaps.mesh;
  if (bore >= rootDiameter) {
    const message = `the bore of ${(bore * 1e3).toFixed(2)} mm leaves no metal: the root is ${(rootDiameter * 1e3).toFixed(2)} mm across`;
    return failure([{ path: 'blower.rotors.bore', message }]);
  }
  const fine = rotorOutline(section, inset, FINE);
  const gap = meshGap(fine, lobes, centreDistance);
  const tolerance = Math.max(GAP_TOLERANCE, 0.02 * gaps.mesh);
  if (gap.least < gaps.mesh - tolerance || gap.widest > gaps.mesh + tolerance) {
    const found = `${(gap.least * 1e3).toFixed(4)} to ${(gap.widest * 1e3).toFixed(4)} mm`;
    const where = `${(gap.at.radius * 1e3).toFixed(2)} mm from the axis with the rotor at ${((gap.at.rotorAngle * 180) / Math.PI).toFixed(1)}°`;
    const message = `the rotors cannot mesh: the gap between them is ${found} instead of ${(gaps.mesh * 1e3).toFixed(4)} mm, narrowest ${where}`;
    return failure([{ path: 'blower.rotors.gaps.mesh', message }]);
  }
  const finished = measurePolygon(fine);
  const ideal = measurePolygon(rotorOutline(section, 0, FINE));
  const { density } = ROTOR_MATERIALS[rotors.material];
  const ripple = displacedRipple(section);
  const tipCircle = (Math.PI / 4) * tipDiameter ** 2;
  return success({
    section,
    inset,
    outline: rotorOutline(section, inset, DRAWN_CHORD_ERROR),
    sectionArea: finished.area,
    filled: finished.area / tipCircle,
    rootDiameter,
    sweptVolume: 2 * (tipCircle - finished.area) * length,
    carriedBack: 2 * (ideal.area - finished.area) * length,
    displacement: displacedVolume({ ...section, tipRadius: tipDiameter / 2 }, length),
    ripple,
    twistedRipple: ripple.depth * Math.abs(helixAttenuation(lobes, helixAngle)),
    clearances: clearancePaths(gaps, tipDiameter, length, helixAngle, centreDistance),
    gap,
    leadAngle: Math.atan2(helixAngle * tipDiameter, 2 * length),
    mass: density * (finished.area - (Math.PI / 4) * bore ** 2) * length,
    inertia: density * (finished.polarMoment - (Math.PI / 32) * bore ** 4) * length,
  });
}
