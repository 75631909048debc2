import { figuresOf, largestDifference } from '../figures.ts';
import { measure } from '../measure.ts';
import { referenceFigures } from '../reference.ts';
import { NOTHING, timed, times } from '../row.ts';
import type { Row, Rows } from '../row.ts';
import { at, solved } from '../solved.ts';

const PAIRS = 15;

/** One operating point from the cold start, and what twice the cylinders and cranking speed cost beside it. */
export const points: Rows = async function* ({ present, baseline, kept }) {
  const of = (preset: string) => present.core.modelOf(kept[preset]);
  const row = async (work: string, preset: string, speed_rpm: number, aim: string): Promise<Row> => {
    const model = of(preset);
    const before = baseline.core.modelOf(kept[preset]);
    const point = at(speed_rpm);
    const { result, next } = solved(present, model, point);
    return {
      work,
      aim,
      ...timed(
        await measure(
          () => solved(present, model, point),
          () => solved(baseline, before, point),
          PAIRS,
        ),
      ),
      error: largestDifference(figuresOf(result), referenceFigures(present, model, point)),
      steps: next.mesh.length - 1,
      cycles: result.cycles,
    };
  };
  const against = async (
    work: string,
    run: () => unknown,
    other: () => unknown,
    aim: string,
  ): Promise<Row> => {
    const { ratio, spread } = await measure(run, other, PAIRS);
    return { ...NOTHING, work, median: times(ratio!), spread, aim };
  };
  yield await row('Lovage 7, 6000 rpm, cold', 'lovage-7', 6000, '40 ms');
  yield await row('Lovage 7, 1500 rpm, cold', 'lovage-7', 1500, '');
  yield await row('Lovage 7, 250 rpm, cold', 'lovage-7', 250, '');
  yield await row('Angelica 14, 6000 rpm, cold', 'angelica-14', 6000, '');
  const lovage = of('lovage-7');
  const angelica = of('angelica-14');
  const running = () => solved(present, lovage, at(6000));
  yield await against('Lovage 7, 250 over 6000 rpm', () => solved(present, lovage, at(250)), running, '3 x');
  yield await against(
    'Angelica 14 over Lovage 7, 6000 rpm',
    () => solved(present, angelica, at(6000)),
    running,
    '2.1 x',
  );
};
