import { parseArgs } from 'node:util';
import { UNIT_OF_SUFFIX, PLAIN } from '../design/unit-table.ts';
import { parseQuantity } from '../design/parse-quantity.ts';
import { MAX_SPEED, MIN_SPEED } from '../sim/cycle/operating-point.ts';
import { failure, success } from '../sim/outcome.ts';
import type { Fault, Outcome } from '../sim/outcome.ts';
import { rpm } from '../sim/units.ts';
import { STUDY_NAMES } from './study-names.ts';

/** Those that answer at once about one design; studies and batch read their own arguments. */
export const COMMANDS = ['point', 'sweep', 'geometry', 'check'] as const;
export type Command = (typeof COMMANDS)[number];

export interface Request {
  readonly command: Command;
  readonly file: string;
  readonly changes: readonly { path: string; text: string }[];
  readonly format: 'report' | 'json' | 'csv';
  /** One for a point, rising for a sweep, none otherwise [rad/s]. */
  readonly speeds: readonly number[];
  readonly throttle: number;
}

/** Options of each command beside --set and --help. */
const TAKES: Record<Command, readonly string[]> = {
  point: ['speed', 'throttle', 'json'],
  sweep: ['speed', 'throttle', 'json', 'csv'],
  geometry: ['json'],
  check: [],
};
const MOST_POINTS = 1000;

/** The command line to a request; 'help' where help is asked for; or everything that is wrong with it. */
export function readArguments(argv: readonly string[]): Outcome<Request | 'help'> {
  let parsed;
  try {
    parsed = parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: {
        speed: { type: 'string' },
        throttle: { type: 'string' },
        set: { type: 'string', multiple: true },
        json: { type: 'boolean' },
        csv: { type: 'boolean' },
        help: { type: 'boolean', short: 'h' },
      },
    });
  } catch (error) {
    return failure([{ path: '', message: (error as Error).message }]);
  }
  const { values, positionals } = parsed;
  if (values.help || positionals[0] === 'help') return success('help');
  const [name, file, ...more] = positionals;
  const command = COMMANDS.find((each) => each === name);
  if (!command) {
    const what = name === undefined ? 'no command is given' : `there is no command “${name}”`;
    return failure([
      {
        path: '',
        message: `${what}; allowed: ${[...COMMANDS, ...STUDY_NAMES, 'batch'].join(', ')}`,
      },
    ]);
  }
  const faults: Fault[] = [];
  const take = <T>(outcome: Outcome<T>, otherwise: T): T => {
    if (outcome.ok) return outcome.value;
    faults.push(...outcome.faults);
    return otherwise;
  };
  if (file === undefined) faults.push({ path: '', message: 'no design file or preset is given' });
  if (more.length > 0) faults.push({ path: '', message: `too much is given: ${more.join(' ')}` });
  for (const option of ['speed', 'throttle', 'json', 'csv'] as const) {
    if (values[option] !== undefined && !TAKES[command].includes(option)) {
      faults.push({ path: `--${option}`, message: `${command} does not take this option` });
    }
  }
  if (values.json && values.csv) faults.push({ path: '--csv', message: 'give either --json or --csv' });
  const changes = (values.set ?? []).map((text) => take(readChange(text), { path: '', text: '' }));
  const speeds = TAKES[command].includes('speed')
    ? take(readSpeeds(command === 'point' ? 'one' : 'range', values.speed), [])
    : [];
  const throttle = take(readThrottle(values.throttle), 1);
  if (faults.length > 0) return failure(faults);
  const format = values.json ? 'json' : values.csv ? 'csv' : 'report';
  return success({ command, file: file!, changes, format, speeds, throttle });
}

export function readChange(text: string): Outcome<{ path: string; text: string }> {
  const at = text.indexOf('=');
  if (at < 1)
    return failure([{ path: '--set', message: `“${text}” is not path=value, as cylinder.bore=42mm` }]);
  return success({ path: text.slice(0, at).trim(), text: text.slice(at + 1) });
}

/** One speed, or rising ones from : to : step [rad/s]. */
export function readSpeeds(many: 'one' | 'range', text: string | undefined): Outcome<readonly number[]> {
  const refuse = (message: string) => failure([{ path: '--speed', message }]);
  const form = many === 'one' ? 'one speed, as 6000' : 'from:to:step, as 1000:9000:500';
  if (text === undefined) return refuse(`missing; give ${form}`);
  const parts = text.split(':');
  if (parts.length !== (many === 'one' ? 1 : 3)) return refuse(`is “${text}”; give ${form}`);
  const read = parts.map((part) => parseQuantity(part, UNIT_OF_SUFFIX.rpm));
  const wrong = read.flatMap((each) => (each.ok ? [] : each.faults));
  if (wrong.length > 0) return failure(wrong.map(({ message }) => ({ path: '--speed', message })));
  const [from, to = from, step = 1] = read.map((each) => (each.ok ? each.value.value : NaN)) as [
    number,
    number?,
    number?,
  ];
  const shown = (speed: number) => `${Number((speed / rpm).toPrecision(6))} rpm`;
  const slack = 1e-9 * MAX_SPEED;
  for (const speed of [from, to]) {
    if (speed < MIN_SPEED - slack || speed > MAX_SPEED + slack) {
      return refuse(`is ${shown(speed)}; allowed ${shown(MIN_SPEED)} to ${shown(MAX_SPEED)}`);
    }
  }
  if (many === 'one') return success([from]);
  if (!(step > 0)) return refuse(`the step is ${shown(step)}; allowed above 0`);
  if (to < from) return refuse(`runs from ${shown(from)} down to ${shown(to)}; give the lower speed first`);
  const count = Math.floor((to - from) / step + 1e-6) + 1;
  if (count > MOST_POINTS) return refuse(`makes ${count} points; allowed up to ${MOST_POINTS}`);
  return success(Array.from({ length: count }, (_, i) => from + i * step));
}

/** @returns 1 where nothing is typed */
export function readThrottle(text: string | undefined): Outcome<number> {
  if (text === undefined) return success(1);
  const read = parseQuantity(text, PLAIN);
  if (!read.ok) return failure(read.faults.map(({ message }) => ({ path: '--throttle', message })));
  const { value } = read.value;
  if (value >= 0 && value <= 1) return success(value);
  return failure([
    { path: '--throttle', message: `is ${value}; allowed 0 (shut) to 1 (open), or 0% to 100%` },
  ]);
}
