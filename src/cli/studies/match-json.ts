import { fixChanges } from '../../design/fix-changes.ts';
import type { Design } from '../../design/schema/design.ts';
import type { Model } from '../../sim/index.ts';
import { knobNamed } from '../../sim/study/match/knobs.ts';
import type { Fix, FixFigures } from '../../sim/study/match/fix.ts';
import type { Match } from '../../sim/study/match/match.ts';
import type { RangeFix } from '../../sim/study/match/match-range.ts';
import type { Target } from '../../sim/study/match/target.ts';
import { rpm } from '../../sim/units.ts';

/** What would close a gap as one object; values in base SI, pressures absolute. */
export const matchJson = (design: Design, model: Model, { target, point, before, met, fixes }: Match) => ({
  design: design.name,
  speed_rpm: Number((point.speed / rpm).toPrecision(12)),
  target: { figure: target.figure, value: target.value },
  met,
  before: figuresJson(target, before),
  fixes: fixes.map((fix) => fixJson(design, model, target, fix)),
});

const figuresJson = (target: Target, each: FixFigures) => ({
  [target.figure === 'plenumPressure' ? 'plenumPressure_Pa' : target.figure]: each.figure,
  deliveryRatio: each.deliveryRatio,
  brakePower_W: each.brakePower,
  blowerPower_W: each.blowerPower,
  chargeTemperature_K: each.chargeTemperature,
  rotorSpeed_rpm: each.rotorSpeed / rpm,
  tipSpeed_m_per_s: each.tipSpeed,
});

const fixJson = (design: Design, model: Model, target: Target, fix: Fix) => ({
  vary: fix.vary,
  reached: fix.reached,
  from: fix.from,
  to: fix.to,
  unit: { ratio: '-', volume: 'm³', count: '-', length: 'm', 'added height': 'm' }[knobNamed(fix.vary).what],
  gears: fix.gears && fix.gears.map(({ driverTeeth, drivenTeeth }) => [driverTeeth, drivenTeeth]),
  sameCentres: fix.sameCentres,
  after: figuresJson(target, fix.figures),
  reason: fix.reason,
  beyond: fix.beyond,
  set: fix.reached ? fixChanges(design, model, fix) : [],
});

/** A fix for a whole range as one object. */
export const rangeJson = (design: Design, model: Model, target: Target, found: readonly RangeFix[]) => ({
  design: design.name,
  target: { figure: target.figure, value: target.value },
  fixes: found.map(({ fix, solvedAt, before, everywhere, least, unsolved }) => ({
    ...fixJson(design, model, target, fix),
    solvedAt_rpm: solvedAt / rpm,
    before: figuresJson(target, before),
    everywhere,
    least: { speed_rpm: least.speed / rpm, figure: least.figure },
    unsolved_rpm: unsolved.map((speed) => speed / rpm),
  })),
});
