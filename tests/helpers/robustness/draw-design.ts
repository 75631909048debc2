import { FIELDS } from '../../../src/design/fields.ts';
import type { Field } from '../../../src/design/fields.ts';
import { presetText } from '../../design/designs.ts';
import type { Data, Factor } from './factors.ts';
import { putAt } from './factors.ts';

/** A design as typed, and where it is to run. */
export interface Drawn {
  readonly data: Data;
  readonly speed_rpm: number;
  readonly throttle: number;
  /** Factor by factor, what it is. */
  readonly levels: readonly string[];
}

/** Numbers that may be drawn freely: windows, rods and rotors hang together, and would hardly ever make an engine. */
const FREE = FIELDS.filter(
  ({ kind, path, plausible }) =>
    kind === 'number' &&
    plausible !== null &&
    /^(blower|plenum|exhaust|fuel|cooling|surroundings|crank\.(friction|crankcase|load))\b/.test(path) &&
    !/^blower\.(gears|tipDiameter|rotorLength|centreDistance|rotorBore|displacement|clearanceArea|helix|impeller)|Table|smoothing|fullOpen|reseating|altitude/.test(
      path,
    ),
);

/** Of the free numbers, the share that is drawn in each design. */
const DRAWN = 0.2;

function within({ plausible }: Field, draw: () => number): number {
  const [low, high] = plausible!;
  const value = low > 0 ? low * (high / low) ** draw() : low + (high - low) * draw();
  return Number(value.toPrecision(4));
}

/** A group that is there, so that a number in it may be set; switched off or left to its default, it stays. */
function stands(data: Data, path: string): boolean {
  const groups = path.replaceAll('[]', '.0').split('.').slice(1, -1);
  let place: unknown = data[path.split('.')[0]!];
  for (const step of groups) {
    if (place === undefined) return true;
    if (place === null) return false;
    place = (place as Data)[step];
  }
  return place !== null;
}

/**
 * A design of given levels, from the small three-cylinder example, with numbers drawn in their plausible ranges and a blower of a
 * third to three times its size.
 *
 * @param speeds - between which it runs [rpm]
 */
export function drawDesign(
  factors: readonly Factor[],
  row: readonly number[],
  draw: () => number,
  [slowest, fastest]: readonly [number, number] = [400, 8000],
): Drawn {
  const data = JSON.parse(presetText('dill-3.json')) as Data;
  factors.forEach(({ levels }, i) => levels[row[i]!]!.put(data));
  for (const field of FREE)
    if (draw() < DRAWN && stands(data, field.path)) putAt(data, field.path, within(field, draw));
  const { rows } = data['crank'] as { rows: { cylinders: number }[] };
  const swept_cc = 78 * rows.reduce((sum, { cylinders }) => sum + cylinders, 0);
  const { count } = data['blower'] as { count: number };
  putAt(data, 'blower.displacement_cc', Number(((swept_cc / count) * 0.33 * 9 ** draw()).toPrecision(4)));
  return {
    data,
    speed_rpm: Math.round(slowest * (fastest / slowest) ** draw()),
    throttle: Number((0.02 + 0.98 * Math.sqrt(draw())).toPrecision(3)),
    levels: factors.map(({ levels }, i) => levels[row[i]!]!.name),
  };
}

/** Rows beyond the covering array: any level of any factor. */
export const anyRow = (factors: readonly Factor[], draw: () => number): readonly number[] =>
  factors.map(({ levels }) => Math.floor(draw() * levels.length));
