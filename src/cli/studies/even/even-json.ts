import { arranged, cylinderNames, shopChanges } from '../../../design/even-changes.ts';
import type { Design } from '../../../design/schema/design.ts';
import type { Engine } from '../../../sim/index.ts';
import { outdone, rank } from '../../../sim/study/even/ranking.ts';
import type { Alternatives } from '../../../sim/study/even/alternatives.ts';
import type { Measure } from '../../../sim/study/even/ranking.ts';
import type { EvenedOut } from '../../../sim/study/even/even-out.ts';
import type { Evenness } from '../../../sim/study/even/evenness.ts';
import { hottestOf } from '../../../sim/study/even/hottest.ts';
import { wayName } from '../../../sim/study/even/names.ts';
import type { Reach } from '../../../sim/study/even/reach.ts';
import { rpm } from '../../../sim/units.ts';

const speedOf = ({ speed }: { speed: number }) => Number((speed / rpm).toPrecision(12));

/** Evenness and shop list as one object; values in base SI. */
export function evenJson(design: Design, found: Evenness, evened: EvenedOut) {
  const names = cylinderNames(design);
  const { cylinder, ...why } = hottestOf(found);
  return {
    design: design.name,
    speed_rpm: speedOf(found),
    hottest: {
      ...why,
      cylinder: names[cylinder],
      exhaust: { ...why.exhaust, cylinder: names[why.exhaust.cylinder] },
    },
    cylinders: found.cylinders.map((each, j) => ({ cylinder: names[j], ...each })),
    spreads: found.spreads,
    origins: found.origins,
    evenOut: {
      reached: evened.reached,
      aims: evened.aims,
      means: evened.means,
      items: evened.items.map((item) => ({ ...item, cylinder: names[item.cylinder] })),
      atLimit: evened.atLimit.map(({ cylinder: at, means }) => ({ cylinder: names[at], means })),
      before: evened.before,
      after: evened.after,
      crownBelowDeck: evened.deck,
      set: shopChanges(design, evened.items),
    },
  };
}

/** Ways to put the engine together as one object, best first; `design` of each is the file that it makes. */
export function waysJson(design: Design, engine: Engine, found: Alternatives, by: Measure) {
  const better = outdone(found.ways);
  const ranked = rank(found.ways, by);
  return {
    design: design.name,
    speed_rpm: speedOf(found),
    by,
    evenGap: found.evenGap,
    phaseSilence: found.phaseSilence,
    ways: [...ranked, ...found.ways.filter(({ measures }) => measures === null)].map((way) => {
      const made = arranged(design, engine, way.arrangement);
      return {
        way: way.key,
        name: wayName(way),
        altered: way.altered,
        measures: way.measures,
        reason: way.reason,
        outdoneBy: better.get(way.key) ?? null,
        design: made.ok ? made.value : null,
      };
    }),
  };
}

/** Whose exhaust reaches whom as one object: rows by whose blowdown. */
export const reachJson = (design: Design, found: Reach) => ({
  design: design.name,
  speed_rpm: speedOf(found),
  cylinders: cylinderNames(design),
  from: found.from,
});
