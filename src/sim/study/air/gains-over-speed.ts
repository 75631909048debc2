import type { Model } from '../../cycle/model.ts';
import { rpm } from '../../units.ts';
import type { Study } from '../study-step.ts';
import { oneMoreTooth } from './one-more-tooth.ts';
import type { StepGain } from './one-more-tooth.ts';

/** What one more step of ratio brings at a speed [rad/s]; null without gears or without an answer. */
export interface GainLine {
  readonly speed: number;
  readonly gain: StepGain | null;
}

/** Net gain of one more tooth, speed by speed: see `oneMoreTooth`. */
export function* gainsOverSpeed(
  model: Model,
  speeds: readonly number[],
  throttle: number,
): Study<readonly GainLine[]> {
  const lines: GainLine[] = [];
  for (const speed of speeds) {
    yield { doing: `one more tooth at ${Math.round(speed / rpm)} rpm` };
    lines.push({ speed, gain: yield* oneMoreTooth(model, { speed, throttle }) });
  }
  return lines;
}
