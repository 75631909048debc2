import { wiesnerSlipFactor } from '../../sim/blower/centrifugal/slip-factor.ts';
import { sectionFault } from '../../sim/blower/rotors/section-fault.ts';
import { deg, mm } from '../../sim/units.ts';
import { formatNumber } from '../format-quantity.ts';
import type { Design } from '../schema/design.ts';
import { usualExitWidth } from '../../sim/blower/centrifugal/usual-wheel.ts';
import { fault } from './cross-fault.ts';
import type { CrossFault } from './cross-fault.ts';

export function* rotors({ blower }: Design): Generator<CrossFault> {
  yield* gaps(blower, 'blower');
  if (blower.secondStage) yield* gaps(blower.secondStage, 'blower.secondStage');
  yield* meshing(blower);
}

type Gaps = Pick<Design['blower'], 'kind' | 'tipDiameter_mm' | 'tipGap_mm' | 'meshGap_mm' | 'endGap_mm'>;

function* gaps(blower: Gaps, path: string): Generator<CrossFault> {
  if (blower.kind === 'centrifugal') return;
  const { tipDiameter_mm: diameter } = blower;
  for (const key of ['tipGap_mm', 'meshGap_mm', 'endGap_mm'] as const) {
    const limit = diameter / 20;
    if (blower[key] > limit) {
      yield fault(
        `${path}.${key}`,
        `the gap is ${formatNumber(blower[key])} mm; allowed up to a twentieth of the tip diameter, ${formatNumber(limit)} mm`,
        `${path}.tipDiameter_mm`,
      );
    }
  }
}

function* meshing(blower: Design['blower']): Generator<CrossFault> {
  const { profile, centreDistance_mm, displacement_cc, lobes, tipDiameter_mm: diameter } = blower;
  if (blower.kind !== 'roots' || centreDistance_mm === undefined || displacement_cc !== undefined) return;
  const section = {
    profile,
    lobes,
    tipRadius: (diameter * mm) / 2,
    pitchRadius: (centreDistance_mm * mm) / 2,
  };
  const trouble = sectionFault(section);
  if (trouble) {
    const [low, high] = trouble.allowed.map((radius) => formatNumber((2 * radius) / mm));
    yield fault(
      'blower.centreDistance_mm',
      `rotors of ${formatNumber(diameter)} mm with axes ${formatNumber(centreDistance_mm)} mm apart cannot mesh: ${trouble.reason}; ` +
        `allowed at these axes: a tip diameter above ${low} and up to ${high} mm`,
      'blower.tipDiameter_mm',
      'blower.lobes',
      'blower.profile',
    );
  }
}

/** Head falls with flow, and its curve bends downwards, where kappa (3 x0 - 2) < sigma; see speed-line.ts. */
export function* impeller({ blower }: Design): Generator<CrossFault> {
  yield* narrowExit(blower, 'blower');
  if (blower.secondStage) yield* narrowExit(blower.secondStage, 'blower.secondStage');
}

function* narrowExit(
  blower: Pick<Design['blower'], 'kind' | 'tipDiameter_mm' | 'impeller'>,
  at: string,
): Generator<CrossFault> {
  if (blower.kind !== 'centrifugal') return;
  const { bestFlow, exitWidth_mm, backsweep_deg, blades, flowWithoutHead } = blower.impeller;
  const diameter = blower.tipDiameter_mm;
  const backsweep = backsweep_deg * deg;
  const across = bestFlow * Math.tan(backsweep) * (diameter / Math.PI) * (3 * flowWithoutHead - 2);
  const least = across / (0.98 * wiesnerSlipFactor(blades, backsweep));
  const width = exitWidth_mm ?? usualExitWidth(diameter);
  if (width < least) {
    const path = `${at}.impeller.exitWidth_mm`;
    yield fault(
      path,
      `the passages at the exit are ${formatNumber(width)} mm wide, so narrow that such blades would give the gas no swirl at high flow; allowed: ${formatNumber(least)} mm or more with this backsweep and flow coefficient`,
      `${at}.tipDiameter_mm`,
      `${at}.impeller.bestFlow`,
      `${at}.impeller.backsweep_deg`,
      `${at}.impeller.flowWithoutHead`,
      `${at}.impeller.blades`,
    );
  }
}
