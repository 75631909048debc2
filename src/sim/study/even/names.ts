import { deg } from '../../units.ts';
import type { AimName } from './aims.ts';
import type { Measure } from './ranking.ts';
import type { Candidate } from './candidates.ts';
import type { Cause } from './evenness.ts';
import type { MeansName } from './means.ts';
import type { ShareFigure } from './share-figures.ts';

/** What a figure is a number of, so that whoever shows it can choose a unit. */
export type Kind =
  'angle' | 'length' | 'ratio' | 'share' | 'time-area' | 'mass' | 'pressure' | 'temperature' | 'heat';

export const FIGURE_NAMES: Readonly<Record<ShareFigure, { readonly name: string; readonly kind: Kind }>> = {
  deadCentreShift: { name: 'dead centre off its place', kind: 'angle' },
  downStroke: { name: 'from top to bottom', kind: 'angle' },
  stroke: { name: 'stroke', kind: 'length' },
  trappedCompression: { name: 'trapped compression', kind: 'ratio' },
  exhaustOpening: { name: 'exhaust opens', kind: 'angle' },
  transferOpening: { name: 'transfer opens', kind: 'angle' },
  blowdownTimeArea: { name: 'blowdown time-area', kind: 'time-area' },
  scavengeTimeArea: { name: 'scavenge time-area', kind: 'time-area' },
  exhaustTimeArea: { name: 'exhaust time-area', kind: 'time-area' },
  deliveryRatio: { name: 'delivery ratio', kind: 'ratio' },
  trappedMass: { name: 'trapped mass', kind: 'mass' },
  purity: { name: 'purity', kind: 'share' },
  imep: { name: 'IMEP', kind: 'pressure' },
  peakPressure: { name: 'peak pressure', kind: 'pressure' },
  exhaustTemperature: { name: 'exhaust temperature', kind: 'temperature' },
  wallHeat: { name: 'heat into the walls', kind: 'heat' },
};

export const CAUSE_NAMES: Readonly<Record<Cause, string>> = {
  rods: 'rods',
  pulses: 'pulses',
  trims: 'trims',
};

export const MEANS_NAMES: Readonly<Record<MeansName, string>> = {
  knuckle: 'knuckle angle',
  knuckleRadius: 'knuckle radius',
  rod: 'rod length',
  barrel: 'barrel spacer',
  exhaustTrim: 'exhaust edge',
  transferTrim: 'transfer edge',
  head: 'head volume',
};

export const AIM_NAMES: Readonly<Record<AimName, string>> = {
  timing: 'opening angles',
  compression: 'trapped compression',
  trappedMass: 'trapped mass',
};

export const MEASURE_NAMES: Readonly<Record<Measure, string>> = {
  largestGap: 'largest gap between firings',
  torqueRipple: 'torque ripple',
  chargeSpread: 'spread of charge',
  worstBackflow: 'worst reverse flow',
  pinImbalance: 'crank pins out of balance',
  hiddenBarrels: 'barrels behind others',
};

const degrees = (angle: number): string => `${Number((angle / deg).toFixed(1))}°`.replace('-', '−');

const COUNTS: readonly (string | undefined)[] = [undefined, 'one', 'two', 'three', 'four', 'five', 'six'];

/** A way to put the engine together, in words: what differs from the one as built. */
export function wayName({ altered, grouping, arrangement }: Candidate): string {
  switch (altered) {
    case 'nothing':
      return 'as built';
    case 'rows':
      return arrangement.rows
        .slice(1)
        .map(
          ({ throwAngle, staggerAngle }, r) =>
            `row ${String.fromCharCode(66 + r)}: stagger ${degrees(staggerAngle)}, throw ${degrees(throwAngle)}`,
        )
        .join('; ');
    case 'collectors': {
      const count = arrangement.collectors;
      return count === 1 ? 'one collector for all' : `${COUNTS[count] ?? count} collectors, ${grouping!}`;
    }
    case 'phase':
      return (
        `rotors at ${degrees(arrangement.phase)}` +
        (arrangement.phaseStep === 0 ? '' : `, each next blower ${degrees(arrangement.phaseStep)} further`)
      );
  }
}
