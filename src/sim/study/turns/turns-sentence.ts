import type { Combustion } from '../../engine.ts';
import { bar, rpm } from '../../units.ts';
import type { Rhythm } from './rhythm.ts';
import type { RunningTurns } from './running-turns.ts';

const inBar = (pressure: number): string => `${(pressure / bar).toFixed(2).replace('-', '−')}\u00a0bar`;
const FOUR_STROKING = 'every second turn';
const ORDINALS = ['second', 'third', 'fourth', 'fifth', 'sixth'];

function inWords({ order, share }: Rhythm): string {
  if (share === 0) return 'not at all';
  if (order === null) return `irregularly, in ${(100 * share).toFixed(0)}\u202f% of turns`;
  const { fires, of } = order;
  if (of === 1) return 'every turn';
  return fires === 1 ? `every ${ORDINALS[of - 2]} turn` : `${fires} of every ${of} turns`;
}

/**
 * How an engine fires, in words: every turn, every second (four-strokes), or irregularly; why it skips, and what that does to its work.
 *
 * @param speed    - of the crank [rad/s]
 * @param names    - of the cylinders
 * @param pressure - writes a pressure [Pa]
 */
export function turnsSentence(
  { turns, judged, rhythms, imep, averaged, broke }: RunningTurns,
  combustion: Pick<Combustion, 'enabled' | 'misfireResidual' | 'leanLimit' | 'richLimit'>,
  speed: number,
  names: readonly string[],
  pressure: (value: number) => string = inBar,
): string {
  const at = `At ${Math.round(speed / rpm)}\u00a0rpm`;
  if (!combustion.enabled) return `${at} burning is switched off: nothing fires.`;
  const groups = new Map<string, string[]>();
  rhythms.forEach((rhythm, j) => {
    const how = inWords(rhythm);
    groups.set(how, [...(groups.get(how) ?? []), names[j]!]);
  });
  const fourStrokes = (how: string) => (how === FOUR_STROKING ? ' (four-stroking)' : '');
  const [only] = groups.keys();
  const said =
    groups.size === 1
      ? names.length === 1
        ? `it fires ${only!}${fourStrokes(only!)}`
        : `all cylinders fire ${only!}${fourStrokes(only!)}`
      : [...groups]
          .map(
            ([how, who]) =>
              `${who.join(', ')} ${who.length === 1 ? 'fires' : 'fire'} ${how}${fourStrokes(how)}`,
          )
          .join('; ');
  const ended = broke === null ? '' : ` The turns ended early: ${broke}.`;
  const whole = rhythms.every(({ share }) => share === 1);
  const work =
    judged > 1 && !whole
      ? ` IMEP goes from ${pressure(imep.least)} to ${pressure(imep.most)} turn by turn, mean ${pressure(imep.mean)}${averaged === null ? '' : `; averaged over turns the model has ${pressure(averaged)}`}.`
      : ` IMEP ${pressure(imep.mean)}${averaged === null ? '' : `, averaged state ${pressure(averaged)}`}.`;
  return `${at} ${said}.${whole ? '' : ` ${why()}`}${work}${ended}`;

  function why(): string {
    const skipped = turns.slice(-judged).flatMap(({ cylinders }) => cylinders.filter(({ fired }) => !fired));
    const residuals = skipped.map(({ residual }) => residual);
    const stale = residuals.filter((residual) => residual > combustion.misfireResidual);
    if (stale.length > 0)
      return `Charges that skip hold ${span(stale, 100, 0)}\u202f% of burned gas at the spark, and above ${(100 * combustion.misfireResidual).toFixed(0)}\u202f% none burns.`;
    const lambdas = skipped.flatMap(({ lambda }) => (lambda === null ? [] : [lambda]));
    return lambdas.length > 0
      ? `Charges that skip have λ ${span(lambdas, 1, 2)} (vapour may be leaner); λ ${combustion.richLimit} to ${combustion.leanLimit} burns.`
      : 'Charges that skip hold no fuel.';
  }
}

function span(values: readonly number[], scale: number, digits: number): string {
  const [least, most] = [Math.min(...values), Math.max(...values)].map((value) =>
    (scale * value).toFixed(digits),
  );
  return least === most ? least! : `${least} to ${most}`;
}

/** What single turns of the model leave out. */
export const TURNS_LIMITS =
  'Every charge is held to one limit here. Real flames differ from turn to turn at equal charge, so skipping begins earlier, ends later and keeps less order; ' +
  'unburned charge that reaches a hot exhaust may fire there.';
