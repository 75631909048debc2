import { difference } from '../../charts/difference.ts';
import { figure } from '../../charts/format.ts';
import type { SolvedPoint } from '../../sim/index.ts';
import type { Measure, ShownUnits } from '../units/shown-units.ts';

interface HeadFigure {
  readonly label: string;
  readonly term: string;
  /** Null for a plain number. */
  readonly measure: Measure | null;
  readonly of: (point: SolvedPoint, ambientPressure: number) => number | null;
}

/** What two results are compared by on every page. */
const headFigures: readonly HeadFigure[] = [
  { label: 'delivered', term: 'deliveryRatio', measure: null, of: ({ engine }) => engine.deliveryRatio },
  { label: 'kept', term: 'chargingEfficiency', measure: null, of: ({ engine }) => engine.chargingEfficiency },
  {
    label: 'plenum gauge',
    term: 'plenumGauge',
    measure: 'pressure',
    of: ({ plenum }, ambientPressure) => plenum.meanPressure - ambientPressure,
  },
  { label: 'blower takes', term: 'shaftPower', measure: 'power', of: ({ blower }) => blower.shaftPower },
  { label: 'power', term: 'brakePower', measure: 'power', of: ({ engine }) => engine.brakePower },
  { label: 'torque', term: 'torque', measure: 'torque', of: ({ engine }) => engine.torque },
  { label: 'fuel for it', term: 'bsfc', measure: 'consumption', of: ({ engine }) => engine.bsfc },
];

/** A result and the conditions it was worked out for. */
export interface Compared {
  readonly point: SolvedPoint;
  readonly ambientPressure: number;
}

export interface AgainstPin {
  readonly label: string;
  readonly term: string;
  readonly text: string;
  readonly against: string;
}

/** Each head figure now, and how far it is from the pinned one. */
export function againstPin(now: Compared, pinned: Compared, units: ShownUnits): AgainstPin[] {
  return headFigures.map(({ label, term, measure, of }) => {
    const shown = ({ point, ambientPressure }: Compared): number | null => {
      const value = of(point, ambientPressure);
      return value === null || measure === null ? value : units.number(measure, value);
    };
    const unit = measure === null ? '' : ` ${units.symbol(measure)}`;
    return {
      label,
      term,
      text: `${figure(shown(now))}${unit}`,
      against: difference(shown(now), shown(pinned)),
    };
  });
}
