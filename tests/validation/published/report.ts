import type { Band } from './bands.ts';
import { placed } from './bands.ts';
import type { Comparison, Subject } from './comparison.ts';
import { passes, worst } from './comparison.ts';

const HEAD = `# Validation

What this program makes of points that are printed elsewhere, or that have an exact answer. This page is written by

\`\`\`sh
npm run validate              # works everything out anew and writes this page; fails where a line is out of its band
npm run validate -- --check   # writes nothing; fails, too, where this page is out of date
\`\`\`

from the files in \`tests/validation/published\`, one for each subject; the unit tests hold every line to its band as well.

A line agrees if the difference is within its band, and every band says why it is that wide. _Closed form_: an equation with an exact answer, worked
out by hand or in another way than the program does. _Tabulated_: physical data, or an independent calculation. _Published_: the printed
answer of an example or a report. _Measured_: taken from a machine. Where a line holds several values, the one that uses most of its band is shown.
`;

const WHOLE = `## What is not validated

**No whole engine has been held against a test bed.** No published measurement of a blown radial two-stroke with its dimensions, windows, blower and
air flow was found, so nothing below says how far a predicted delivery ratio, power or temperature is from that of a real engine. The
lines above show that equations and data are what they are said to be, and that they are solved; conservation and
the influence of the step are in [implementation-notes.md](implementation-notes.md), the behaviour over many designs in [robustness.md](robustness.md). Coefficients that
decide an answer (discharge, scavenging, burn, heat, friction, clearances) are inputs with typical defaults.

By subject:
`;

/** As many digits as tell the difference from the band. */
function digits(value: number, within: number): string {
  const places = Math.min(9, Math.max(0, 1 - Math.floor(Math.log10(within))));
  return value.toFixed(places).replace('-', '−');
}

const rounded = (value: number): string => Number(value.toPrecision(2)).toString().replaceAll('-', '−');

function line(comparison: Comparison): string {
  const { quantity, origin, source, unit, values, within, because } = comparison;
  const { printed, ours, difference, ofBand } = worst(comparison);
  const allowed = 'share' in within ? within.share * Math.abs(printed) : within.amount;
  const shown = (value: number) => `${digits(value, allowed)}${unit === '' ? '' : ` ${unit}`}`;
  const many = values.length > 1 ? ` (worst of ${values.length})` : '';
  const band = 'share' in within ? `${rounded(within.share * 100)} %` : rounded(within.amount);
  const share = printed === 0 ? '' : ` (${rounded((100 * difference) / Math.abs(printed))} %)`;
  // Round-off differs from one machine to the next.
  const apart = ofBand < 1e-2 ? 'under a hundredth of the band' : `${rounded(difference)}${share}`;
  const cells = [
    quantity,
    `${source} — _${origin}_`,
    `${shown(printed)}${many}`,
    shown(ours),
    apart,
    `${band}: ${because}`,
    passes(comparison) ? 'yes' : '**no**',
  ];
  return `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
}

function table({ title, note, comparisons }: Subject): string {
  return [
    `## ${title}`,
    ...(note === undefined ? [] : ['', note]),
    '',
    '| quantity | source | printed | ours | difference | band | agrees |',
    '| --- | --- | --- | --- | --- | --- | --- |',
    ...comparisons.map(line),
    '',
  ].join('\n');
}

const ABOUT_BANDS = `## Whole engines against bands in print

What engines of the kind do, and where each preset stands at its own speed with the throttle open. A band is no test of one engine: it says
whether the order of magnitude is right, and what sets these engines apart. The books were not at hand when this was written: _recalled_ figures
are to be looked up before anybody leans on them. Almost all print is of engines that pump with the crankcase, many with a tuned exhaust; blown
carburetted ones with loop scavenging were hardly measured.
`;

const PLACE = { below: 'below: ', in: '', above: 'above: ' } as const;

function bandTable(bands: readonly Band[]): string {
  const all = bands.map((band) => ({ band, presets: placed(band) }));
  const names = all[0]!.presets.map(({ preset }) => preset);
  const row = ({ band, presets }: (typeof all)[number]): string => {
    const { quantity, unit, low, high, source, sure } = band;
    const digits = high < 20 ? 1 : 0;
    const values = presets.map(({ value, place }) => `${PLACE[place]}${value.toFixed(digits)}`);
    const range = `${low} to ${high}${unit === '' ? '' : ` ${unit}`}`;
    return `| ${[quantity, `${source} — _${sure}_`, range, ...values].join(' | ')} |`;
  };
  const reasons = all.flatMap(({ band, presets }) => {
    const by = new Map<string, string[]>();
    for (const { preset, why } of presets)
      if (why !== undefined) by.set(why, [...(by.get(why) ?? []), preset]);
    return [...by].map(([why, presets]) => `- _${band.quantity}_, ${presets.join(', ')}: ${why}.`);
  });
  return [
    ABOUT_BANDS,
    `| quantity | source | band | ${names.join(' | ')} |`,
    `| --- | --- | --- |${' --- |'.repeat(names.length)}`,
    ...all.map(row),
    '',
    'Why those outside are outside:',
    '',
    ...reasons,
    '',
  ].join('\n');
}

/** docs/validation.md. */
export function report(subjects: readonly Subject[], bands: readonly Band[]): string {
  const all = subjects.flatMap(({ comparisons }) => comparisons);
  const count = (origin: Comparison['origin']) => all.filter((each) => each.origin === origin).length;
  const values = all.reduce((sum, each) => sum + each.values.length, 0);
  const out = all.filter((each) => !passes(each)).length;
  const tally =
    `${all.length} lines with ${values} values: ${count('closed form')} closed forms, ${count('tabulated')} tabulated, ` +
    `${count('published')} published, ${count('measured')} measured. ${out === 0 ? 'All agree.' : `${out} do not agree.`}`;
  return [
    HEAD,
    `${tally}\n`,
    ...subjects.map(table),
    bandTable(bands),
    WHOLE,
    ...subjects.flatMap(({ title, unproven }) => unproven.map((sentence) => `- _${title}._ ${sentence}`)),
    '',
  ].join('\n');
}
