import { buildModel } from '../../../sim/index.ts';
import type { Engine, Model } from '../../../sim/index.ts';

const built = new WeakMap<Engine, Model | null>();

/** The model of an engine on the page, built once; null where it cannot be built. */
export function modelOf(engine: Engine): Model | null {
  const known = built.get(engine);
  if (known !== undefined) return known;
  const model = buildModel(engine);
  const found = model.ok ? model.value : null;
  built.set(engine, found);
  return found;
}
