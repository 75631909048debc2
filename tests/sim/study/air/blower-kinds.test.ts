import { describe, expect, it } from 'vitest';
import { setValue } from '../../../../src/design/set-value.ts';
import { toEngine } from '../../../../src/design/to-engine.ts';
import { blowerKinds } from '../../../../src/sim/study/air/blower-kinds.ts';
import { kindsSentence } from '../../../../src/sim/study/air/kinds-sentence.ts';
import { finishStudy } from '../../../../src/sim/study/study-step.ts';
import { preset, sound } from '../../../design/designs.ts';
import { at, modelOf, notFinite, presetEngine, solveAt, solved } from '../../../helpers/engines.ts';

const caraway = presetEngine('caraway-1');
const study = sound(finishStudy(blowerKinds(modelOf(caraway), at(6000))));
const [roots, internal, wheel] = study.kinds;
const chosen = study.speeds.indexOf(study.chosen);

describe('blowerKinds', () => {
  it('leaves the design’s own kind as it is', () => {
    expect(study.kinds.map(({ kind, own }) => [kind, own])).toEqual([
      ['roots', true],
      ['internal compression', false],
      ['centrifugal', false],
    ]);
    const own = solved(solveAt(caraway, 6000));
    // The study averages the ripple, which the design has.
    expect(roots!.points[chosen]!.deliveryRatio / own.engine.deliveryRatio).toBeCloseTo(1, 1);
    expect(internal!.displacementPerTurn).toBe(roots!.displacementPerTurn);
    expect(notFinite(study)).toEqual([]);
  });

  it('makes the wheel deliver the same at the chosen speed, within 0.2 %', () => {
    const share = wheel!.points[chosen]!.deliveryRatio / roots!.points[chosen]!.deliveryRatio;
    expect(Math.abs(share - 1)).toBeLessThan(2e-3);
  });

  it('fits the built-in ratio there, so that it comes nearer to isentropic than Roots, and further off while cranking', () => {
    const efficiency = (of: typeof roots, i: number) => of!.points[i]!.isentropicEfficiency!;
    expect(efficiency(internal, chosen)).toBeGreaterThan(efficiency(roots, chosen));
    expect(efficiency(internal, 0)).toBeLessThan(efficiency(roots, 0));
  });

  it('leaves the wheel short while cranking, whose pressure goes with the square of speed, and says so', () => {
    expect(wheel!.points[0]!.plenumGauge).toBeLessThan(0.2 * roots!.points[0]!.plenumGauge);
    expect(kindsSentence(study, 0.9)).toMatch(
      /At 6000 rpm, .* internal compression takes least .*Cranked at 500 rpm .* centrifugal falls short of the 0\.90 wanted/,
    );
    expect(kindsSentence(study, 1.1)).toMatch(/none reaches the 1\.10 wanted/);
  });

  it('puts rotors in the place of a wheel that take in the same volume', () => {
    const settings = [
      ['blower.kind', 'centrifugal'],
      ['blower.tipDiameter', '32mm'],
      ['blower.gears[0].driver', '160'],
      ['blower.gears[0].driven', '10'],
    ] as const;
    const engine = toEngine(
      settings.reduce((design, [path, text]) => sound(setValue(design, path, text)), preset('caraway-1')),
    );
    const other = sound(finishStudy(blowerKinds(modelOf(engine), at(6000))));
    const [ofRoots, , own] = other.kinds;
    expect(own!.own).toBe(true);
    const i = other.speeds.indexOf(other.chosen);
    // Rotors also slip, which the wheel does not.
    const share = ofRoots!.points[i]!.deliveryRatio / own!.points[i]!.deliveryRatio;
    expect(share).toBeGreaterThan(0.85);
    expect(share).toBeLessThan(1.01);
  });
});
