import type { GasStates } from '../gas-states.ts';
import type { Memory } from '../memory.ts';
import type { Pistons } from '../pistons.ts';
import type { Model } from '../model.ts';
import type { CylinderWalls } from '../sources/cylinder-walls.ts';
import { ZoneExchange } from '../sources/zone-exchange.ts';
import { Zones } from '../zones.ts';
import type { Parts } from './flow-elements.ts';

/** Null where every cylinder is one mixed volume; so it is where zones mix at once. */
export function zonesOf(
  { engine, network, fresh, outflow }: Model,
  pistons: Pistons,
  memory: Memory,
  gas: GasStates,
): Zones | null {
  return engine.scavenging.zones === null || outflow.mixesPerfectly
    ? null
    : new Zones(network.at.cylinders, fresh, pistons, memory, gas);
}

export function zoneExchangeOf(
  { model, point, pistons, memory, gas, edges }: Parts,
  zones: Zones,
  walls: CylinderWalls,
): ZoneExchange {
  const { mixingAngle } = model.engine.scavenging.zones!;
  const highest = point.speed / mixingAngle;
  const { through } = model.network;
  return new ZoneExchange(through, model.fresh, highest, zones, walls, pistons, memory, gas, edges);
}
