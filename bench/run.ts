/**
 * Times the hot paths beside the baseline and prints one table. `npm run bench` prints what is aimed at, `npm run bench -- sweep study` only
 * these groups, `npm run bench -- --keep COMMIT` makes another commit the baseline.
 */
import { loadCores } from './core/cores.ts';
import { keep } from './core/keep.ts';
import type { Rows } from './row.ts';
import { accuracy } from './rows/accuracy.ts';
import { heap } from './rows/heap.ts';
import { points } from './rows/points.ts';
import { restarts } from './rows/restarts.ts';
import { scaling } from './rows/scaling.ts';
import { slider } from './rows/slider.ts';
import { step } from './rows/step.ts';
import { study } from './rows/study.ts';
import { sweep } from './rows/sweep.ts';
import { tableHead, tableLine } from './table.ts';

/** What `npm run bench` prints by itself. */
const AIMED: Readonly<Record<string, Rows>> = { points, restarts, sweep, study, slider, heap };
/** What it prints when it is asked for. */
const OTHERS: Readonly<Record<string, Rows>> = { accuracy, scaling, step };
const GROUPS = { ...AIMED, ...OTHERS };

async function main(argv: readonly string[]): Promise<number> {
  if (argv[0] === '--keep') {
    console.log(await keep(argv[1] ?? 'HEAD'));
    return 0;
  }
  const unknown = argv.filter((name) => !Object.hasOwn(GROUPS, name));
  if (unknown.length > 0) {
    console.error(
      `there is no group ${unknown.join(', ')}; allowed: ${Object.keys(GROUPS).join(', ')}, or --keep COMMIT`,
    );
    return 2;
  }
  const cores = await loadCores();
  const { present, baseline } = cores;
  console.log(
    `Medians after warm-up, Node.js ${process.version}. State ${present.core.commit}; ratio: its time over that of ${baseline.core.commit}, in turns.`,
  );
  console.log(tableHead());
  for (const name of argv.length > 0 ? argv : Object.keys(AIMED)) {
    for await (const row of GROUPS[name](cores)) console.log(tableLine(row));
  }
  return 0;
}

process.exitCode = await main(process.argv.slice(2));
