import { formatNumber } from '../../../design/format-quantity.ts';
import { parseQuantity } from '../../../design/parse-quantity.ts';
import { PLAIN, UNIT_OF_SUFFIX } from '../../../design/unit-table.ts';
import type { Unit } from '../../../design/unit-table.ts';
import { failure, success } from '../../../sim/outcome.ts';
import type { Fault, Outcome } from '../../../sim/outcome.ts';
import { AIMS, USUAL_AIMS } from '../../../sim/study/even/aims.ts';
import type { AimName, Aims } from '../../../sim/study/even/aims.ts';
import { MEASURES } from '../../../sim/study/even/ranking.ts';
import type { Measure } from '../../../sim/study/even/ranking.ts';
import { MEANS, MEANS_BY_NAME, USUAL_MEANS, usualMeans } from '../../../sim/study/even/means.ts';
import type { AllowedMeans, MeansName } from '../../../sim/study/even/means.ts';

const UNITS: Readonly<Record<(typeof MEANS_BY_NAME)[MeansName]['what'], Unit>> = {
  length: UNIT_OF_SUFFIX.mm,
  angle: UNIT_OF_SUFFIX.deg,
  volume: UNIT_OF_SUFFIX.cc,
};

const refuse = (path: string, message: string): Outcome<never> => failure([{ path, message }]);

/** `name=text` of an option that may be given several times, the names from a list. */
function readNamed<Name extends string>(
  option: string,
  typed: readonly string[],
  names: readonly Name[],
): Outcome<ReadonlyMap<Name, string>> {
  const faults: Fault[] = [];
  const found = new Map<Name, string>();
  for (const text of typed) {
    const [left, right, ...more] = text.split('=').map((part) => part.trim());
    const name = names.find((each) => each === left);
    if (!name || right === undefined || more.length > 0)
      faults.push({ path: option, message: `“${text}” is not name=value; names: ${names.join(', ')}` });
    else found.set(name, right);
  }
  return faults.length > 0 ? failure(faults) : success(found);
}

function readNumber(option: string, text: string, unit: Unit): Outcome<number> {
  const read = parseQuantity(text, unit);
  return read.ok
    ? success(read.value.value)
    : failure(read.faults.map(({ message }) => ({ path: option, message })));
}

/**
 * `--means barrel,exhaustTrim --step barrel=0.1mm --limit barrel=0:1mm`: what may be altered, how finely, and how far from what is there.
 */
export function readMeans(
  typed: string | undefined,
  steps: readonly string[],
  limits: readonly string[],
): Outcome<readonly AllowedMeans[]> {
  const wanted = typed === undefined ? USUAL_MEANS : typed.split(',').map((each) => each.trim());
  const unknown = wanted.filter((each) => !MEANS.some((name) => name === each));
  if (unknown.length > 0)
    return refuse(
      '--means',
      `there is no ${unknown.map((each) => `“${each}”`).join(', ')}; allowed: ${MEANS.join(', ')}`,
    );
  const names = MEANS.filter((name) => wanted.includes(name));
  const named = readNamed('--step', steps, names);
  const bounded = readNamed('--limit', limits, names);
  if (!named.ok || !bounded.ok)
    return failure([...(named.ok ? [] : named.faults), ...(bounded.ok ? [] : bounded.faults)]);
  const faults: Fault[] = [];
  const means = names.map((name): AllowedMeans => {
    const usual = usualMeans(name);
    const { what, furthest } = MEANS_BY_NAME[name];
    const unit = UNITS[what];
    const number = (option: string, text: string): number => {
      const read = readNumber(option, text, unit);
      if (read.ok) return read.value;
      faults.push(...read.faults);
      return NaN;
    };
    const shown = (value: number) => `${formatNumber(value / unit.factor)} ${unit.symbol}`;
    const stepText = named.value.get(name);
    const step = stepText === undefined ? usual.step : number('--step', stepText);
    if (!Number.isNaN(step) && !(step > 0 && step <= furthest))
      faults.push({
        path: '--step',
        message: `${name} is ${stepText!}; allowed above 0, up to ${shown(furthest)}`,
      });
    const limitText = bounded.value.get(name);
    if (limitText === undefined) return { ...usual, step };
    const ends = limitText.split(':').map((text) => number('--limit', text));
    const [least, most] =
      ends.length === 1 ? [-Math.abs(ends[0]!), Math.abs(ends[0]!)] : [ends[0]!, ends[1]!];
    const most5 = 5 * furthest;
    if (ends.length > 2 || !(least <= 0 && most >= 0 && least >= -most5 && most <= most5))
      faults.push({
        path: '--limit',
        message: `${name} is ${limitText}; allowed from:to about 0, as 0:1, up to ${shown(most5)} either way`,
      });
    return { name, step, least, most };
  });
  return faults.length > 0 ? failure(faults) : success(means);
}

/** `--tolerance trappedMass=1% --weigh timing=1`: how alike, and what counts how much. */
export function readAims(tolerances: readonly string[], weights: readonly string[]): Outcome<Aims> {
  const named = readNamed('--tolerance', tolerances, AIMS);
  const weighed = readNamed('--weigh', weights, AIMS);
  if (!named.ok || !weighed.ok)
    return failure([...(named.ok ? [] : named.faults), ...(weighed.ok ? [] : weighed.faults)]);
  const faults: Fault[] = [];
  const within = (
    option: string,
    name: AimName,
    text: string,
    unit: Unit,
    [least, most]: [number, number],
  ): number => {
    const read = readNumber(option, text, unit);
    if (!read.ok) faults.push(...read.faults);
    else if (!(read.value >= least && read.value <= most)) {
      const shown = (value: number) => formatNumber(value / unit.factor);
      faults.push({
        path: option,
        message: `${name} is ${text}; allowed ${shown(least)} to ${shown(most)} ${unit.symbol}`.trimEnd(),
      });
    }
    return read.ok ? read.value : NaN;
  };
  const aims = Object.fromEntries(
    AIMS.map((name) => {
      const usual = USUAL_AIMS[name];
      const isAngle = name === 'timing';
      const unit = isAngle ? UNIT_OF_SUFFIX.deg : PLAIN;
      const range: [number, number] = isAngle ? [0.02 * unit.factor, 20 * unit.factor] : [1e-3, 0.5];
      const tolerance = named.value.get(name);
      const weight = weighed.value.get(name);
      return [
        name,
        {
          tolerance:
            tolerance === undefined ? usual.tolerance : within('--tolerance', name, tolerance, unit, range),
          weight: weight === undefined ? usual.weight : within('--weigh', name, weight, PLAIN, [0, 100]),
        },
      ];
    }),
  ) as unknown as Aims;
  if (faults.length === 0 && AIMS.every((name) => aims[name].weight === 0))
    faults.push({ path: '--weigh', message: 'nothing weighs; give one aim a weight above 0' });
  return faults.length > 0 ? failure(faults) : success(aims);
}

/** `--by torqueRipple`. */
export function readMeasure(text: string | undefined): Outcome<Measure> {
  const measure = MEASURES.find((each) => each === (text ?? 'torqueRipple'));
  return measure ? success(measure) : refuse('--by', `is “${text!}”; allowed: ${MEASURES.join(', ')}`);
}

/** `--grouping 1,1,2,2`: a collector for every cylinder, counted from 1; null where none is typed. */
export function readGrouping(text: string | undefined, cylinders: number): Outcome<readonly number[] | null> {
  if (text === undefined) return success(null);
  const seats = text.split(',').map(Number);
  const most = Math.max(...seats);
  const all = Array.from({ length: most > 0 ? most : 0 }, (_, i) => i + 1);
  if (
    seats.length !== cylinders ||
    !seats.every((seat) => Number.isInteger(seat) && seat >= 1) ||
    !all.every((each) => seats.includes(each))
  )
    return refuse(
      '--grouping',
      `is “${text}”; give a collector for each of ${cylinders} cylinders, from 1 on and none left out, as 1,1,2,2`,
    );
  return success(seats.map((seat) => seat - 1));
}
