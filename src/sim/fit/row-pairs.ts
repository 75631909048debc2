import { withinTurn } from '../geometry/angles.ts';
import type { FitKind, Pair } from './fit-check.ts';
import type { CylinderParts, RowParts } from './row-parts.ts';
import { shapePair } from './shape-pair.ts';

/** Pairs of a row whose distance changes as the crank turns. */
export function movingPairs(row: RowParts): Pair[] {
  const { rowIndex, cylinders, bigEnd } = row;
  const beside = neighbours(cylinders, ({ axisAngle }) => axisAngle);
  const pairs: Pair[] = [];
  for (const [one, other] of beside) {
    const parts = [`skirt ${one.label}`, `skirt ${other.label}`] as const;
    pairs.push(shapePair('skirts', rowIndex, parts, [one.skirt], [other.skirt]));
  }
  for (const one of cylinders) {
    const rod = one.eye ? [one.shank, one.eye] : [one.shank];
    const name = `rod ${one.label}`;
    const against = (kind: 'rodsInSkirts' | 'rodsAtMouths', part: string, shapes: typeof rod): void => {
      pairs.push(shapePair(kind, rowIndex, [name, part], rod, shapes));
    };
    against('rodsInSkirts', `skirt ${one.label}`, [...one.skirtWalls]);
    against('rodsAtMouths', `mouth ${one.label}`, [...one.mouthWalls]);
    for (const pair of beside) {
      if (!pair.includes(one)) continue;
      const other = pair[0] === one ? pair[1] : pair[0];
      against('rodsInSkirts', `skirt ${other.label}`, [other.skirt]);
      against('rodsAtMouths', `mouth ${other.label}`, [other.mouthBody]);
    }
    const big = row.articulated ? 'knuckle flange' : 'big end';
    const walls = [...one.skirtWalls];
    pairs.push(shapePair('bigEnds', rowIndex, [big, `skirt ${one.label}`], [bigEnd], walls));
    pairs.push(shapePair('bigEnds', rowIndex, [big, `mouth ${one.label}`], [bigEnd], [...one.mouthWalls]));
  }
  if (row.articulated) pairs.push(...rodPairs(row));
  return pairs;
}

/** Rods that are next to each other on the master rod: eye against shank, shank against shank. */
function rodPairs({ rowIndex, cylinders }: RowParts): Pair[] {
  return neighbours(cylinders, ({ knuckleAngle }) => knuckleAngle).flatMap(([one, other]) => {
    const rod = ({ label }: CylinderParts): string => `rod ${label}`;
    const pairs = [shapePair('rods', rowIndex, [rod(one), rod(other)], [one.shank], [other.shank])];
    for (const [left, right] of [
      [one, other],
      [other, one],
    ] as const) {
      const parts = [`knuckle eye ${left.label}`, rod(right)] as const;
      if (left.eye) pairs.push(shapePair('rods', rowIndex, parts, [left.eye], [right.shank]));
    }
    return pairs;
  });
}

/** Pairs of a row whose distance stays: barrels beside each other, eyes on the master rod. */
export function stillPairs({ rowIndex, cylinders, articulated }: RowParts): Pair[] {
  const pairs: Pair[] = [];
  for (const [one, other] of neighbours(cylinders, ({ axisAngle }) => axisAngle)) {
    const beside = (kind: FitKind, part: string, shape: 'flange' | 'fins' | 'mouthBody'): void => {
      const parts = [`${part} ${one.label}`, `${part} ${other.label}`] as const;
      pairs.push(shapePair(kind, rowIndex, parts, [one[shape]], [other[shape]]));
    };
    beside('flanges', 'flange', 'flange');
    beside('fins', 'fins', 'fins');
    beside('mouths', 'mouth', 'mouthBody');
  }
  if (!articulated) return pairs;
  for (const [one, other] of neighbours(cylinders, ({ knuckleAngle }) => knuckleAngle)) {
    if (!one.eye || !other.eye) continue;
    const parts = [`knuckle eye ${one.label}`, `knuckle eye ${other.label}`] as const;
    pairs.push(shapePair('eyes', rowIndex, parts, [one.eye], [other.eye]));
  }
  return pairs;
}

/** Each with the next one round, once. */
export function neighbours(
  cylinders: readonly CylinderParts[],
  angle: (one: CylinderParts) => number,
): readonly (readonly [CylinderParts, CylinderParts])[] {
  const turned = (one: CylinderParts): number => withinTurn(angle(one));
  const round = [...cylinders].sort((a, b) => turned(a) - turned(b));
  if (round.length < 2) return [];
  if (round.length === 2) return [[round[0]!, round[1]!]];
  return round.map((one, i) => [one, round[(i + 1) % round.length]!]);
}
