import type { Reach } from '../../../sim/study/even/reach.ts';
import { shareText } from '../words.ts';

/** Effects below this mean nothing, over the trapped mass [-]. */
const LEAST = 2e-4;

/** The strongest effect of one blowdown on another cylinder's charge, in words. */
export function reachSentence({ from }: Reach, names: readonly string[]): string {
  let strongest = { by: 0, on: 0, effect: 0 };
  from.forEach((each, by) =>
    each?.trappedMass.forEach((effect, on) => {
      if (Math.abs(effect) > Math.abs(strongest.effect)) strongest = { by, on, effect };
    }),
  );
  const { by, on, effect } = strongest;
  if (Math.abs(effect) < LEAST) return 'No cylinder’s exhaust reaches another’s charge.';
  return effect < 0
    ? `The blowdown of ${names[by]!} reaches ${names[on]!} hardest: it takes ${shareText(-effect)} of its charge away.`
    : `The blowdown of ${names[by]!} reaches ${names[on]!} hardest: it keeps ${shareText(effect)} more charge in it.`;
}
