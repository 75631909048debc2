import type { Blower, Impeller } from '../../engine.ts';
import { TURN } from '../../units.ts';
import { INDUCER_RADIUS, inducerChoke } from './inducer-choke.ts';
import { SpeedLine } from './speed-line.ts';

/** Where centrifugal blowers work on their map, by mean flow. */
export interface WheelPoint {
  /** Volume flow over that of best efficiency, and that flow below which a plenum behind them surges [-]. */
  readonly flow: number;
  readonly surge: number;
  /** Mass flow over that which chokes the inducers [-]. */
  readonly ofChoke: number;
}

/**
 * @param rotorSpeed - [rad/s]
 * @param massFlow   - of all blowers, mean [kg/s]
 * @param inlet      - gas before the wheels
 */
export function wheelPoint(
  { count, displacement, tipDiameter }: Blower,
  impeller: Impeller,
  rotorSpeed: number,
  massFlow: number,
  inlet: {
    readonly pressure: number;
    readonly temperature: number;
    readonly gasConstant: number;
    readonly gamma: number;
  },
): WheelPoint {
  const { pressure, temperature, gasConstant, gamma } = inlet;
  const density = pressure / (gasConstant * temperature);
  const bladeSpeed = INDUCER_RADIUS * 0.5 * tipDiameter * rotorSpeed;
  const sound = Math.sqrt(gamma * gasConstant * temperature);
  return {
    flow: massFlow / density / ((count * displacement * rotorSpeed) / TURN),
    surge: new SpeedLine(impeller, displacement, tipDiameter).surge,
    ofChoke: massFlow / inducerChoke(count * impeller.throatArea, bladeSpeed, density, sound, gamma),
  };
}
