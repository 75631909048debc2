import { toEngine } from '../../src/design/to-engine.ts';
import type { Engine, Model, OperatingPoint, PointResult, SolveOptions } from '../../src/sim/index.ts';
import { buildModel, solveToEnd } from '../../src/sim/index.ts';
import type { SolvedPoint } from '../../src/sim/results/point-result.ts';
import { rpm } from '../../src/sim/units.ts';
import { preset, sound } from '../design/designs.ts';

export const PRESET_NAMES = ['angelica-14', 'caraway-1', 'dill-3', 'lovage-7', 'parsley-5'] as const;
export type PresetName = (typeof PRESET_NAMES)[number];

export const presetEngine = (name: PresetName): Engine => toEngine(preset(name));

/** What may be changed in an engine: any part of any branch; a list is given whole. */
export type Changes<T> = T extends readonly unknown[]
  ? T
  : T extends object
    ? { readonly [K in keyof T]?: Changes<T[K]> }
    : T;

/** A copy with the stated branches changed. Lists, and objects that tell their kind, are replaced. */
export function changed<T>(whole: T, changes: Changes<NoInfer<T>>): T {
  if (!isBranch(whole) || !isBranch(changes) || 'kind' in changes) return changes as T;
  const copy: Record<string, unknown> = { ...whole };
  for (const [key, change] of Object.entries(changes)) copy[key] = changed(copy[key], change as never);
  return copy as T;
}

const isBranch = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export const modelOf = (engine: Engine): Model => sound(buildModel(engine));

export const at = (speed_rpm: number, throttle = 1): OperatingPoint => ({ speed: speed_rpm * rpm, throttle });

export const solveAt = (
  engine: Engine,
  speed_rpm: number,
  options?: SolveOptions,
  throttle = 1,
): PointResult => solveToEnd(modelOf(engine), at(speed_rpm, throttle), options).result;

/** The figures of a point that must have an answer; a test that gets here without one shows the reason. */
export function solved(result: PointResult): SolvedPoint {
  if (!result.converged) throw new Error(`${result.speed / rpm} rpm: ${result.reason}`);
  return result;
}

/** Three speeds: cranking, middle and top of what is wanted [rpm]. */
export const spreadOfSpeeds = ({ wanted }: Engine): readonly [number, number, number] => [
  Math.round(wanted.crankingSpeed / rpm),
  Math.round((wanted.crankingSpeed + wanted.maxSpeed) / 2 / rpm),
  Math.round(wanted.maxSpeed / rpm),
];

/** Every number of a result that is not finite, by its path. */
export function notFinite(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} = ${value}`];
  if (value instanceof Float64Array)
    return value.every((x) => Number.isFinite(x))
      ? []
      : [`${path} holds ${value.find((x) => !Number.isFinite(x))}`];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) =>
    notFinite(each, path === '' ? key : `${path}.${key}`),
  );
}
