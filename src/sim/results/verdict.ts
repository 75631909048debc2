import { rpm } from '../units.ts';
import type { PointResult } from './point-result.ts';

/** What a design wants, as far as the blower is judged by it. */
export interface WantedAir {
  readonly deliveryRatio: number;
  readonly crankingSpeed: number;
}

/** Neighbouring speeds at which the blower falls short [rad/s]. */
export interface ShortRange {
  readonly from: number;
  readonly to: number;
}

/** Whether the blower is big enough: delivery ratio >= the wanted one at every speed that was asked. */
export interface Verdict {
  /** Null where no point has an answer. */
  readonly enough: boolean | null;
  /** Least delivery ratio less the wanted one [-], and the speed where it is least [rad/s]; null without an answer. */
  readonly margin: number | null;
  readonly speed: number | null;
  readonly short: readonly ShortRange[];
  /** Whether the cranking speed was among the points and answered. */
  readonly cranking: boolean;
  /** Speeds without an answer [rad/s]. */
  readonly unsolved: readonly number[];
  /** The same in words: one or two plain sentences. */
  readonly text: string;
}

/**
 * Judge the blower by points of a design, one or a whole sweep; they may come in any order.
 *
 *   margin = min over points of (delivery ratio - wanted);  enough = margin >= 0
 *
 * A point without an answer neither passes nor fails: it is named.
 */
export function judgeBlower(points: readonly PointResult[], wanted: WantedAir): Verdict {
  const sorted = [...points].sort((a, b) => a.speed - b.speed);
  const solved = sorted.flatMap((point) =>
    point.converged ? [{ speed: point.speed, deliveryRatio: point.engine.deliveryRatio }] : [],
  );
  const unsolved = sorted.filter((point) => !point.converged).map((point) => point.speed);
  if (solved.length === 0) {
    const text =
      sorted.length === 0
        ? 'No speed was worked out.'
        : `Whether the blower is big enough cannot be told: no answer at ${speeds(unsolved)}.`;
    return { enough: null, margin: null, speed: null, short: [], cranking: false, unsolved, text };
  }
  const least = solved.reduce((worst, point) => (point.deliveryRatio < worst.deliveryRatio ? point : worst));
  const margin = least.deliveryRatio - wanted.deliveryRatio;
  const enough = margin >= 0;
  const short = shortRanges(solved, wanted.deliveryRatio);
  const cranking = solved.some(({ speed }) => isCranking(speed, wanted));
  const sentence =
    solved.length === 1
      ? onePoint(least, wanted, enough)
      : manyPoints(solved, least, wanted, { enough, short, cranking }) +
        (cranking || unsolved.some((speed) => isCranking(speed, wanted))
          ? ''
          : ' Cranking was not worked out.');
  const missing = unsolved.length > 0 ? ` No answer at ${speeds(unsolved)}.` : '';
  return { enough, margin, speed: least.speed, short, cranking, unsolved, text: sentence + missing };
}

interface Judged {
  readonly speed: number;
  readonly deliveryRatio: number;
}

const isCranking = (speed: number, wanted: WantedAir): boolean =>
  Math.abs(speed - wanted.crankingSpeed) <= 1e-6 * wanted.crankingSpeed;

function shortRanges(solved: readonly Judged[], wanted: number): readonly ShortRange[] {
  const ranges: { from: number; to: number }[] = [];
  let open = false;
  for (const { speed, deliveryRatio } of solved) {
    const short = deliveryRatio < wanted;
    if (short && open) ranges.at(-1)!.to = speed;
    else if (short) ranges.push({ from: speed, to: speed });
    open = short;
  }
  return ranges;
}

function onePoint({ speed, deliveryRatio }: Judged, wanted: WantedAir, enough: boolean): string {
  const at = isCranking(speed, wanted) ? `at cranking speed, ${rpmText(speed)}` : `at ${rpmText(speed)}`;
  const is = enough ? 'is big enough' : 'is not big enough';
  return (
    `The blower ${is} ${at}: it delivers ${ratio(deliveryRatio)} times the swept volume of ambient air, ` +
    `${gap(deliveryRatio, wanted.deliveryRatio)} the ${ratio(wanted.deliveryRatio)} wanted.`
  );
}

function manyPoints(
  solved: readonly Judged[],
  least: Judged,
  wanted: WantedAir,
  { enough, short, cranking }: Pick<Verdict, 'short' | 'cranking'> & { enough: boolean },
): string {
  const span = `${rpmText(solved[0]!.speed, false)} to ${rpmText(solved.at(-1)!.speed)}`;
  const worst = `${ratio(least.deliveryRatio)} at ${rpmText(least.speed)}, ${gap(least.deliveryRatio, wanted.deliveryRatio)} the ${ratio(wanted.deliveryRatio)} wanted`;
  if (enough) {
    const included = cranking ? `, cranking at ${rpmText(wanted.crankingSpeed)} included` : '';
    return `The blower is big enough at every speed worked out, ${span}${included}: it delivers least, ${worst}.`;
  }
  const everywhere =
    short.length === 1 && solved.every(({ deliveryRatio }) => deliveryRatio < wanted.deliveryRatio);
  const crankingShort =
    cranking && solved.some((p) => isCranking(p.speed, wanted) && p.deliveryRatio < wanted.deliveryRatio);
  const ranges = short.map(({ from, to }) =>
    from === to ? rpmText(from) : `${rpmText(from, false)} to ${rpmText(to)}`,
  );
  const where = everywhere ? `at any speed worked out, ${span}` : `at ${ranges.join(' and ')}`;
  const crankingText = cranking
    ? crankingShort
      ? ', cranking included'
      : ', though it is for cranking'
    : '';
  return `The blower is not big enough ${where}${crankingText}: it delivers least, ${worst}.`;
}

const ratio = (value: number): string => value.toFixed(2);
const rpmText = (speed: number, withUnit = true): string =>
  `${Math.round(speed / rpm)}${withUnit ? ' rpm' : ''}`;
const speeds = (list: readonly number[]): string =>
  `${list.map((speed) => rpmText(speed, false)).join(', ')} rpm`;

/** The distance in percent of what is wanted, with two figures, so that it never reads as nothing. */
function gap(delivered: number, wanted: number): string {
  const share = Math.abs(delivered / wanted - 1) * 100;
  if (share === 0) return 'exactly';
  const text = share >= 10 ? share.toFixed(0) : String(Number(share.toPrecision(2)));
  return `${text} % ${delivered >= wanted ? 'more' : 'less'} than`;
}
