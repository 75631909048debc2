import type { Engine } from '../sim/engine.ts';
import { standardAtmosphere } from '../sim/gas/standard-atmosphere.ts';
import { dimensions } from './dimensions.ts';
import { inSi } from './in-si.ts';
import type { Design } from './schema/design.ts';
import { blower, secondStage } from './to-engine/blower.ts';
import { charge } from './to-engine/charge.ts';
import { cylinderHeat } from './to-engine/cylinder-heat.ts';
import { friction } from './to-engine/friction.ts';
import { intake } from './to-engine/intake.ts';
import { load, masses } from './to-engine/running-gear.ts';
import { scavenging } from './to-engine/scavenging.ts';
import { collector, crankcase, passagesOf, plenumOf } from './to-engine/spaces.ts';
import { train } from './to-engine/train.ts';
import { windowsOf } from './to-engine/windows.ts';

/** A complete design becomes the engine that the model computes: base SI, every derived default filled in. */
export function toEngine(design: Design): Engine {
  const si = inSi(design);
  const { cylinder, fuel, surroundings, wanted } = si;
  return {
    name: design.name,
    train: train(si),
    cylinder: {
      bore: cylinder.bore,
      compressionRatio: cylinder.compressionRatio,
      compressionRatioFrom: cylinder.compressionRatioFrom,
      deckClearance: cylinder.deckClearance,
    },
    crankcase: crankcase(si),
    windows: windowsOf(si),
    ambient: {
      pressure: surroundings.pressure ?? standardAtmosphere(surroundings.altitude ?? 0).pressure,
      temperature: surroundings.temperature,
      humidity: surroundings.humidity,
    },
    intake: intake(si),
    blower: blower(si),
    secondStage: secondStage(si),
    plenum: plenumOf(si),
    passages: passagesOf(si),
    collectors: si.exhaust.collectors.map(collector),
    charge: charge(si),
    scavenging: scavenging(si),
    combustion: { ...fuel.burning },
    knock: { ...fuel.knock, activationTemperature: fuel.knock.activation },
    cylinderHeat: cylinderHeat(si),
    friction: friction(si),
    masses: masses(si),
    load: load(si),
    dimensions: dimensions(si),
    wanted: {
      deliveryRatio: wanted.deliveryRatio,
      crankingSpeed: wanted.crankingSpeed,
      starterTorque: wanted.starterTorque ?? null,
      coldFriction: wanted.coldFriction,
      minSpeed: wanted.minSpeed,
      maxSpeed: wanted.maxSpeed,
      speed: wanted.speed,
    },
  };
}
