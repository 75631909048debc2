import { buildModel } from '../../cycle/model.ts';
import type { Model } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import type { SolvedStart } from '../../cycle/solve.ts';
import { solve } from '../../cycle/solve.ts';
import type { DirectionalCoefficient, Engine } from '../../engine.ts';
import type { DischargeCoefficients } from '../../exchange/discharge-table.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { doing } from '../study-step.ts';
import type { Study } from '../study-step.ts';

/** What may stand in the way of the air, displacement apart. */
export const OBSTACLES = ['slip', 'throttle', 'windows', 'exhaust'] as const;
export type Obstacle = (typeof OBSTACLES)[number];

export interface AirLimit {
  /** What limits the delivery ratio, by the rule of `airLimit`. */
  readonly by: Obstacle | 'displacement';
  /** Delivery ratio with one obstacle lifted; null where that has no answer [-]. */
  readonly lifted: Readonly<Record<Obstacle, number | null>>;
  /** By how much the displacement falls short, slip and densities as they are: wanted over delivered [-]. */
  readonly shortBy: number;
}

const wider = (area: DirectionalCoefficient): DirectionalCoefficient => ({
  forward: 2 * area.forward,
  backward: 2 * area.backward,
});

const widerTable = (table: DischargeCoefficients | null): DischargeCoefficients | null =>
  table && {
    ...table,
    forward: table.forward.map((each) => 2 * each),
    backward: table.backward.map((each) => 2 * each),
  };

/** An engine with one obstacle lifted: clearances shut, or openings of twice the area. */
export function lift(engine: Engine, obstacle: Obstacle): Engine {
  const { windows, passages, intake } = engine;
  switch (obstacle) {
    case 'slip':
      return { ...engine, blower: { ...engine.blower, clearanceArea: 0, slip: null, carriedBackShare: 0 } };
    case 'throttle': {
      const { throttle } = intake;
      const open = { ...throttle, dischargeCoefficient: 2 * throttle.dischargeCoefficient };
      return {
        ...engine,
        intake: { ...intake, throttle: open, restrictor: null, venturi: null, arrester: null },
      };
    }
    case 'windows':
      return {
        ...engine,
        windows: {
          ...windows,
          transferDischarge: wider(windows.transferDischarge),
          transferTable: widerTable(windows.transferTable),
        },
        passages: { ...passages, entryDischarge: wider(passages.entryDischarge) },
      };
    case 'exhaust':
      return {
        ...engine,
        windows: {
          ...windows,
          exhaustDischarge: wider(windows.exhaustDischarge),
          exhaustTable: widerTable(windows.exhaustTable),
        },
        collectors: engine.collectors.map((collector) => ({
          ...collector,
          outletDischarge: wider(collector.outletDischarge),
        })),
      };
  }
}

/**
 * What limits the air at an operating point, by trying:
 *
 *   lift one obstacle at a time: clearances shut; throttle of twice the area and nothing in line with it; transfer windows and passage
 *   entries of twice the area; exhaust windows and collector outlets of twice the area.
 *   The one that alone brings the delivery ratio to what is wanted is the limit, of several the one that brings most.
 *   Where none does, the displacement is. Where enough is delivered, the one that would bring most limits next.
 *
 * @param cycle - the solved point, and `start` its solution to go on from
 */
export function* airLimit(
  model: Model,
  point: OperatingPoint,
  cycle: SolvedPoint,
  start: SolvedStart | null,
): Study<AirLimit> {
  const lifted: Record<Obstacle, number | null> = {
    slip: null,
    throttle: null,
    windows: null,
    exhaust: null,
  };
  for (const obstacle of OBSTACLES) {
    const built = buildModel(lift(model.engine, obstacle));
    if (!built.ok) continue;
    const { result } = yield* doing(`without ${obstacle}`, solve(built.value, point, { start }));
    if (result.converged) lifted[obstacle] = result.engine.deliveryRatio;
  }
  const { deliveryRatio: wanted } = model.engine.wanted;
  const { deliveryRatio } = cycle.engine;
  return { by: judge(lifted, deliveryRatio, wanted), lifted, shortBy: wanted / deliveryRatio };
}

/** The rule of `airLimit` on its figures. */
export function judge(
  lifted: AirLimit['lifted'],
  delivered: number,
  wanted: number,
): Obstacle | 'displacement' {
  const gains = OBSTACLES.map((obstacle) => ({ obstacle, reached: lifted[obstacle] ?? -Infinity }));
  const best = gains.reduce((most, each) => (each.reached > most.reached ? each : most));
  if (delivered >= wanted) return best.reached > delivered ? best.obstacle : 'displacement';
  return best.reached >= wanted ? best.obstacle : 'displacement';
}
