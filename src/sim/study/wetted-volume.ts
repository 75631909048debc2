import type { Model } from '../cycle/model.ts';
import { plenumVolume } from '../geometry/plenum-volume.ts';

/**
 * What mixture fills and wets between where fuel joins the air and the cylinders [m^3]: inlet box, plenum and passages behind a
 * carburettor, what stands between two stages too, with the crankcase where it is part of the plenum; the passages alone where fuel joins at their mouths; nothing where it
 * joins in the cylinders.
 */
export function wettedVolume({ engine, geometry }: Pick<Model, 'engine' | 'geometry'>): number {
  const { charge, intake, passages, secondStage } = engine;
  if (charge.feed === 'cylinders') return 0;
  const mouths = geometry.cylinders.length * passages.volume;
  if (charge.feed === 'passages') return mouths;
  const between = secondStage ? secondStage.volume + (secondStage.cooler?.volume ?? 0) : 0;
  return mouths + intake.boxVolume + between + plenumVolume(engine);
}
