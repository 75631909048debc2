import { kW, rpm } from '../../units.ts';
import type { BlowerKind } from './other-blowers.ts';
import type { BlowerKinds, KindPoint } from './blower-kinds.ts';

export const KIND_NAMES: Readonly<Record<BlowerKind, string>> = {
  roots: 'Roots',
  'internal compression': 'internal compression',
  centrifugal: 'centrifugal',
};

/** Shares of the least power that are the same to one decimal of what anybody could measure [-]. */
const LIKE = 0.02;

/** What the comparison of kinds comes to: who takes least where all deliver the same, and who still delivers while cranking. */
export function kindsSentence(
  { speeds, chosen, kinds }: BlowerKinds,
  wanted: number,
  power = (value: number): string => `${(value / kW).toPrecision(3)} kW`,
): string {
  const at = (speed: number): { name: string; point: KindPoint }[] =>
    kinds.flatMap(({ kind, points }) => {
      const point = points[speeds.indexOf(speed)];
      return point ? [{ name: KIND_NAMES[kind], point }] : [];
    });
  const running = at(chosen).sort((a, b) => a.point.shaftPower - b.point.shaftPower);
  const cranked = at(speeds[0]!);
  const [least, ...others] = running;
  if (!least) return 'No kind has an answer at this speed.';
  const alike = others.filter(({ point }) => point.shaftPower < (1 + LIKE) * least.point.shaftPower);
  const rest = others
    .filter((each) => !alike.includes(each))
    .map(({ name, point }) => `${name} ${power(point.shaftPower)}`);
  const first = [least, ...alike].map(({ name }) => name).join(' and ');
  const sentences = [
    `At ${Math.round(chosen / rpm)} rpm, where all deliver about the same air, ${first} ${alike.length > 0 ? 'take' : 'takes'} least of the crank, ${power(least.point.shaftPower)}${rest.length > 0 ? `; ${rest.join(', ')}` : ''}.`,
  ];
  if (speeds[0] !== chosen && cranked.length > 0) {
    const delivered = cranked.map(({ name, point }) => `${name} ${point.deliveryRatio.toFixed(2)}`);
    const short = cranked.filter(({ point }) => point.deliveryRatio < wanted).map(({ name }) => name);
    const verdict =
      short.length === 0
        ? `all reach the ${wanted.toFixed(2)} wanted`
        : short.length === cranked.length
          ? `none reaches the ${wanted.toFixed(2)} wanted`
          : `${short.join(' and ')} ${short.length > 1 ? 'fall' : 'falls'} short of the ${wanted.toFixed(2)} wanted`;
    sentences.push(
      `Cranked at ${Math.round(speeds[0]! / rpm)} rpm they deliver, over the swept volume, ${delivered.join(', ')}: ${verdict}.`,
    );
  }
  return sentences.join(' ');
}
