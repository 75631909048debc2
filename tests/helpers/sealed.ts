import { Period } from '../../src/sim/cycle/period.ts';
import type { Observer } from '../../src/sim/cycle/period.ts';
import { buildSchedule } from '../../src/sim/cycle/schedule.ts';
import { atRest } from '../../src/sim/cycle/start.ts';
import { CycleSystem } from '../../src/sim/cycle/system.ts';
import type { Engine, OperatingPoint } from '../../src/sim/index.ts';
import { ros34pw2 } from '../../src/sim/numerics/rosenbrock-w.ts';
import { changed, modelOf, presetEngine } from './engines.ts';

const NO_FLOW = { forward: 0, backward: 0 };

/** Caraway 1 with windows, passage entry and clearances that pass nothing, no fire and no heat to any wall. */
export function sealedEngine(): Engine {
  const engine = presetEngine('caraway-1');
  const cold = { area: 0 };
  return changed(engine, {
    windows: { exhaustDischarge: NO_FLOW, transferDischarge: NO_FLOW },
    passages: { entryDischarge: NO_FLOW, wall: cold },
    plenum: { wall: cold },
    intake: { boxWall: cold },
    blower: { clearanceArea: 0, rippleDepth: 0 },
    collectors: engine.collectors.map((collector) => changed(collector, { wall: cold })),
    combustion: { enabled: false },
    cylinderHeat: { annandA: 0, annandC: 0 },
  });
}

export interface Rig {
  readonly system: CycleSystem;
  readonly state: Float64Array;
  /** Advances `state`, records behind it, over one turn with the given error a step. */
  run(tolerance: number, observe?: Observer): void;
}

/** An engine full of air at ambient state, compressed in the cylinder, ready to be turned once. */
export function rigOf(engine: Engine, point: OperatingPoint): Rig {
  const system = new CycleSystem(modelOf(engine), point);
  const state = new Float64Array(system.size);
  state.set(atRest(system).state);
  // Piston at the top: compressed, so that it does not freeze on the way down.
  for (const node of system.model.network.at.cylinders) system.gas.pack(state, node, 15e5, 700, [1, 0, 0]);
  return {
    system,
    state,
    run(tolerance, observe) {
      const period = new Period(system, buildSchedule(system.model.geometry.cylinders, 1), ros34pw2);
      const end = period.adapt(state, { tolerance, longest: 0.5 }, true, observe);
      if (!end.ok) throw new Error(end.reason);
    },
  };
}
