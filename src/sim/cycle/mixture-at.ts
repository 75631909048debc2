import { lambdaAt } from '../gas/lambda-at.ts';
import { designMixture } from '../gas/mixture.ts';
import { gasOf } from './gas-of.ts';
import type { Model } from './model.ts';

/**
 * The same model on another mixture, with the constituents of that; itself where its λ is that already.
 *
 * @param lambda - within what `designMixture` takes [-]
 */
export function withLambda(model: Model, lambda: number): Model {
  const { engine } = model;
  if (lambda === engine.charge.lambda) return model;
  const charge = { ...engine.charge, lambda };
  const mixture = designMixture(charge, engine.ambient);
  if (!mixture.ok) throw new RangeError(mixture.faults.map(({ message }) => message).join('; '));
  return { ...model, engine: { ...engine, charge }, ...gasOf(mixture.value, engine.combustion) };
}

/** The model with the mixture that its design states for a crank speed [rad/s]. Of a jet, what was last worked out or first guessed. */
export const modelAt = (model: Model, speed: number): Model =>
  withLambda(model, lambdaAt(model.engine.charge, speed));
