import { figure } from '../../../charts/format.ts';
import { MEASURE_NAMES, wayName } from '../../../sim/study/even/names.ts';
import type { Measure, Measures } from '../../../sim/study/even/ranking.ts';
import type { TradeOff } from '../../../sim/study/even/trade-offs.ts';
import { deg, milligram, percent } from '../../../sim/units.ts';
import { capital } from '../words.ts';

const SHOWN: Readonly<Record<Measure, (value: number) => string>> = {
  largestGap: (value) => `${figure(value / deg, 3)}°`,
  torqueRipple: (value) => figure(value, 3),
  chargeSpread: (value) => `${figure(value / percent, 3)}\u202f%`,
  worstBackflow: (value) => `${figure(value / milligram, 3)}\u00a0mg`,
  pinImbalance: (value) => value.toFixed(2),
  hiddenBarrels: (value) => value.toFixed(2),
};

/** What a way would bring and cost against the one as built, in a sentence. */
export function tradeText({ way, better, worse }: TradeOff, built: Measures): string {
  const said = (measures: readonly Measure[]): string =>
    measures
      .map(
        (each) =>
          `${MEASURE_NAMES[each]} ${SHOWN[each](way.measures![each])} instead of ${SHOWN[each](built[each])}`,
      )
      .join(', ');
  const cost = worse.length === 0 ? '' : `; but ${said(worse)}`;
  return `${capital(wayName(way))}: ${said(better)}${cost}.`;
}
