import { readDesignData } from '../../design/read-design.ts';
import type { Design } from '../../design/schema/design.ts';
import { setValues } from '../../design/set-value.ts';
import { MAX_SPEED, MIN_SPEED } from '../../sim/cycle/operating-point.ts';
import type { OperatingPoint } from '../../sim/cycle/operating-point.ts';
import { failure, success } from '../../sim/outcome.ts';
import type { Fault, Outcome } from '../../sim/outcome.ts';
import { rpm } from '../../sim/units.ts';
import type { DesignShelf } from './design-shelf.ts';

/** One line of a study: a design, changes to it, and where it runs. */
export interface StudyLine {
  readonly design: Design;
  readonly operating: OperatingPoint;
}

type Data = Readonly<Record<string, unknown>>;
const KEYS = ['name', 'design', 'set', 'speed_rpm', 'throttle'];

const isGroup = (data: unknown): data is Data =>
  typeof data === 'object' && data !== null && !Array.isArray(data);

const shown = (value: unknown): string => JSON.stringify(value) ?? 'missing';

/** The text of a line to its data, or why it is none. */
export function parseLine(text: string): Outcome<Data> {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    return failure([{ path: '', message: `the line is not JSON: ${(error as Error).message}` }]);
  }
  if (isGroup(data)) return success(data);
  return failure([{ path: '', message: `the line is ${shown(data)}; allowed: one group of values { … }` }]);
}

/** What the answer to a line is called: the line's name, or where it has none that can be used, its number. */
export function nameOf(data: Outcome<Data>, number: number): string {
  const name = data.ok ? data.value['name'] : undefined;
  return typeof name === 'string' && name.trim() !== '' ? name : `line ${number}`;
}

/** A line of a study, checked, or everything that is wrong with it. */
export function readStudyLine(data: Data, shelf: DesignShelf): Outcome<StudyLine> {
  const faults: Fault[] = [];
  const refuse = (path: string, message: string) => void faults.push({ path, message });
  for (const key of Object.keys(data)) {
    if (!KEYS.includes(key)) refuse(key, `unknown key “${key}”. Allowed here: ${KEYS.join(', ')}`);
  }
  const { name, set = {}, speed_rpm, throttle = 1 } = data;
  if (typeof name !== 'string' || name.trim() === '')
    refuse('name', `Name is ${shown(name)}; allowed: a text of its own for each line`);

  const lowest = Math.round(MIN_SPEED / rpm);
  const highest = Math.round(MAX_SPEED / rpm);
  if (typeof speed_rpm !== 'number' || !(speed_rpm >= lowest && speed_rpm <= highest))
    refuse('speed_rpm', `Speed is ${shown(speed_rpm)}; allowed ${lowest} to ${highest} rpm`);
  if (typeof throttle !== 'number' || !(throttle >= 0 && throttle <= 1))
    refuse('throttle', `Throttle is ${shown(throttle)}; allowed 0 (shut) to 1 (open)`);

  const design = readDesignOf(data['design'], shelf);
  const changes = readChanges(set);
  if (!design.ok) faults.push(...design.faults);
  if (!changes.ok) faults.push(...changes.faults);
  if (!design.ok || !changes.ok) return failure(faults);
  const changed = changes.value.length > 0 ? setValues(design.value, changes.value) : design;
  if (!changed.ok) faults.push(...changed.faults);
  if (!changed.ok || faults.length > 0) return failure(faults);
  return success({
    design: changed.value,
    operating: { speed: (speed_rpm as number) * rpm, throttle: throttle as number },
  });
}

function readDesignOf(design: unknown, shelf: DesignShelf): Outcome<Design> {
  if (typeof design === 'string') {
    const loaded = shelf.take(design);
    return loaded.ok
      ? loaded
      : failure(loaded.faults.map(({ path, message }) => ({ path: path || 'design', message })));
  }
  if (isGroup(design)) return readDesignData(design);
  const message = `Design is ${shown(design)}; allowed: a preset, a file or a whole design { … }`;
  return failure([{ path: 'design', message }]);
}

type Change = Parameters<typeof setValues>[1][number];

/** Values as in a design file, or as they are typed, to what `setValues` takes. */
function readChanges(set: unknown): Outcome<readonly Change[]> {
  if (!isGroup(set)) {
    const message = `Changes are ${shown(set)}; allowed: a group of values { "path": value, … }`;
    return failure([{ path: 'set', message }]);
  }
  const faults: Fault[] = [];
  const changes = Object.entries(set).map(([path, value]) => {
    const text = typed(value);
    if (text === null)
      faults.push({
        path,
        message: `is ${shown(value)}; allowed: a number, a text, true, false, null or [numbers]`,
      });
    return { path, text: text ?? '' };
  });
  return faults.length > 0 ? failure(faults) : success(changes);
}

function typed(value: unknown): string | null {
  if (value === null) return 'none';
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return String(value);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value) && value.every((each) => typeof each === 'number')) return value.join('; ');
  return null;
}
