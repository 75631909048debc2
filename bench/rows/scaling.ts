import { figuresOf, largestDifference } from '../figures.ts';
import { measure } from '../measure.ts';
import { referenceFigures } from '../reference.ts';
import { ms, timed, times } from '../row.ts';
import type { Rows } from '../row.ts';
import { at, solved } from '../solved.ts';
import { Threads } from '../threads.ts';
import { speedsOf } from './sweep.ts';

const SPEED_RPM = 6000;
/** Rows of the crank and cylinders in each: blower, plenum and collector grow in proportion. */
const ENGINES: readonly (readonly [rows: number, cylinders: number])[] = [
  [1, 1],
  [1, 3],
  [1, 5],
  [1, 7],
  [2, 7],
  [4, 7],
];
const POINTS = [20, 100, 400];
const WORKERS = [1, 2];

interface Sizes {
  crank: { rows: { cylinders: number; throw_deg?: number }[] };
  plenum: { volume_cc: number };
  exhaust: { collectors: { volume_cc: number; outlet_mm: number }[] };
  fuel: { carburettor: { bore_mm: number } };
  blower: { rotorLength_mm: number };
}

/** The preset of seven with another number of cylinders, each fed and emptied as before. */
function sized(text: string, rows: number, cylinders: number): string {
  const design = JSON.parse(text) as Sizes;
  const share = (rows * cylinders) / 7;
  design.crank.rows = Array.from({ length: rows }, (_, row) => ({
    cylinders,
    throw_deg: (360 * row) / rows,
  }));
  design.plenum.volume_cc *= share;
  design.blower.rotorLength_mm *= share;
  const [collector] = design.exhaust.collectors;
  collector.volume_cc *= share;
  collector.outlet_mm *= Math.sqrt(share);
  design.fuel.carburettor.bore_mm *= Math.sqrt(share);
  return JSON.stringify(design);
}

/** How the time of a point grows with the cylinders, and that of a sweep with its points and workers. */
export const scaling: Rows = async function* ({ present, baseline, kept }) {
  let single: number | null = null;
  for (const [rows, cylinders] of ENGINES) {
    const text = sized(kept['lovage-7'], rows, cylinders);
    const model = present.core.modelOf(text);
    const before = baseline.core.modelOf(text);
    const point = at(SPEED_RPM);
    const { result, next } = solved(present, model, point);
    const measured = await measure(
      () => solved(present, model, point),
      () => baseline.core.solveToEnd(before, point),
      7,
    );
    single ??= measured.median;
    yield {
      work: `${rows * cylinders} cylinders, ${SPEED_RPM} rpm, cold, ${times(measured.median / single)} of one`,
      aim: '',
      ...timed(measured),
      error: largestDifference(figuresOf(result), referenceFigures(present, model, point)),
      steps: next.mesh.length - 1,
      cycles: result.cycles,
    };
  }
  const model = present.core.modelOf(kept['lovage-7']);
  for (const workers of WORKERS) {
    const threads = new Threads(present, workers);
    await threads.sweep(
      model.engine,
      speedsOf(20).map((speed) => at(speed)),
    );
    for (const count of POINTS) {
      const points = speedsOf(count).map((speed) => at(speed));
      const began = performance.now();
      await threads.sweep(model.engine, points);
      const seconds = (performance.now() - began) / 1000;
      yield {
        work: `Lovage 7, sweep of ${count} points, ${workers === 1 ? '1 worker' : `${workers} workers`}, each ${ms(seconds / count)}`,
        aim: '',
        median: ms(seconds),
        spread: null,
        error: null,
        steps: null,
        cycles: null,
        ratio: null,
      };
    }
    threads.close();
  }
};
