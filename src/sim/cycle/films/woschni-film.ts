import type { CylinderHeat } from '../../engine.ts';
import { restOfTurn } from '../../geometry/angles.ts';
import { woschniCoefficient, woschniVelocity } from '../../heat-transfer/woschni.ts';
import { TURN } from '../../units.ts';
import type { GasStates } from '../gas-states.ts';
import type { Instant } from '../instant.ts';
import type { Memory } from '../memory.ts';
import type { Pistons } from '../pistons.ts';
import type { Film } from './film.ts';

/** Open window area over bore area at which gas exchange has wholly set in [-]. A declared smoothing of the published jump. */
const OPEN_SHARE = 0.05;

/**
 * Woschni's coefficient, see heat-transfer/woschni.ts.
 *
 *   C1 = closed + s (scavenging - closed),   C2 = (1 - s) burning from the spark on,   s = min(1, open area / (0.05 bore area))
 *
 * The state at the spark is in the cylinder's memory, since a period may begin while it burns.
 */
export class WoschniFilm implements Film {
  private readonly openArea: number;

  constructor(
    private readonly settings: CylinderHeat,
    private readonly bore: number,
    private readonly pistonSpeed: number,
    private readonly nodes: readonly number[],
    private readonly pistons: Pistons,
    private readonly instant: Instant,
    private readonly memory: Memory,
    private readonly gas: GasStates,
  ) {
    this.openArea = OPEN_SHARE * 0.25 * Math.PI * bore * bore;
  }

  write(h: Float64Array): void {
    const { nodes, gas, pistons, instant, memory, settings, bore, pistonSpeed } = this;
    const { scavenging, closed, burning, motoredExponent } = settings.woschni;
    for (let j = 0; j < nodes.length; j++) {
      const node = nodes[j];
      const { sparkAngle, sweptVolume } = pistons.cylinders[j];
      const open = Math.min(1, (pistons.exhaustArea[j] + pistons.transferArea[j]) / this.openArea);
      const since = restOfTurn(instant.theta - sparkAngle);
      const sparked = memory.keepsSparks && memory.sparkVolume(j) > 0 && since < 0.5 * TURN;
      const C2 = sparked ? (1 - open) * burning : 0;
      const p = gas.pressure[node];
      const motored = sparked
        ? memory.sparkPressure(j) * (memory.sparkVolume(j) / gas.volume[node]) ** motoredExponent
        : p;
      const share = sparked
        ? memory.sparkTemperature(j) / (memory.sparkPressure(j) * memory.sparkVolume(j))
        : 0;
      const w = woschniVelocity(
        closed + open * (scavenging - closed),
        C2,
        pistonSpeed,
        sweptVolume,
        share,
        p,
        motored,
      );
      h[j] = woschniCoefficient(settings.filmFactor, bore, p, gas.temperature[node], w);
    }
  }
}
