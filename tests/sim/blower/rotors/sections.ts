import { largestTipRadius } from '../../../../src/sim/blower/rotors/section-fault.ts';
import { ROTOR_PROFILES } from '../../../../src/sim/blower/rotors/profile.ts';
import type { RotorSection } from '../../../../src/sim/blower/rotors/profile.ts';

export const LOBES = [2, 3, 4] as const;

/** A section whose tip stands at a share of the way from the pitch circle to the largest that meshes; pitch radius 20 mm. */
export function sectionAt(profile: RotorSection['profile'], lobes: number, share: number): RotorSection {
  const pitchRadius = 0.02;
  const most = largestTipRadius({ profile, lobes, tipRadius: pitchRadius, pitchRadius });
  return { profile, lobes, pitchRadius, tipRadius: pitchRadius + share * (most - pitchRadius) };
}

/** Both profiles, 2 to 4 lobes, from stubby to the longest lobe that meshes. */
export const SECTIONS: readonly RotorSection[] = ROTOR_PROFILES.flatMap((profile) =>
  LOBES.flatMap((lobes) => [0.5, 0.9, 1].map((share) => sectionAt(profile, lobes, share))),
);

export const nameOf = ({ profile, lobes, tipRadius, pitchRadius }: RotorSection): string =>
  `${profile}, ${lobes} lobes, tip ${(tipRadius / pitchRadius).toFixed(3)} of pitch`;
