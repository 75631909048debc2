import { rpm } from '../../src/sim/units.ts';
import { figuresOf, largestDifference } from '../figures.ts';
import { median } from '../measure.ts';
import { referenceFigures } from '../reference.ts';
import { ms } from '../row.ts';
import type { Rows } from '../row.ts';
import { at, solved } from '../solved.ts';

const RUNS = 3;

/**
 * Every preset at 250 rpm, at the speed that it is shown at, and at the top of its range. `moved` is how far the finer solution itself stands from the
 * baseline's: what a cheaper law or a table changed in the model, which the error cannot see.
 */
export const accuracy: Rows = async function* ({ present, baseline, kept, presets }) {
  for (const [preset, text] of Object.entries(presets)) {
    const model = present.core.modelOf(text);
    const before = kept[preset] === text ? baseline.core.modelOf(text) : null;
    const { name, wanted } = model.engine;
    for (const speed_rpm of [250, wanted.speed / rpm, wanted.maxSpeed / rpm].map(Math.round)) {
      const point = at(speed_rpm);
      const reference = referenceFigures(present, model, point);
      const moved = before && largestDifference(reference, referenceFigures(baseline, before, point));
      let answer = solved(present, model, point);
      const taken = Array.from({ length: RUNS }, () => {
        const began = performance.now();
        answer = solved(present, model, point);
        return (performance.now() - began) / 1000;
      });
      yield {
        work: `${name}, ${speed_rpm} rpm${moved === null ? '' : `; moved ${moved.toExponential(1)}`}`,
        aim: '',
        median: ms(median(taken)),
        spread: null,
        error: largestDifference(figuresOf(answer.result), reference),
        steps: answer.next.mesh.length - 1,
        cycles: answer.result.cycles,
        ratio: null,
      };
    }
  }
};
