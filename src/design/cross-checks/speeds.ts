import { formatNumber } from '../format-quantity.ts';
import type { Design } from '../schema/design.ts';
import { fault } from './cross-fault.ts';
import type { CrossFault } from './cross-fault.ts';

export function* speeds({ wanted, blower }: Design): Generator<CrossFault> {
  const { minSpeed_rpm: min, maxSpeed_rpm: max, speed_rpm: shown, crankingSpeed_rpm: cranking } = wanted;
  const rpm = (value: number) => `${formatNumber(value, 6)} rpm`;
  if (min > max) {
    yield fault(
      'wanted.minSpeed_rpm',
      `the lowest working speed is ${rpm(min)}; allowed up to the highest, ${rpm(max)}`,
      'wanted.maxSpeed_rpm',
    );
  } else if (shown < Math.min(min, cranking) || shown > max) {
    yield fault(
      'wanted.speed_rpm',
      `the speed shown first is ${rpm(shown)}; allowed ${rpm(Math.min(min, cranking))} to ${rpm(max)}`,
      'wanted.minSpeed_rpm',
      'wanted.maxSpeed_rpm',
      'wanted.crankingSpeed_rpm',
    );
  }
  if (cranking > max) {
    yield fault(
      'wanted.crankingSpeed_rpm',
      `the cranking speed is ${rpm(cranking)}; allowed up to the highest working speed, ${rpm(max)}`,
      'wanted.maxSpeed_rpm',
    );
  }
  const ratio = blower.gears.reduce((product, { driver, driven }) => (product * driver) / driven, 1);
  if (ratio > 20 || ratio < 0.05) {
    yield fault(
      'blower.gears',
      `the rotors turn ${formatNumber(ratio)} times in a turn of the crank; allowed 0.05 to 20`,
      'blower.gears[',
    );
  }
}
