import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { BANDS } from '../tests/validation/published/bands.ts';
import { passes, worst } from '../tests/validation/published/comparison.ts';
import { report } from '../tests/validation/published/report.ts';
import { subjects } from '../tests/validation/published/subjects.ts';

/** Works out docs/validation.md anew; with --check says whether it is up to date. Fails where a line is out of its band. */
const page = new URL('../docs/validation.md', import.meta.url);
const all = subjects();
const comparisons = all.flatMap((subject) => subject.comparisons);
const out = comparisons.filter((each) => !passes(each));
for (const each of out) {
  const { printed, ours } = worst(each);
  process.stdout.write(`out of its band: ${each.quantity}: ${ours} against ${printed} ${each.unit}\n`);
}
const text = report(all, BANDS);
let fresh = true;
if (process.argv.includes('--check')) {
  fresh = existsSync(page) && readFileSync(page, 'utf8') === text;
  if (!fresh) process.stdout.write('docs/validation.md is out of date: npm run validate\n');
} else writeFileSync(page, text);
process.stdout.write(`${comparisons.length - out.length} of ${comparisons.length} lines agree\n`);
process.exitCode = out.length === 0 && fresh ? 0 : 1;
