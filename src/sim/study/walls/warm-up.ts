import type { Engine } from '../../engine.ts';
import type { GasSides } from '../../heat-transfer/walls/wall-network.ts';
import { METAL, networkOf } from '../../heat-transfer/walls/wall-network.ts';
import { wallConductances } from '../../heat-transfer/walls/wall-conductances.ts';
import type { WallTransient } from '../../heat-transfer/walls/wall-transient.ts';
import { wallTransient } from '../../heat-transfer/walls/wall-transient.ts';
import type { WallFigures } from '../../results/point-result.ts';

/** Share of the piston's mass that counts as its crown [-]. Typical. */
const CROWN_SHARE = 0.4;

/** Course of one part [s, K]. */
export interface WallCourse {
  readonly time: readonly number[];
  readonly crown: readonly number[];
  readonly head: readonly number[];
  readonly liner: readonly number[];
}

export interface WarmUp {
  readonly warming: WallCourse;
  /** After a stop from where warming ends: no heat from the gas, still air. */
  readonly standing: WallCourse;
  /** Slowest mode of each [s]. */
  readonly warmingTime: number;
  readonly standingTime: number;
  /** Highest liner after the stop, and when [K, s]. */
  readonly linerPeak: { readonly temperature: number; readonly time: number };
}

const POINTS = 61;
const NO_GAS: GasSides = {
  crown: { heat: 0, conductance: 0, at: 0 },
  head: { heat: 0, conductance: 0, at: 0 },
  liner: { heat: 0, conductance: 0, at: 0 },
};

/**
 * How one cylinder's walls warm from the temperature of the surroundings at a solved point, and cool when it stops there.
 *
 * Valid: the gas side answers as at the solved point, from the first turn; crankcase as given; air of the settled state while
 * running, free still air afterwards. Drawn over four times the slowest mode each.
 */
export function warmUp({ cylinderHeat, cylinder, ambient }: Engine, walls: WallFigures): WarmUp {
  const { cooling, crownAreaRatio } = cylinderHeat;
  const { piston, barrel, head, specificHeat } = cooling;
  const crownArea = crownAreaRatio * 0.25 * Math.PI * cylinder.bore ** 2;
  const masses = [CROWN_SHARE * piston.mass, (1 - CROWN_SHARE) * piston.mass, head.mass, barrel.mass];
  const capacities = masses.map((mass) => mass * specificHeat);
  const side = (part: 'crown' | 'head' | 'liner') => {
    const { conductance, gasTemperature } = walls.gasSide[part];
    return { heat: 0, conductance, at: gasTemperature };
  };
  const course = (airSpeed: number, air: number, gas: GasSides, start: readonly number[]) => {
    const c = wallConductances(cylinder.bore, crownArea, cooling, airSpeed);
    const { matrix, load } = networkOf(c, gas, { air, crankcase: cooling.crankcaseTemperature });
    return wallTransient(matrix, load, capacities, start);
  };
  const running = { crown: side('crown'), head: side('head'), liner: side('liner') };
  const cold = METAL.map(() => ambient.temperature);
  const warm = course(walls.airSpeed, walls.airTemperature, running, cold);
  const stopped = course(
    0,
    ambient.temperature,
    NO_GAS,
    METAL.map((part) => walls[part]),
  );
  const standing = drawn(stopped);
  const peak = standing.liner.indexOf(Math.max(...standing.liner));
  return {
    warming: drawn(warm),
    standing,
    warmingTime: warm.timeConstants[0],
    standingTime: stopped.timeConstants[0],
    linerPeak: { temperature: standing.liner[peak]!, time: standing.time[peak]! },
  };
}

/** Points closer together at the beginning, where crowns are quick. */
function drawn(transient: WallTransient): WallCourse {
  const slowest = transient.timeConstants[0];
  const span = 4 * (Number.isFinite(slowest) ? slowest : 600);
  const time = Array.from({ length: POINTS }, (_, i) => span * (i / (POINTS - 1)) ** 2);
  const states = time.map((t) => transient.at(t));
  const column = (part: (typeof METAL)[number]) => states.map((state) => state[METAL.indexOf(part)]!);
  return { time, crown: column('crown'), head: column('head'), liner: column('liner') };
}
