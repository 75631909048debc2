import type { CycleSystem } from '../cycle/system.ts';
import { trapAngle } from '../cycle/schedule.ts';
import { knockIntegral, octaneNeeded } from '../combustion/knock.ts';
import { wiebePhase } from '../combustion/wiebe.ts';
import { AIR_INDEX, FUEL_INDEX, PRODUCTS_INDEX } from '../gas/mixture.ts';
import { restOfTurn } from '../geometry/angles.ts';
import { TURN } from '../units.ts';
import { followEndGas } from './end-gas.ts';
import type { KnockFigures, Traces } from './point-result.ts';

/** How near the end gas of cylinder j comes to lighting by itself, in the worst turn of the period; null where nothing burns. */
export function knockFigures(
  { model, trapped, memory, omega }: CycleSystem,
  { angle, cylinders }: Pick<Traces, 'angle' | 'cylinders'>,
  j: number,
  turns: number,
  octane: number,
): KnockFigures | null {
  const { combustion, knock } = model.engine;
  const { mass, air, fuel } = trapped[j];
  if (!combustion.enabled || !(memory.burnMass(j) > 0) || !(mass > 0)) return null;
  const { constituents } = model.set;
  const mixture = [
    { gas: constituents[AIR_INDEX], share: air / mass },
    { gas: constituents[FUEL_INDEX], share: fuel / mass },
    { gas: constituents[PRODUCTS_INDEX], share: 1 - (air + fuel) / mass },
  ];
  const cylinder = model.geometry.cylinders[j];
  const shut = trapAngle(cylinder);
  const burning = after(shut, cylinder.sparkAngle) + memory.burnDelay(j);
  const counted = wiebePhase(knock.lastBurnedShare, combustion.wiebeA, combustion.wiebeM);
  const ends = burning + counted * memory.burnDuration(j);
  let integral = 0;
  let hottest = 0;
  for (let turn = 0; turn < turns; turn++) {
    const on = turn * TURN;
    const gas = followEndGas(
      { angle, pressure: cylinders[j].pressure, temperature: cylinders[j].temperature },
      mixture,
      { trapped: shut + on, burning: burning + on, ends: ends + on },
      omega,
    );
    const each = knockIntegral(knock, octane, gas.times, gas.pressures, gas.temperatures);
    if (each < integral) continue;
    integral = each;
    hottest = Math.max(...gas.temperatures);
  }
  return { integral, octaneNeeded: octaneNeeded(knock, octane, integral), endGasTemperature: hottest };
}

/** A spark that strikes while windows are still open lights nothing before they shut [rad]. */
function after(shut: number, spark: number): number {
  const since = restOfTurn(spark - shut);
  return since > TURN / 2 ? shut : shut + since;
}
