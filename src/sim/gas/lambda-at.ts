import type { Charge } from '../engine.ts';
import { interpolateLinear } from '../numerics/interpolate.ts';

type Stated = Pick<Charge, 'lambda' | 'lambdaOverSpeed'>;

/** λ of a charge at a crank speed [-]: linear between the places of its table, that of the nearer end beyond them. */
export function lambdaAt({ lambda, lambdaOverSpeed: table }: Stated, speed: number): number {
  if (table === null) return lambda;
  const { speeds, lambdas } = table;
  const within = Math.min(Math.max(speed, speeds[0]!), speeds.at(-1)!);
  return interpolateLinear(speeds, lambdas, within);
}
