import type { Model } from '../cycle/model.ts';
import { plenumVolume } from '../geometry/plenum-volume.ts';

/**
 * What mixture fills and wets between where fuel joins the air and the cylinders [m^3]: inlet box, plenum and passages behind a
 * carburettor, with the crankcase where it is part of the plenum; the passages alone where fuel joins at their mouths; nothing where it
 * joins in the cylinders.
 */
export function wettedVolume({ engine, geometry }: Pick<Model, 'engine' | 'geometry'>): number {
  const { charge, intake, passages } = engine;
  if (charge.feed === 'cylinders') return 0;
  const mouths = geometry.cylinders.length * passages.volume;
  if (charge.feed === 'passages') return mouths;
  return mouths + intake.boxVolume + plenumVolume(engine);
}
