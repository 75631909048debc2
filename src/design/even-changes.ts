import type { Engine } from '../sim/index.ts';
import type { Outcome } from '../sim/outcome.ts';
import { collectorsShared } from '../sim/study/even/arrangement.ts';
import type { Arrangement } from '../sim/study/even/arrangement.ts';
import type { MeansName, ShopItem } from '../sim/study/even/means.ts';
import { cc, cm2, deg, mm } from '../sim/units.ts';
import { cylinderName } from './cylinder-name.ts';
import type { Change } from './fix-changes.ts';
import type { Design } from './schema/design.ts';
import { validate } from './validate.ts';

/** Twelve figures: what was worked out, without the noise of the last bits. */
const tidy = (value: number): number => Number(value.toPrecision(12));

const CORRECTIONS: Readonly<Record<MeansName, readonly [key: string, unit: number]>> = {
  knuckle: ['knuckle_deg', deg],
  knuckleRadius: ['knuckleRadius_mm', mm],
  rod: ['rod_mm', mm],
  barrel: ['barrel_mm', mm],
  exhaustTrim: ['exhaustTrim_mm', mm],
  transferTrim: ['transferTrim_mm', mm],
  head: ['head_cc', cc],
};

/** Names of the cylinders, row by row. */
export const cylinderNames = ({ crank }: Design): readonly string[] =>
  crank.rows.flatMap((row, r) => Array.from({ length: row.cylinders }, (_, j) => cylinderName(r, j)));

/** What must be typed into a design so that a shop list holds in it. */
export function shopChanges(design: Design, items: readonly ShopItem[]): readonly Change[] {
  const names = cylinderNames(design);
  return items.map(({ cylinder, means, to }) => {
    const [key, unit] = CORRECTIONS[means];
    // A micrometre or a thousandth of a degree is finer than anything that is made.
    return {
      path: `crank.corrections[${names[cylinder]!}].${key}`,
      text: String(Number((to / unit).toFixed(4))),
    };
  });
}

/**
 * The design put together in another way: throws and staggers, collectors and who exhausts into which, phases of the rotors.
 *
 * @param engine - that of the design
 */
export function arranged(design: Design, engine: Engine, arrangement: Arrangement): Outcome<Design> {
  const data = structuredClone(design);
  const { rows, seats, collectors, phase, phaseStep } = arrangement;
  let at = 0;
  const own = new Map<string, number>();
  data.crank.rows = data.crank.rows.map((row, r) => {
    const mine = seats.slice(at, (at += row.cylinders));
    const common = mostFrequent(mine);
    mine.forEach((seat, j) => {
      if (seat !== common) own.set(cylinderName(r, j), seat + 1);
    });
    const { throwAngle, staggerAngle } = rows[r]!;
    return {
      ...row,
      throw_deg: tidy(throwAngle / deg),
      stagger_deg: tidy(staggerAngle / deg),
      collector: common + 1,
    };
  });
  data.crank.corrections = correctionsWith(data.crank.corrections, own);
  if (collectors !== data.exhaust.collectors.length)
    data.exhaust.collectors = fewerOrMore(data.exhaust.collectors[0]!, engine, collectors);
  data.blower.phase_deg = tidy(phase / deg);
  data.blower.phaseStep_deg = tidy(phaseStep / deg);
  return validate(data);
}

type Corrections = Design['crank']['corrections'];

/** The corrections with these collectors and no others; those that then say nothing go. */
function correctionsWith(corrections: Corrections, own: ReadonlyMap<string, number>): Corrections {
  const kept = corrections.map((each) => {
    const rest = { ...each };
    delete rest.collector;
    const collector = own.get(rest.cylinder);
    return collector === undefined ? rest : { ...rest, collector };
  });
  const known = new Set(kept.map(({ cylinder }) => cylinder));
  const more = [...own].flatMap(([cylinder, collector]) =>
    known.has(cylinder) ? [] : [{ cylinder, collector }],
  );
  return [...kept.filter((each) => Object.keys(each).length > 1), ...more];
}

function fewerOrMore(
  first: Design['exhaust']['collectors'][number],
  { collectors }: Engine,
  count: number,
): Design['exhaust']['collectors'] {
  const [shared] = collectorsShared(collectors, count);
  const { volume, outletArea, wall } = shared!;
  const each = {
    ...first,
    volume_cc: tidy(volume / cc),
    outlet_mm: tidy(Math.sqrt((4 * outletArea) / Math.PI) / mm),
    wall: {
      ...first.wall,
      hydraulicDiameter_mm: tidy(wall.hydraulicDiameter / mm),
      ...(first.wall.area_cm2 === undefined ? {} : { area_cm2: tidy(wall.area / cm2) }),
    },
  };
  return Array.from({ length: count }, () => structuredClone(each));
}

/** The most frequent; of several the least. */
function mostFrequent(seats: readonly number[]): number {
  const count = (seat: number) => seats.filter((each) => each === seat).length;
  return [...new Set(seats)].sort((a, b) => count(b) - count(a) || a - b)[0]!;
}
