import { gram, mbar, percent } from '../../units.ts';
import type { Meeting } from './supply-demand.ts';

/** Why the converged cycle stands beside the point where the steady curves meet, in words. */
export function pulsationText(
  where: string,
  meeting: Meeting | null,
  cycle: Meeting & { readonly ripple: number },
  drawnPressure: number,
  ambientPressure: number,
): string {
  const gauge = (pressure: number) => `${signed((pressure - ambientPressure) / mbar)} mbar gauge`;
  const flow = (airFlow: number) => `${(airFlow / gram).toFixed(2)} g/s of air`;
  const own = `The cycle at ${where} runs at ${gauge(cycle.pressure)}, ${flow(cycle.airFlow)}`;
  if (!meeting) return `${own}; within the pressures looked at the steady curves do not meet.`;
  const off = (cycle.airFlow / meeting.airFlow - 1) / percent;
  const drawn = (drawnPressure - cycle.pressure) / mbar;
  const side =
    Math.abs(drawn) < 0.05
      ? 'at its mean'
      : `${Math.abs(drawn).toFixed(1)} mbar ${drawn < 0 ? 'below' : 'above'} its mean`;
  return (
    `${own}; steady supply and demand meet at ${gauge(meeting.pressure)}, ${flow(meeting.airFlow)}. ` +
    `The cycle’s flow differs by ${signed(off)} %, its pressure by ${signed((cycle.pressure - meeting.pressure) / mbar)} mbar: ` +
    `its plenum swings by ${(cycle.ripple / mbar).toFixed(1)} mbar, and charge leaves it ${side}, while slip and blower work go by every instant.`
  );
}

const signed = (value: number): string =>
  `${value > 0 ? '+' : value < 0 ? '−' : ''}${Math.abs(value).toFixed(1)}`;
