/**
 * Times the hot paths and prints a table. `npm run bench`, or `npm run bench -- sweep` for the rows of one file.
 * Times depend on the machine and on what else it does: compare rows of one run, and runs on one machine.
 */
import { measure } from './measure.ts';
import { onePoint } from './one-point.bench.ts';
import type { Bench, Row } from './row.ts';
import { sizes } from './sizes.bench.ts';
import { step } from './step.bench.ts';
import { sweep } from './sweep.bench.ts';

const RUNS = 7;
const BENCHES: Readonly<Record<string, Bench>> = { 'one-point': onePoint, sizes, step, sweep };

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !Object.hasOwn(BENCHES, name));
if (unknown.length > 0) {
  console.error(`no bench ${unknown.join(', ')}; there are ${Object.keys(BENCHES).join(', ')}`);
  process.exit(2);
}

const COLUMNS = [42, 13, 8, 7, 8, 9] as const;
const line = (cells: readonly string[]): string =>
  cells.map((cell, i) => (i === 0 ? cell.padEnd(COLUMNS[i]) : cell.padStart(COLUMNS[i]))).join('');

function print(row: Row): number {
  const { median, spread } = measure(row.run, RUNS);
  const each = median / row.pieces;
  const time = row.unit === 'ms' ? `${(each * 1e3).toFixed(1)} ms` : `${(each * 1e6).toFixed(2)} us`;
  console.log(
    line([
      row.work,
      time,
      `±${(50 * spread).toFixed(0)} %`,
      row.steps === null ? '-' : String(row.steps),
      row.cycles === null ? '-' : String(row.cycles),
      row.error === null ? '-' : row.error.toExponential(1),
    ]),
  );
  return each;
}

console.log(`Median of ${RUNS} runs after warm-up, Node.js ${process.version}. Steps of one period's mesh.`);
console.log(line(['work', 'time', 'spread', 'steps', 'cycles', 'error']));
const times = new Map<string, number>();
for (const [name, bench] of Object.entries(BENCHES)) {
  if (asked.length > 0 && !asked.includes(name)) continue;
  for (const row of bench()) times.set(row.work, print(row));
}

const small = times.get('Lovage 7, 6000 rpm, cold');
const large = times.get('Angelica 14, 6000 rpm, cold');
if (small !== undefined && large !== undefined)
  console.log(line(['Angelica 14 / Lovage 7', `${(large / small).toFixed(2)}x`]));
