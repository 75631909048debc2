import { toDesignPath } from '../../../src/design/geometry-faults.ts';
import { toEngine } from '../../../src/design/to-engine.ts';
import { validate } from '../../../src/design/validate.ts';
import { buildModel, solveToEnd } from '../../../src/sim/index.ts';
import type { SolvedPoint } from '../../../src/sim/index.ts';
import { at, notFinite } from '../engines.ts';
import type { Drawn } from './draw-design.ts';

/** How a design ended, and whether that is as it must be. */
export interface Judgement {
  readonly end: 'refused' | 'solved' | 'no periodic state' | 'out of range' | 'broken';
  /** What was said of it: fault, reason, or what is wrong with the answer. */
  readonly said: string;
  /** Worst conservation defect and change; null where there is no answer. */
  readonly defect: number | null;
  readonly change: number | null;
}

/** Largest conservation defect and change that count. */
export const MOST_DEFECT = 1e-9;
export const MOST_CHANGE = 1e-6;

const UNREADABLE = /NaN|undefined|Infinity|\[object/;

/** Reads, builds and solves a drawn design; nothing it may come to throws. */
export function judge({ data, speed_rpm, throttle }: Drawn, mostCycles: number): Judgement {
  const bare = (end: Judgement['end'], said: string): Judgement => ({
    end: UNREADABLE.test(said) || said === '' ? 'broken' : end,
    said,
    defect: null,
    change: null,
  });
  try {
    const design = validate(data);
    if (!design.ok) return bare('refused', `${design.faults[0]!.path}: ${design.faults[0]!.message}`);
    const model = buildModel(toEngine(design.value));
    if (!model.ok) {
      const { path, message } = toDesignPath(model.faults[0]!, design.value);
      return bare('refused', `${path}: ${message}`);
    }
    const { result } = solveToEnd(model.value, at(speed_rpm, throttle), { mostCycles });
    if (!result.converged)
      return bare(/left the range/.test(result.reason) ? 'out of range' : 'no periodic state', result.reason);
    return answered(result);
  } catch (error) {
    return bare('broken', `threw ${error instanceof Error ? error.message : String(error)}`);
  }
}

function answered(result: SolvedPoint): Judgement {
  const { mass, species, energy, change } = result.residuals;
  const defect = Math.max(mass, species, energy);
  const wrong = [
    ...notFinite(result),
    ...result.notes.filter(({ text }) => UNREADABLE.test(text)).map(({ text }) => `unreadable note: ${text}`),
    ...(defect < MOST_DEFECT ? [] : [`conservation defect ${defect.toExponential(1)}`]),
    ...(change < MOST_CHANGE ? [] : [`change ${change.toExponential(1)}`]),
  ];
  return { end: wrong.length > 0 ? 'broken' : 'solved', said: wrong.slice(0, 3).join('; '), defect, change };
}
