import type { Model } from '../../cycle/model.ts';

/**
 * The same model with the ripple averaged over its phase, so that points repeat every turn: what a comparison of gear ratios needs,
 * whose phases differ.
 *
 * @param ratio - rotor speed over crank speed; the model's own unless given [-]
 */
export const evenModel = (model: Model, ratio = model.drive.ratio): Model => ({
  ...model,
  drive: { ...model.drive, ratio, turns: 1, phaseAveraged: true },
});
