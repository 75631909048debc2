import { figure } from '../../../charts/format.ts';
import type { AirLimitFound } from '../../../sim/study/air/find-limit.ts';
import type { ShownUnits } from '../../units/shown-units.ts';
import { speedText } from '../words.ts';

const LIMITS: Readonly<Record<AirLimitFound['limit']['by'], string>> = {
  displacement: 'the blower’s displacement',
  slip: 'slip back through the blower’s clearances',
  throttle: 'the throttle',
  windows: 'the transfer windows and passages',
  exhaust: 'the exhaust windows and outlets',
};

/**
 * What stands in the way where least is delivered: flow against what is wanted, what a gauge would show, the limit.
 *
 * @param wheel - of a centrifugal blower, which displaces nothing
 */
export function findingText(
  { speed, figures, limit, swallows }: AirLimitFound,
  wanted: number,
  units: ShownUnits,
  wheel = false,
): string {
  const ambient = figures.plenumPressure - figures.plenumGauge;
  const short = figures.deliveryRatio < wanted;
  const by = Math.abs(figures.wantedAirFlow - figures.airFlow);
  const flow = (value: number) => units.text('mass flow', value);
  const taken =
    swallows === null
      ? ''
      : `; the cylinders would swallow that with ${units.text('pressure', swallows - ambient)} in the plenum`;
  const gauge = `A gauge would show ${units.both('pressure', figures.plenumGauge, 2)} there, swinging by ${units.text('ripple', figures.plenumRipple, 2)}.`;
  const reached = Object.values(limit.lifted).flatMap((each) => (each === null ? [] : [each]));
  const most = reached.length > 0 ? Math.max(...reached) : null;
  const what =
    limit.by === 'displacement'
      ? short
        ? `What limits it is ${wheel ? 'the blower’s wheel, its size or its speed' : LIMITS.displacement}: with ${wheel ? '' : 'slip, '}throttle, windows or exhaust out of the way it would still deliver ${figure(most)} at most.`
        : `Only ${wheel ? 'a larger or faster wheel' : 'more displacement'} would bring more.`
      : `What limits it ${short ? 'there' : 'next'} is ${LIMITS[limit.by]}: out of the way, it would deliver ${figure(limit.lifted[limit.by])}.`;
  return (
    `At ${speedText(speed)}, where least is delivered, ${flow(figures.airFlow)} of air go through and ${flow(figures.wantedAirFlow)} are wanted: ` +
    `${flow(by)} ${short ? 'too little' : 'to spare'}${taken}. ${gauge} ${what}`
  );
}
