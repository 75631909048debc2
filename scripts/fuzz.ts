import { fork } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { coveringArray } from '../tests/helpers/robustness/covering-array.ts';
import { designs } from '../tests/helpers/robustness/designs.ts';
import { factors, SMALL } from '../tests/helpers/robustness/factors.ts';
import { judge } from '../tests/helpers/robustness/judge.ts';
import { seeded } from '../tests/helpers/robustness/seeded.ts';
import { tally } from '../tests/helpers/robustness/tally.ts';
import type { Ended } from '../tests/helpers/robustness/tally.ts';

/**
 * Draws designs, solves each at one point, and records in docs/robustness.md how they ended; fails where one neither converges nor
 * explains itself. Every core takes its share; what is found does not depend on how many there are.
 *
 *   npm run fuzz [-- --designs 2000 --seed 1 --periods 300 --minutes 240 --small]
 */
const { values } = parseArgs({
  options: {
    designs: { type: 'string', default: '2000' },
    seed: { type: 'string', default: '1' },
    periods: { type: 'string', default: '300' },
    minutes: { type: 'string', default: '240' },
    small: { type: 'boolean', default: false },
    /** Set for the processes that this one starts: which of the designs are theirs, counted from 0. */
    share: { type: 'string' },
    shares: { type: 'string', default: String(availableParallelism()) },
  },
});
const [wanted, seed, periods, minutes, shares] = [
  values.designs,
  values.seed,
  values.periods,
  values.minutes,
  values.shares,
].map(Number) as [number, number, number, number, number];
const drawn = factors(values.small ? SMALL : {});

if (values.share === undefined) await record();
else judgeShare(Number(values.share));

function judgeShare(share: number): void {
  const started = Date.now();
  let number = 0;
  for (const design of designs(drawn, wanted, seed)) {
    if (number++ % shares !== share) continue;
    if (Date.now() - started > minutes * 60_000) break;
    const { speed_rpm, throttle } = design;
    process.send!({ number, speed_rpm, throttle, ...judge(design, periods) } satisfies Ended);
  }
  process.disconnect();
}

async function record(): Promise<void> {
  const ended: Ended[] = [];
  const note = (each: Ended) => {
    ended.push(each);
    if (ended.length % 100 === 0) process.stdout.write(`${ended.length} of ${wanted}\n`);
  };
  const codes = await Promise.all(
    Array.from({ length: shares }, (_, share) => {
      const child = fork(fileURLToPath(import.meta.url), [
        ...process.argv.slice(2),
        '--share',
        String(share),
      ]);
      child.on('message', (each) => note(each as Ended));
      return new Promise<number | null>((resolve) => child.on('exit', resolve));
    }),
  );
  const { done, broken } = write(ended);
  process.stdout.write(`${done} designs, ${broken.length} not as they must be\n`);
  process.exitCode = broken.length === 0 && codes.every((code) => code === 0) ? 0 : 1;
}

function write(ended: readonly Ended[]) {
  const found = tally(ended);
  const { done, ends, sayings, broken, worstDefect, worstChange } = found;
  const rows = coveringArray(
    drawn.map(({ levels }) => levels.length),
    seeded(seed),
  ).length;
  const section = [
    `Last run: ${done} designs${done < wanted ? ` of ${wanted}, stopped by the clock` : ''}, seed ${seed}${values.small ? ', one cylinder each (`--small`)' : ''}, at most ${periods} periods a point.`,
    `${drawn.length} factors with ${drawn.reduce((sum, { levels }) => sum + levels.length, 0)} levels; a covering array of ${rows} rows holds every pair of them, the rest is drawn.`,
    '',
    '| how they ended | designs |',
    '| --- | --- |',
    `| converged, all figures finite, balances closed | ${ends.get('solved') ?? 0} |`,
    `| no periodic state within ${periods} periods, and says so | ${ends.get('no periodic state') ?? 0} |`,
    `| gas out of the accepted range, and says where | ${ends.get('out of range') ?? 0} |`,
    `| refused before solving, with a message at the field | ${ends.get('refused') ?? 0} |`,
    `| anything else: thrown, not finite, not closed, not explained | ${broken.length} |`,
    '',
    `Worst conservation defect of those that converged: ${worstDefect.toExponential(1)} (allowed 10⁻⁹); worst change over a period: ${worstChange.toExponential(1)} (allowed 10⁻⁶).`,
    ...(broken.length > 0 ? ['', 'Not as they must be:', '', ...broken.map((each) => `- ${each}`)] : []),
    '',
    'What was said by those without an answer, numbers left out:',
    '',
    '| said | designs |',
    '| --- | --- |',
    ...sayings.map(([said, times]) => `| ${said.replaceAll('|', '\\|')} | ${times} |`),
  ].join('\n');
  const page = new URL('../docs/robustness.md', import.meta.url);
  writeFileSync(
    page,
    readFileSync(page, 'utf8').replace(
      /<!-- fuzz begins -->[\s\S]*<!-- fuzz ends -->/,
      () => `<!-- fuzz begins -->\n\n${section}\n\n<!-- fuzz ends -->`,
    ),
  );
  return found;
}
