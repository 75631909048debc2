import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Model, OperatingPoint } from '../src/sim/index.ts';
import { CACHE } from './core/cores.ts';
import type { State } from './core/cores.ts';
import { figuresOf } from './figures.ts';

/** A quarter of the step, and ten times as many periods allowed to repeat to one of these. */
const PARTS = 4;
const MOST_CYCLES = 3000;
/** Finest first: where round-off or a state that chatters stops the one, the next is taken. */
const CHANGES = [1e-10, 1e-9, 1e-8, 1e-7];

const FILE = join(CACHE, 'references.json');
const kept: Record<string, number[]> = existsSync(FILE)
  ? (JSON.parse(readFileSync(FILE, 'utf8')) as Record<string, number[]>)
  : {};

/**
 * Figures of the same model stepped far finer. Kept on the disk: solved once for each state of the sources, design and point.
 */
export function referenceFigures({ core, key }: State, model: Model, point: OperatingPoint): number[] {
  const what = JSON.stringify([key, PARTS, CHANGES, model.engine, point]);
  const name = createHash('sha256').update(what).digest('hex').slice(0, 24);
  kept[name] ??= finer(core, model, point);
  mkdirSync(CACHE, { recursive: true });
  writeFileSync(FILE, JSON.stringify(kept));
  return kept[name];
}

function finer(core: State['core'], model: Model, point: OperatingPoint): number[] {
  for (const change of CHANGES) {
    const { result } = core.solveToEnd(model, point, { parts: PARTS, change, mostCycles: MOST_CYCLES });
    if (result.converged) return figuresOf(result);
  }
  throw new Error(`no reference for ${model.engine.name} at ${point.speed} rad/s`);
}
