import { describe, expect, it } from 'vitest';
import { fixChanges } from '../../../../src/design/fix-changes.ts';
import { setValues } from '../../../../src/design/set-value.ts';
import { toEngine } from '../../../../src/design/to-engine.ts';
import { solveToEnd } from '../../../../src/sim/index.ts';
import { raiseWindows, scaleLength } from '../../../../src/sim/study/match/knobs.ts';
import type { KnobName } from '../../../../src/sim/study/match/knobs.ts';
import { match } from '../../../../src/sim/study/match/match.ts';
import { figureOf } from '../../../../src/sim/study/match/target.ts';
import type { Target } from '../../../../src/sim/study/match/target.ts';
import { finishStudy } from '../../../../src/sim/study/study-step.ts';
import { mm } from '../../../../src/sim/units.ts';
import { preset, sound } from '../../../design/designs.ts';
import { at, modelOf, solved } from '../../../helpers/engines.ts';

const design = preset('caraway-1');
const model = modelOf(toEngine(design));
const point = at(5000);
const matched = (target: Target, ...vary: KnobName[]) =>
  sound(finishStudy(match(model, point, target, vary)));

/** What the design reaches once the fix is typed into it. */
function applied(target: Target, fix: Parameters<typeof fixChanges>[2]): number {
  const changed = sound(setValues(design, fixChanges(design, model, fix)));
  return figureOf(target.figure, solved(solveToEnd(modelOf(toEngine(changed)), point).result));
}

describe('match', () => {
  it.each(['blower.driveRatio', 'blower.displacement', 'blower.count'] as const)(
    'by %s reaches a delivery ratio of 1.5, and so does the design once its values are typed',
    (vary) => {
      const target = { figure: 'deliveryRatio', value: 1.5 } as const;
      const { before, met, fixes } = matched(target, vary);
      expect(met).toBe(false);
      expect(before.figure).toBeLessThan(1.5);
      const [fix] = fixes;
      expect(fix).toMatchObject({ reached: true, reason: null, vary });
      expect(fix!.figures.figure).toBeGreaterThanOrEqual(1.5);
      const figure = applied(target, fix!);
      expect(figure).toBeGreaterThan(1.5 - 1e-4);
      expect(figure / fix!.figures.figure).toBeCloseTo(1, 3);
      // Rounded to half a millimetre of rotor, or the next teeth; whole blowers overshoot as they must.
      if (vary !== 'blower.count') expect(figure / 1.5).toBeLessThan(1.04);
      // More air costs blower power, whichever way it comes.
      expect(fix!.figures.blowerPower).toBeGreaterThan(before.blowerPower);
    },
  );

  it('lowers the ratio where less is asked for: a plenum of 0.06 bar', () => {
    const target = { figure: 'plenumPressure', value: model.engine.ambient.pressure + 6e3 } as const;
    const { met, before, fixes } = matched(target, 'blower.driveRatio');
    expect(met).toBe(true);
    expect(before.figure).toBeGreaterThan(target.value);
    expect(fixes[0]!.to).toBeLessThan(fixes[0]!.from);
    expect(fixes[0]!.figures.figure).toBeLessThanOrEqual(target.value);
    expect(applied(target, fixes[0]!)).toBeLessThan(target.value + 50);
  });

  it('closes the gaps for a little more air, and the typed gaps do as much', () => {
    const target = { figure: 'deliveryRatio', value: 1.27 } as const;
    const [fix] = matched(target, 'blower.gaps').fixes;
    expect(fix!.reached).toBe(true);
    expect(fix!.to).toBeLessThan(fix!.from);
    expect(applied(target, fix!)).toBeGreaterThan(1.27 - 1e-4);
  });

  it('says how near it comes and what stops it, where the target is out of reach', () => {
    const { before, fixes } = matched({ figure: 'deliveryRatio', value: 2 }, 'blower.gaps', 'plenum.volume');
    for (const fix of fixes) {
      expect(fix.reached).toBe(false);
      expect(fix.figures.figure).toBeLessThan(2);
      expect(fix.figures.figure).toBeGreaterThanOrEqual(before.figure);
    }
    expect(fixes[0]!.reason).toContain('below 0.02 mm');
    expect(fixes[0]!.to).toBeCloseTo(0.02 * mm, 9);
    expect(fixes[1]!.reason).toMatch(/\w{4,}/);
  });

  it('moves a window’s edge no further than a third of the crank’s radius', () => {
    const [fix] = matched({ figure: 'chargingEfficiency', value: 1.4 }, 'windows.exhaust').fixes;
    expect(fix!.reached).toBe(false);
    expect(Math.abs(fix!.to)).toBeLessThanOrEqual(0.35 * model.engine.train.crankRadius + 1e-9);
    expect(fix!.reason).not.toBeNull();
  });
});

describe('raiseWindows', () => {
  it('opens a window typed by its angle earlier, so that its edge stands higher by just that height', () => {
    for (const kind of ['exhaust', 'transfer'] as const) {
      const raised = modelOf({
        ...model.engine,
        windows: { ...model.engine.windows, [kind]: raiseWindows(model, kind, 2 * mm) },
      });
      const depth = ({ geometry }: typeof model) => geometry.cylinders[0]![kind].groups[0]!.topDepth;
      expect((depth(model) - depth(raised)) / mm).toBeCloseTo(2, 6);
    }
  });
});

describe('scaleLength', () => {
  it('doubles displacement with length, and the gaps along the rotors, not those at their ends', () => {
    const { blower } = model.engine;
    const longer = scaleLength(model.engine, 2).blower;
    const ends = 2 * blower.rotors.gaps.end * blower.tipDiameter;
    expect(longer.displacement).toBeCloseTo(2 * blower.displacement, 15);
    expect(longer.clearanceArea).toBeCloseTo(2 * blower.clearanceArea - ends, 12);
  });
});
