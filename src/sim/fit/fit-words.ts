import { deg } from '../units.ts';
import type { FitCheck, FitKind, FitPlace, FitReport } from './fit-check.ts';

export const FIT_LABELS: Readonly<Record<FitKind, string>> = {
  crowns: 'Crown to head',
  covers: 'Skirt past the window floors',
  skirts: 'Skirts side by side',
  rodsInSkirts: 'Rods to skirts',
  rodsAtMouths: 'Rods to barrel mouths',
  rods: 'Rods side by side',
  bigEnds: 'Big end to skirts and mouths',
  eyes: 'Knuckle eyes side by side',
  knuckleWalls: 'Wall round the knuckle pins',
  smallEnds: 'Small end under the crown',
  flanges: 'Barrel flanges',
  fins: 'Fins',
  mouths: 'Barrel mouths',
  rows: 'Rows along the crank',
  diameter: 'Diameter in the space there is',
  length: 'Length in the space there is',
};

/** What is the matter where a clearance is below 0, and below its tolerance. */
const TROUBLE: Partial<Record<FitKind, readonly [string, string]>> = {
  covers: ['open to the crankcase', 'may open to the crankcase'],
  knuckleWalls: ['no wall left', 'may leave no wall'],
  diameter: ['too large', 'may be too large'],
  length: ['too long', 'may be too long'],
};

export function verdictWords({ kind, verdict }: Pick<FitCheck, 'kind' | 'verdict'>): string {
  if (verdict === 'clear') return 'clear';
  const [below, near] = TROUBLE[kind] ?? ['collide', 'may touch'];
  return verdict === 'collides' ? below : near;
}

export const partsWords = ({ parts: [one, other] }: Pick<FitPlace, 'parts'>): string => `${one} and ${other}`;

export const angleWords = (angle: number | null): string =>
  angle === null ? 'always' : `${(Math.round((angle / deg) * 10) % 3600) / 10}°`;

/** Checks from the one with least room left, its tolerance taken off. */
export const byRoom = (checks: readonly FitCheck[]): FitCheck[] =>
  [...checks].sort((a, b) => a.clearance - a.tolerance - (b.clearance - b.tolerance));

/**
 * Whether it goes together, in words.
 *
 * @param long - a length as it is to be read [m]
 */
export function fitSentence({ checks }: FitReport, long: (value: number) => string): string {
  const worst = byRoom(checks);
  const [tightest] = worst;
  if (!tightest) return 'There is nothing that could touch.';
  const when = ({ angle }: FitCheck): string => (angle === null ? '' : ` at ${angleWords(angle)}`);
  const collisions = worst.filter(({ verdict }) => verdict === 'collides');
  const [first] = collisions;
  if (first) {
    const others = collisions.length - 1;
    const more =
      others === 0
        ? ''
        : others === 1
          ? ' One other check fails, too.'
          : ` ${others} other checks fail, too.`;
    return `It does not go together: ${faultWords(first, long)}${when(first)}.${more}`;
  }
  const how = `${partsWords(tightest)} come within ${long(tightest.clearance)}${when(tightest)}`;
  const out = `their tolerances add up to ${long(tightest.tolerance)}`;
  if (tightest.verdict === 'may touch') return `It goes together only if little is out: ${how}, and ${out}.`;
  const next = worst.find(({ kind }) => kind !== tightest.kind);
  const after = next ? ` Next are ${partsWords(next)}, ${long(next.clearance)}${when(next)}.` : '';
  return `It goes together: the tightest are ${partsWords(tightest)}, ${long(tightest.clearance)}${when(tightest)}, and ${out}.${after}`;
}

function faultWords(check: FitCheck, long: (value: number) => string): string {
  const by = long(-check.clearance);
  switch (check.kind) {
    case 'covers':
      return `${check.parts[0]} leaves its windows open to the crankcase by ${by}`;
    case 'knuckleWalls':
      return `no wall is left between ${partsWords(check)}, by ${by}`;
    case 'diameter':
    case 'length':
      return `its ${check.kind} is ${by} more than there is room for`;
    default:
      return `${partsWords(check)} overlap by ${by}`;
  }
}

/** What no drawing of cold and stiff parts can tell. */
export const FIT_CAUTION =
  'Cold, stiff parts on their centres. Clearances must also allow for heat growth, for rods that stretch and cranks that bend at speed, ' +
  'and for bearings that wear. Ducts, studs, counterweights and the case are not looked at. Check with the real parts, turned by hand.';
