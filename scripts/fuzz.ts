import { readFileSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { coveringArray } from '../tests/helpers/robustness/covering-array.ts';
import { designs } from '../tests/helpers/robustness/designs.ts';
import { factors, SMALL } from '../tests/helpers/robustness/factors.ts';
import { judge } from '../tests/helpers/robustness/judge.ts';
import type { Judgement } from '../tests/helpers/robustness/judge.ts';
import { seeded } from '../tests/helpers/robustness/seeded.ts';

/**
 * Draws designs, solves each at one point, and records in docs/robustness.md how they ended; fails where one neither converges nor
 * explains itself.
 *
 *   npm run fuzz [-- --designs 2000 --seed 1 --periods 60 --minutes 30 --small]
 */
const { values } = parseArgs({
  options: {
    designs: { type: 'string', default: '2000' },
    seed: { type: 'string', default: '1' },
    periods: { type: 'string', default: '60' },
    minutes: { type: 'string', default: '240' },
    small: { type: 'boolean', default: false },
  },
});
const [wanted, seed, periods, minutes] = [values.designs, values.seed, values.periods, values.minutes].map(
  Number,
) as [number, number, number, number];
const drawn = factors(values.small ? SMALL : {});
const rows = coveringArray(
  drawn.map(({ levels }) => levels.length),
  seeded(seed),
).length;
const started = Date.now();
const ends = new Map<Judgement['end'], number>();
const sayings = new Map<string, number>();
const broken: string[] = [];
let [done, worstDefect, worstChange] = [0, 0, 0];
for (const design of designs(drawn, wanted, seed)) {
  if (Date.now() - started > minutes * 60_000) break;
  const { end, said, defect, change } = judge(design, periods);
  done++;
  ends.set(end, (ends.get(end) ?? 0) + 1);
  if (end === 'broken')
    broken.push(`design ${done}, ${design.speed_rpm} rpm, throttle ${design.throttle}: ${said}`);
  else if (end !== 'solved') {
    const kind = said.replace(/[\d.,−-]+/g, '#').replace(/(of charge|in) (cylinder|passage) \w+/g, '$1 a $2');
    sayings.set(kind, (sayings.get(kind) ?? 0) + 1);
  }
  worstDefect = Math.max(worstDefect, defect ?? 0);
  worstChange = Math.max(worstChange, change ?? 0);
  if (done % 100 === 0) process.stdout.write(`${done} of ${wanted}\n`);
}

const count = (end: Judgement['end']) => ends.get(end) ?? 0;
const section = [
  `Last run: ${done} designs${done < wanted ? ` of ${wanted}, stopped by the clock` : ''}, seed ${seed}${values.small ? ', one cylinder each (`--small`)' : ''}, at most ${periods} periods a point.`,
  `${drawn.length} factors with ${drawn.reduce((sum, { levels }) => sum + levels.length, 0)} levels; a covering array of ${rows} rows holds every pair of them, the rest is drawn.`,
  '',
  '| how they ended | designs |',
  '| --- | --- |',
  `| converged, all figures finite, balances closed | ${count('solved')} |`,
  `| no periodic state within ${periods} periods, and says so | ${count('no periodic state')} |`,
  `| gas out of the accepted range, and says where | ${count('out of range')} |`,
  `| refused before solving, with a message at the field | ${count('refused')} |`,
  `| anything else: thrown, not finite, not closed, not explained | ${count('broken')} |`,
  '',
  `Worst conservation defect of those that converged: ${worstDefect.toExponential(1)} (allowed 10⁻⁹); worst change over a period: ${worstChange.toExponential(1)} (allowed 10⁻⁶).`,
  ...(broken.length > 0 ? ['', 'Not as they must be:', '', ...broken.map((each) => `- ${each}`)] : []),
  '',
  'What was said by those without an answer, numbers left out:',
  '',
  '| said | designs |',
  '| --- | --- |',
  ...[...sayings]
    .sort((a, b) => b[1] - a[1])
    .map(([said, times]) => `| ${said.replaceAll('|', '\\|')} | ${times} |`),
].join('\n');
const page = new URL('../docs/robustness.md', import.meta.url);
const text = readFileSync(page, 'utf8');
writeFileSync(
  page,
  text.replace(
    /<!-- fuzz begins -->[\s\S]*<!-- fuzz ends -->/,
    () => `<!-- fuzz begins -->\n\n${section}\n\n<!-- fuzz ends -->`,
  ),
);
process.stdout.write(`${done} designs, ${broken.length} not as they must be\n`);
process.exitCode = broken.length === 0 ? 0 : 1;
