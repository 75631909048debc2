import { solveToEnd } from '../../src/sim/index.ts';
import type { SolvedPoint } from '../../src/sim/results/point-result.ts';
import type { PresetName } from './engines.ts';
import { changed, modelOf, presetEngine, solved } from './engines.ts';

/** What a volume still gains over a period is missing from the energy balance, so the period must repeat well. */
const CHANGE = 1e-10;

const points = new Map<string, SolvedPoint>();

/** A preset at its own speed, throttle open, with wall temperatures as they are given, or worked out; solved once. */
export function presetPoint(name: PresetName, solvesWalls: boolean): SolvedPoint {
  const key = `${name} ${solvesWalls}`;
  const known = points.get(key);
  if (known) return known;
  const engine = changed(presetEngine(name), { cylinderHeat: { solvesWalls } });
  const at = { speed: engine.wanted.speed, throttle: 1 };
  const point = solved(solveToEnd(modelOf(engine), at, { change: CHANGE }).result);
  points.set(key, point);
  return point;
}
