import type { Blower } from '../../../engine.ts';
import type { SolvedPoint } from '../../../results/point-result.ts';
import { celsiusFromKelvin, deg, mm, rpm } from '../../../units.ts';
import type { RotorGaps } from '../clearances.ts';
import { blowerTemperatures, gapLoss } from '../heat-growth.ts';
import type { RotorPair } from '../rotor-pair.ts';

/** What heat does to the gaps at one operating point. */
export interface HeatEstimate {
  readonly speed: number;
  readonly rotorTemperature: number;
  readonly casingTemperature: number;
  /** What the gaps lose from cold to warm [m]. */
  readonly loss: RotorGaps;
}

/** Growth of a blower's rotors at the temperatures that the model finds at an operating point. */
export function heatEstimate(blower: Blower, ambientTemperature: number, point: SolvedPoint): HeatEstimate {
  const { rotor, casing } = blowerTemperatures(
    point.blower.outletTemperature,
    point.plenum.meanTemperature,
    ambientTemperature,
  );
  const { length, centreDistance, material, casingMaterial } = blower.rotors;
  return {
    speed: point.speed,
    rotorTemperature: rotor,
    casingTemperature: casing,
    loss: gapLoss({
      tipDiameter: blower.tipDiameter,
      length,
      centreDistance,
      material,
      casingMaterial,
      rotorTemperature: rotor,
      casingTemperature: casing,
    }),
  };
}

/**
 * Words that a drawing of rotors carries: what it shows, to which gaps, and that cold gaps must allow for heat.
 *
 * @param heat - null where the model has no temperatures to estimate from
 */
export function rotorNotes(
  name: string,
  blower: Blower,
  pair: RotorPair,
  heat: HeatEstimate | null,
): readonly string[] {
  const { rotors, tipDiameter, lobes, helixAngle } = blower;
  const { gaps } = rotors;
  const long = (value: number, digits = 3) => (value / mm).toFixed(digits);
  const twist =
    helixAngle > 0
      ? `section across the axes; twist ${(helixAngle / deg).toFixed(1)}° over the length, one rotor right-handed, one left-handed`
      : 'straight lobes';
  const hole = rotors.bore > 0 ? `bore ${long(rotors.bore)}` : 'no bore';
  return [
    `${name}: pair of equal rotors, ${rotors.profile} profile, ${lobes} lobes. Scale 1:1, lengths in millimetres.`,
    `Tip diameter ${long(tipDiameter)}, root diameter ${long(pair.rootDiameter)}, axes ${long(rotors.centreDistance, 4)} apart, length ${long(rotors.length, 2)}, ${hole}; ${twist}.`,
    `Drawn with the gaps wanted warm and running: tips ${long(gaps.tip)}, mesh ${long(gaps.mesh)} (half on each rotor), ends ${long(gaps.end)}. Outline within 0.005 of its equations.`,
    ...heatNotes(blower, heat),
    'Estimates. Rotating parts need containment. Local rules and licensed or experienced practice come first.',
  ];
}

function heatNotes({ rotors }: Blower, heat: HeatEstimate | null): string[] {
  const warning = 'CAUTION: gaps when cold must allow for heat growth, or the rotors seize.';
  if (!heat) return [warning, 'The model has no temperatures to estimate it from.'];
  const { gaps } = rotors;
  const celsius = (T: number) => celsiusFromKelvin(T).toFixed(0);
  const change = (value: number) => `${value < 0 ? 'gain' : 'lose'} ${(Math.abs(value) / mm).toFixed(3)}`;
  const cold = (gap: number, loss: number) => ((gap + loss) / mm).toFixed(3);
  const { tip, mesh, end } = heat.loss;
  return [
    warning,
    `Estimate at ${Math.round(heat.speed / rpm)} rpm of the crank, rotors (${rotors.material}) at ${celsius(heat.rotorTemperature)} °C, casing (${rotors.casingMaterial}) at ${celsius(heat.casingTemperature)} °C:`,
    `from 20 °C on, tips ${change(tip)}, mesh ${change(mesh)}, ends ${change(end)}; so cold gaps of tips ${cold(gaps.tip, tip)}, mesh ${cold(gaps.mesh, mesh)}, ends ${cold(gaps.end, end)} (bearing play, bending, dry running and heat soaking in after a stop not counted).`,
  ];
}
