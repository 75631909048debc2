import { figuresOf, largestDifference } from '../figures.ts';
import { measure } from '../measure.ts';
import { referenceFigures } from '../reference.ts';
import { timed } from '../row.ts';
import type { Rows } from '../row.ts';
import { at, solved } from '../solved.ts';
import { Threads } from '../threads.ts';

const FROM_RPM = 1500;
const TO_RPM = 10_000;
const POINTS = 20;
const WORKERS = 2;
const PAIRS = 7;

export const speedsOf = (count: number): number[] =>
  Array.from({ length: count }, (_, i) => FROM_RPM + ((TO_RPM - FROM_RPM) * i) / (count - 1));

/** The range of speeds as the app works it out, through its own pool. */
export const sweep: Rows = async function* ({ present, baseline, kept }) {
  const model = present.core.modelOf(kept['lovage-7']);
  const { engine: before } = baseline.core.modelOf(kept['lovage-7']);
  const points = speedsOf(POINTS).map((speed) => at(speed));
  const answers = points.map((point) => solved(present, model, point));
  const errors = answers.map(({ result }, i) =>
    largestDifference(figuresOf(result), referenceFigures(present, model, points[i])),
  );
  const ours = new Threads(present, WORKERS);
  const theirs = new Threads(baseline, WORKERS);
  yield {
    work: `Lovage 7, ${FROM_RPM} to ${TO_RPM} rpm, ${POINTS} points, ${WORKERS} workers`,
    aim: '400 ms',
    ...timed(
      await measure(
        () => ours.sweep(model.engine, points),
        () => theirs.sweep(before, points),
        PAIRS,
      ),
    ),
    error: Math.max(...errors),
    steps: answers.reduce((sum, { next }) => sum + next.mesh.length - 1, 0),
    cycles: answers.reduce((sum, { result }) => sum + result.cycles, 0),
  };
  ours.close();
  theirs.close();
};
