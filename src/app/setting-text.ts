import { percent } from '../charts/format.ts';

export const throttleText = (throttle: number): string =>
  throttle >= 1 ? 'open' : throttle <= 0 ? 'shut' : percent(throttle);

/** Where an engine runs, in words: `6000 rpm, throttle open`. */
export const settingText = (speed_rpm: number, throttle: number): string =>
  `${Math.round(speed_rpm)} rpm, throttle ${throttleText(throttle)}`;
