import { formatNumber } from '../format-quantity.ts';
import type { Design } from '../schema/design.ts';
import { fault } from './cross-fault.ts';
import type { CrossFault } from './cross-fault.ts';

export function* airPressure({ surroundings }: Design): Generator<CrossFault> {
  const { pressure_kPa: pressure, altitude_m: altitude } = surroundings;
  if (pressure === undefined || altitude === undefined) return;
  yield fault(
    'surroundings',
    `the air pressure is given twice: pressure_kPa is ${formatNumber(pressure)} kPa and altitude_m is ${formatNumber(altitude)} m; allowed: one of the two`,
    'surroundings.pressure_kPa',
    'surroundings.altitude_m',
  );
}
