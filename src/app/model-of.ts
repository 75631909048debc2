import { buildModel } from '../sim/index.ts';
import type { Engine, Model } from '../sim/index.ts';

const models = new WeakMap<Engine, Model | null>();

/**
 * The model of an engine on the page, for figures that take no solving; null where it cannot be built. Built once, when first asked
 * for: some milliseconds.
 */
export function modelOf(engine: Engine): Model | null {
  const known = models.get(engine);
  if (known !== undefined) return known;
  const built = buildModel(engine);
  const model = built.ok ? built.value : null;
  models.set(engine, model);
  return model;
}
