import { dropEvaporationRate } from '../../gas/drop-evaporation.ts';
import { liquidEnthalpy } from '../../gas/fuel.ts';
import { LIQUID_INDEX } from '../../gas/mixture.ts';
import { restOfTurn } from '../../geometry/angles.ts';
import { trapAngle } from '../schedule.ts';
import { CylinderInjection } from '../sources/cylinder-injection.ts';
import { Evaporating } from '../sources/evaporating.ts';
import type { InjectedFuel } from '../sources/passage-injection.ts';
import { PassageInjection } from '../sources/passage-injection.ts';
import type { Parts } from './flow-elements.ts';

/** Fuel is taken to be as warm as the air outside. */
function injected({ model }: Parts): InjectedFuel {
  const { mixture, engine } = model;
  return {
    fuelPerAir: 1 / mixture.airFuelRatio,
    enthalpy: liquidEnthalpy(mixture.fuel, engine.ambient.temperature),
  };
}

/** Null where fuel joins the air elsewhere. */
export function passageInjectionOf(parts: Parts): PassageInjection | null {
  const { model, gas, edges } = parts;
  if (model.engine.charge.feed !== 'passages') return null;
  return new PassageInjection(model.network.through.entries, injected(parts), gas, edges);
}

/** Null where fuel joins the air elsewhere. */
export function cylinderInjectionOf(parts: Parts): CylinderInjection | null {
  const { model, instant, memory, gas } = parts;
  const { charge } = model.engine;
  if (charge.feed !== 'cylinders') return null;
  const cylinders = model.network.at.cylinders.map((node, j) => {
    const angle = trapAngle(model.geometry.cylinders[j]) + charge.injection.delay;
    return { node, beginAngle: restOfTurn(angle) };
  });
  return new CylinderInjection(cylinders, charge.injection.duration, injected(parts), instant, memory, gas);
}

/** Null where no liquid is carried. What has not evaporated before the plenum does so behind it. */
export function evaporatingOf({ model, gas }: Parts): Evaporating | null {
  const { engine, mixture, network, set } = model;
  if (set.count <= LIQUID_INDEX) return null;
  const { passages, cylinders, collectors } = network.at;
  return new Evaporating(
    [...passages, ...cylinders, ...collectors],
    dropEvaporationRate(mixture.fuel, engine.charge.dropDiameter),
    mixture.fuel,
    gas,
  );
}
