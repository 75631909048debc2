import { cycloidDisplacement, cycloidRipple } from '../../sim/blower/cycloid-rotors.ts';
import { displacedRipple, displacedVolume } from '../../sim/blower/rotors/displaced.ts';
import { usualPitchRadius } from '../../sim/blower/rotors/profile.ts';
import type { RotorSection } from '../../sim/blower/rotors/profile.ts';
import { sectionFault } from '../../sim/blower/rotors/section-fault.ts';
import type { Si } from './si.ts';

export const centreDistance = (si: Si['blower']): number =>
  si.centreDistance ?? 2 * usualPitchRadius(si.profile, (si.tipDiameter + si.meshGap) / 2, si.lobes);

/** Section of touching rotors of the stated tip diameter; null where it is that of full cycloids, or cannot mesh. */
function otherSection(si: Si['blower']): RotorSection | null {
  if (si.kind !== 'roots' || (si.profile === 'cycloidal' && si.centreDistance === undefined)) return null;
  const tipRadius = si.tipDiameter / 2;
  const pitchRadius =
    si.centreDistance === undefined
      ? usualPitchRadius(si.profile, tipRadius, si.lobes)
      : si.centreDistance / 2;
  const section = { profile: si.profile, lobes: si.lobes, tipRadius, pitchRadius };
  return sectionFault(section) === null ? section : null;
}

export function displacementOf(si: Si['blower']): number {
  const section = otherSection(si);
  return section
    ? displacedVolume(section, si.rotorLength)
    : cycloidDisplacement(si.tipDiameter, si.rotorLength, si.lobes);
}

export function rippleOf(si: Si['blower']): number {
  const section = otherSection(si);
  return section ? displacedRipple(section).depth : cycloidRipple(si.lobes);
}
