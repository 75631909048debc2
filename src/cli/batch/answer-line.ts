import { toDesignPath } from '../../design/geometry-faults.ts';
import { toEngine } from '../../design/to-engine.ts';
import { buildModel, solvePoint } from '../../sim/index.ts';
import type { Fault } from '../../sim/outcome.ts';
import { pointJson } from '../point-json.ts';
import type { DesignShelf } from './design-shelf.ts';
import { nameOf, parseLine, readStudyLine } from './study-line.ts';

/** How a line ended: with figures, without an answer, or not understood. */
export type Standing = 'solved' | 'unsolved' | 'faulty';

export interface Answer {
  readonly standing: Standing;
  /** The line to be written, without its line feed. */
  readonly text: string;
}

/**
 * The answer to one line of a study. It depends on the line and the files it names alone: every point is solved from the
 * cold start.
 *
 * @param number - of the line in its file, from 1: what a line without a name goes by
 */
export function answerLine(text: string, number: number, shelf: DesignShelf, solver = solvePoint): Answer {
  const data = parseLine(text);
  const name = nameOf(data, number);
  if (!data.ok) return faulty(name, data.faults);
  const line = readStudyLine(data.value, shelf);
  if (!line.ok) return faulty(name, line.faults);
  const { design, operating } = line.value;
  const model = buildModel(toEngine(design));
  if (!model.ok)
    return faulty(
      name,
      model.faults.map((fault) => toDesignPath(fault, design)),
    );
  const point = solver(model.value, operating);
  return {
    standing: point.converged ? 'solved' : 'unsolved',
    text: JSON.stringify({ name, ...pointJson(design.name, model.value, point) }),
  };
}

const faulty = (name: string, faults: readonly Fault[]): Answer => ({
  standing: 'faulty',
  text: JSON.stringify({ name, faults: faults.map(({ path, message }) => ({ field: path, message })) }),
});

/** The answer to a line at which the program itself failed. */
export function brokenAnswer(text: string, number: number, problem: string): Answer {
  const name = nameOf(parseLine(text), number);
  const reason = `the program failed at this line: ${problem}`;
  return { standing: 'unsolved', text: JSON.stringify({ name, converged: false, reason }) };
}

/** How an answer that was written before had ended; null where the text is none. */
export function readAnswer(text: string): { readonly name: string; readonly standing: Standing } | null {
  const data = parseLine(text);
  if (!data.ok || typeof data.value['name'] !== 'string') return null;
  const { name, faults, converged } = data.value;
  if (faults !== undefined) return { name, standing: 'faulty' };
  return typeof converged === 'boolean' ? { name, standing: converged ? 'solved' : 'unsolved' } : null;
}
