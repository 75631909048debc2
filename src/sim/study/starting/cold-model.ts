import type { Model } from '../../cycle/model.ts';
import type { WallPatch } from '../../engine.ts';

/** The same model with every wall at the temperature of the air around it: an engine that has stood overnight. */
export function coldModel(model: Model): Model {
  const { engine } = model;
  const { temperature } = engine.ambient;
  const cold = (wall: WallPatch): WallPatch => ({ ...wall, temperature });
  return {
    ...model,
    engine: {
      ...engine,
      intake: { ...engine.intake, boxWall: cold(engine.intake.boxWall) },
      plenum: { ...engine.plenum, wall: cold(engine.plenum.wall) },
      crankcase: engine.crankcase && { ...engine.crankcase, wall: cold(engine.crankcase.wall) },
      passages: { ...engine.passages, wall: cold(engine.passages.wall) },
      collectors: engine.collectors.map((collector) => ({ ...collector, wall: cold(collector.wall) })),
      cylinderHeat: {
        ...engine.cylinderHeat,
        crownTemperature: temperature,
        headTemperature: temperature,
        linerTemperature: temperature,
      },
    },
  };
}
