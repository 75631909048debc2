import { parseArgs } from 'node:util';
import type { ParseArgsConfig } from 'node:util';
import { failure, success } from '../../sim/outcome.ts';
import type { Fault, Outcome } from '../../sim/outcome.ts';
import { readChange, readSpeeds, readThrottle } from '../arguments.ts';
import { loadDesign } from '../load-design.ts';
import type { Design } from '../../design/schema/design.ts';
import { toDesignPath } from '../../design/geometry-faults.ts';
import { toEngine } from '../../design/to-engine.ts';
import { buildModel } from '../../sim/index.ts';
import type { Model, OperatingPoint } from '../../sim/index.ts';

type Options = NonNullable<ParseArgsConfig['options']>;
type Values = Readonly<Record<string, string | boolean | (string | boolean)[] | undefined>>;

/** What every study begins with. */
export interface StudyRequest {
  readonly design: Design;
  readonly model: Model;
  readonly values: Values;
}

/**
 * Reads `FILE [--set path=value …]` and the study's own options, and builds the design's model.
 *
 * @param argv    - what follows the study's name
 * @param options - its own, beside --set
 */
export function readStudyArguments(argv: readonly string[], options: Options): Outcome<StudyRequest> {
  let parsed;
  try {
    parsed = parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: { ...options, set: { type: 'string', multiple: true } },
    });
  } catch (error) {
    return failure([{ path: '', message: (error as Error).message }]);
  }
  const [file, ...more] = parsed.positionals;
  if (file === undefined) return failure([{ path: '', message: 'no design file or preset is given' }]);
  if (more.length > 0) return failure([{ path: '', message: `too much is given: ${more.join(' ')}` }]);
  const values = parsed.values as Values;
  const faults: Fault[] = [];
  const changes = ((values['set'] as string[] | undefined) ?? []).flatMap((text) => {
    const change = readChange(text);
    if (change.ok) return [change.value];
    faults.push(...change.faults);
    return [];
  });
  if (faults.length > 0) return failure(faults);
  const design = loadDesign(file, changes);
  if (!design.ok) return design;
  const model = buildModel(toEngine(design.value));
  if (!model.ok) return failure(model.faults.map((fault) => toDesignPath(fault, design.value)));
  return success({ design: design.value, model: model.value, values });
}

/** What every study of one operating point takes. */
export const POINT_OPTIONS = {
  speed: { type: 'string' },
  throttle: { type: 'string' },
  json: { type: 'boolean' },
} as const satisfies Options;

/** The operating point that is asked for, by --speed and --throttle; `usual` where no speed is typed, null where one must be [rad/s]. */
export function readPoint(values: Values, usual: number | null = null): Outcome<OperatingPoint> {
  const typed = values['speed'] as string | undefined;
  const speed = typed === undefined && usual !== null ? success([usual]) : readSpeeds('one', typed);
  const throttle = readThrottle(values['throttle'] as string | undefined);
  if (!speed.ok || !throttle.ok) return failure(faultsOf(speed, throttle));
  return success({ speed: speed.value[0]!, throttle: throttle.value });
}

/** Everything that is wrong with any of what was read. */
export const faultsOf = (...read: readonly Outcome<unknown>[]): Fault[] =>
  read.flatMap((each) => (each.ok ? [] : each.faults));
