import type { WantedAir } from '../../results/verdict.ts';
import { judgeBlower } from '../../results/verdict.ts';
import type { PointResult } from '../../results/point-result.ts';
import { bar, gram, mbar, psi, rpm } from '../../units.ts';
import type { AirFigures } from './air-figures.ts';
import type { AirLimit } from './air-limit.ts';

const LIMITS: Readonly<Record<AirLimit['by'], string>> = {
  displacement: 'the blower’s displacement: no obstacle lifted alone brings what is wanted',
  slip: 'slip back through the blower’s clearances',
  throttle: 'the throttle',
  windows: 'the transfer windows and passages',
  exhaust: 'the exhaust windows and outlets',
};

const WHEEL = 'the blower’s wheel, its size or its speed: no obstacle lifted alone brings what is wanted';

/**
 * The answer on the blower in words: the verdict over the points, and at the speed where least is delivered what comes, what is
 * wanted, what a gauge would show, and what limits it.
 *
 * @param least    - figures at the speed that the verdict names; null where no point has an answer
 * @param limit    - there, or null
 * @param wheel    - whether the blower is centrifugal, which displaces nothing
 * @param swallows - plenum pressure there at which the cylinders take what is wanted [Pa], or null
 */
export function airSentence(
  points: readonly PointResult[],
  wanted: WantedAir,
  least: AirFigures | null,
  limit: AirLimit | null,
  swallows: number | null,
  wheel = false,
): string {
  const verdict = judgeBlower(points, wanted);
  if (!least) return verdict.text;
  const flow = (value: number) => `${(value / gram).toPrecision(3)} g/s`;
  const ambient = least.plenumPressure - least.plenumGauge;
  const gauge = (pressure: number) => {
    const over = pressure - ambient;
    return Math.abs(over) < 0.02 * bar
      ? `${(over / mbar).toFixed(1)} mbar`
      : `${(over / bar).toFixed(3)} bar`;
  };
  const at = `${Math.round(least.speed / rpm)} rpm`;
  const taken =
    swallows === null ? '' : `; the cylinders would swallow that with ${gauge(swallows)} in the plenum`;
  const parts = [
    verdict.text,
    `At ${at} ${flow(least.airFlow)} of air go through, ${flow(least.wantedAirFlow)} are wanted${taken}.`,
    `A gauge on the plenum shows ${gauge(least.plenumPressure)} (${(least.plenumGauge / psi).toFixed(2)} psi), swinging by ${(least.plenumRipple / mbar).toPrecision(2)} mbar.`,
  ];
  if (limit) {
    const short = verdict.enough === false;
    parts.push(
      limit.by === 'displacement' && !short
        ? `Only ${wheel ? 'a larger or faster wheel' : 'more displacement'} would bring more.`
        : `What limits it ${short ? 'there' : 'next'}: ${wheel && limit.by === 'displacement' ? WHEEL : LIMITS[limit.by]}.`,
    );
  }
  return parts.join(' ');
}
