import type { Engine, Throat } from '../../engine.ts';
import type { Restriction } from '../../exchange/orifices-in-series.ts';

/**
 * What stands between the air and the inlet box, in the order of the flow: restrictor, venturi, throttle, flame arrester.
 *
 *   arrester   dp = K rho w^2 / 2   is that of an opening of  CdA = A / sqrt(K)     K: loss factor [-], A: face [m^2]
 *
 * @param throttle - discharge coefficient times open area of the throttle [m^2]
 *
 * Valid: the arrester's equivalence as long as its loss is small against the pressure, some tenths of it.
 */
export function intakeSeries(
  { restrictor, venturi, arrester }: Engine['intake'],
  throttle: number,
): readonly Restriction[] {
  return [
    ...(restrictor ? [throatOf(restrictor)] : []),
    ...(venturi ? [throatOf(venturi)] : []),
    { CdA: throttle, recovered: 0 },
    ...(arrester ? [{ CdA: arrester.area / Math.sqrt(arrester.lossFactor), recovered: 0 }] : []),
  ];
}

const throatOf = ({ bore, dischargeCoefficient, recovered }: Throat): Restriction => ({
  CdA: 0.25 * Math.PI * bore ** 2 * dischargeCoefficient,
  recovered,
});
