import { crankcaseFaults } from '../sim/geometry/check-crankcase.ts';
import { geometryOf } from '../sim/geometry/geometry-of.ts';
import { failure, success } from '../sim/outcome.ts';
import type { Fault, Outcome } from '../sim/outcome.ts';
import { crossCheck } from './cross-checks.ts';
import { toDesignPath } from './geometry-faults.ts';
import { fieldAt } from './fields.ts';
import { openPath, valueAt, writePath } from './path.ts';
import type { Path } from './path.ts';
import { checkSchema } from './schema-faults.ts';
import type { Design } from './schema/design.ts';
import { toEngine } from './to-engine.ts';

/** Parts from which rods and windows are built. */
const SHAPE = /^(crank|cylinder|windows)\b/;

/**
 * Data of the present version to a complete design, or every fault at once: keys, types, ranges, combinations, and
 * rods and windows that cannot be built. Values that are fine are checked against each other even where others are
 * not: the faulty ones are left at their defaults meanwhile, and what would speak of them is not reported.
 */
export function validate(data: unknown): Outcome<Design> {
  const { design, faults } = checkSchema(data);
  const rest = design ?? checkSchema(without(data, faults)).design;
  if (!rest) return failure(plain(faults));
  const touched = faults.map((fault) => fault.path);
  const cross = crossCheck(rest).filter(
    ({ uses }) => !touched.some((path) => uses.some((use) => meets(path, use))),
  );
  const all: Fault[] = [...plain(faults), ...plain(cross)];
  if (!all.some(({ path }) => path === '' || SHAPE.test(path))) all.push(...shapeFaults(rest));
  return design && all.length === 0 ? success(design) : failure(all);
}

const plain = (faults: readonly Fault[]): Fault[] => faults.map(({ path, message }) => ({ path, message }));

function shapeFaults(design: Design): readonly Fault[] {
  const engine = toEngine(design);
  const built = geometryOf(engine);
  const faults = built.ok ? crankcaseFaults(engine, built.value) : built.faults;
  return faults.map((fault) => toDesignPath(fault, design));
}

/** One path lies on the way to the other. A use that ends in `[` stands for every item of a list. */
const meets = (path: string, use: string): boolean => {
  if (use.endsWith('[')) return path.startsWith(use);
  const within = (outer: string, inner: string) =>
    inner === outer || inner.startsWith(`${outer}.`) || inner.startsWith(`${outer}[`);
  return within(path, use) || within(use, path);
};

/** A copy of the data without what is at fault, so that defaults stand in for it. */
function without(data: unknown, faults: readonly { steps: Path }[]): unknown {
  const copy: unknown = structuredClone(data);
  for (const { steps } of faults) {
    if (steps.length === 0) return undefined;
    // A number in a list of numbers takes the list with it; an item that is no group becomes an empty one.
    const last = steps.at(-1)!;
    const inNumbers =
      typeof last === 'number' && fieldAt(openPath(writePath(steps.slice(0, -1)))) !== undefined;
    const target = inNumbers ? steps.slice(0, -1) : steps;
    const holder = valueAt(copy, target.slice(0, -1));
    if (holder === null || typeof holder !== 'object') continue;
    if (Array.isArray(holder)) holder[Number(last)] = {};
    else Reflect.deleteProperty(holder, target.at(-1)!);
  }
  return copy;
}
