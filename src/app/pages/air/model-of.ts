import type { Design } from '../../../design/schema/design.ts';
import { buildModel } from '../../../sim/index.ts';
import type { Model } from '../../../sim/index.ts';
import type { Bench } from '../../presets.ts';

const models = new WeakMap<Design, Model>();

/** The model of what stands on the bench, for figures that take no solving. Built when first asked for: some milliseconds. */
export function modelOf({ design, engine }: Bench): Model {
  const known = models.get(design);
  if (known) return known;
  const built = buildModel(engine);
  if (!built.ok) throw new Error(`${design.name}: ${built.faults.map(({ message }) => message).join('; ')}`);
  models.set(design, built.value);
  return built.value;
}
