import { formatNumber } from '../format-quantity.ts';
import type { Design } from '../schema/design.ts';
import { usualCrownThickness, usualPistonLength } from '../usual-sizes.ts';
import { fault } from './cross-fault.ts';
import type { CrossFault } from './cross-fault.ts';

export function* masterRodCentre({ crank }: Design): Generator<CrossFault> {
  const { masterRodCentre_mm: centre } = crank.masses;
  if (centre !== undefined && centre > crank.masterRod_mm) {
    yield fault(
      'crank.masses.masterRodCentre_mm',
      `the centre of mass is ${formatNumber(centre)} mm from the crank pin; allowed up to the length of the master rod, ${formatNumber(crank.masterRod_mm)} mm`,
      'crank.masterRod_mm',
    );
  }
}

export function* hollowParts({ cylinder, crank }: Design): Generator<CrossFault> {
  const { bore_mm: bore, piston, barrel } = cylinder;
  const long = (value: number): string => `${formatNumber(value)} mm`;
  if (barrel.mouth_mm !== undefined && barrel.mouth_mm <= bore) {
    yield fault(
      'cylinder.barrel.mouth_mm',
      `the mouth is ${long(barrel.mouth_mm)} across outside; allowed: above the bore, ${long(bore)}`,
      'cylinder.bore_mm',
    );
  }
  if (piston.skirtWall_mm !== undefined && piston.skirtWall_mm >= bore / 2) {
    yield fault(
      'cylinder.piston.skirtWall_mm',
      `the wall of the skirt is ${long(piston.skirtWall_mm)}; allowed: below half the bore, ${long(bore / 2)}`,
      'cylinder.bore_mm',
    );
  }
  const crown = piston.crownThickness_mm ?? usualCrownThickness(bore);
  const length = piston.length_mm ?? usualPistonLength(bore, crank.stroke_mm);
  if (crown >= length) {
    yield fault(
      piston.length_mm === undefined ? 'cylinder.piston.crownThickness_mm' : 'cylinder.piston.length_mm',
      `the crown is ${long(crown)} thick and the piston ${long(length)} long; allowed: a crown thinner than that`,
      'cylinder.piston.crownThickness_mm',
      'cylinder.piston.length_mm',
      'cylinder.bore_mm',
      'crank.stroke_mm',
    );
  }
}
