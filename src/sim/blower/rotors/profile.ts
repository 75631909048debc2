import { circularArcProfile } from './circular-arc-profile.ts';
import { cycloidalProfile } from './cycloidal-profile.ts';

/** A place in the section of a rotor, its axis at the origin [m]. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A point of the profile: where it is, which way is out of the metal (unit vector), and where on the pitch circle it is made. */
export interface ProfilePoint extends Spot {
  readonly nx: number;
  readonly ny: number;
  /**
   * Angle at which the normal meets the pitch circle [rad]: the point touches the other rotor when this angle lies on the line
   * of centres (law of gearing).
   */
  readonly pitchAngle: number;
}

/** A smooth piece of the profile, t from 0 to 1. */
export type ProfilePiece = (t: number) => ProfilePoint;

export const ROTOR_PROFILES = ['cycloidal', 'circular arc'] as const;
export type RotorProfile = (typeof ROTOR_PROFILES)[number];

/** What the section of a pair of equal rotors follows from, gaps apart. */
export interface RotorSection {
  readonly profile: RotorProfile;
  /** Of one rotor, 2 or more [-]. */
  readonly lobes: number;
  /** Of rotors that touch without a gap [m]. */
  readonly tipRadius: number;
  /** Half the distance of the axes [m]. */
  readonly pitchRadius: number;
}

/**
 * The profile from the middle of a lobe (angle 0) to the middle of the next hollow (angle pi / lobes): the whole outline is this
 * and its mirror image, `lobes` times.
 *
 * Valid: sections that `sectionFault` accepts.
 */
export function halfPitch(section: RotorSection): readonly ProfilePiece[] {
  return section.profile === 'cycloidal' ? cycloidalProfile(section) : circularArcProfile(section);
}

/** The tip radius of cycloidal rotors without lands, r_p (1 + 1/z): the largest that meshes [m]. */
export const fullCycloidTipRadius = (pitchRadius: number, lobes: number): number =>
  pitchRadius * (1 + 1 / lobes);

/** Cycloidal rotors of a tip radius without lands [m]: what stands in where nothing else is stated. */
export const fullCycloids = (tipRadius: number, lobes: number): RotorSection => ({
  profile: 'cycloidal',
  lobes,
  tipRadius,
  pitchRadius: tipRadius / (1 + 1 / lobes),
});

/**
 * Tip over pitch radius of circular arcs where no distance of the axes is given, for 2, 3, 4 lobes [-]: nine tenths of the way
 * from the pitch circle to where the hollow would be cut away (`largestTipRadius`).
 */
const USUAL_ARC_TIPS: Readonly<Record<number, number>> = { 2: 1.6, 3: 1.43, 4: 1.33 };

/** Pitch radius of a profile whose axes' distance is left open [m]. */
export const usualPitchRadius = (profile: RotorProfile, tipRadius: number, lobes: number): number =>
  profile === 'cycloidal'
    ? fullCycloids(tipRadius, lobes).pitchRadius
    : tipRadius / (USUAL_ARC_TIPS[lobes] ?? 1 + 1 / lobes);
