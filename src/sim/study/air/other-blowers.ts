import { clearancePaths, clearanceTotal } from '../../blower/rotors/clearances.ts';
import { SpeedLine } from '../../blower/centrifugal/speed-line.ts';
import {
  USUAL_FLOW_COEFFICIENT,
  USUAL_WHEEL,
  usualExitWidth,
  usualThroatArea,
  volumeOfTurn,
} from '../../blower/centrifugal/usual-wheel.ts';
import type { Blower, Engine, Impeller } from '../../engine.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { TURN } from '../../units.ts';

export type BlowerKind = Blower['kind'];

/** Wheel that stands in for a centrifugal blower where the design has none. */
const wheelOf = (diameter: number): Impeller => ({
  ...USUAL_WHEEL,
  exitWidth: usualExitWidth(diameter),
  throatArea: usualThroatArea(diameter),
});
/** Of a drive that stands in for that of a wheel: rotors of two turns a turn of the crank. */
const ROTOR_GEARS = [{ driverTeeth: 36, drivenTeeth: 18, efficiency: 0.985 }];
/** Built-in volume ratio below which there is nothing to compress inside [-]. */
const LEAST_BUILT_IN = 1.02;

/** A blower of another kind in the place of the design's, and rotor speed over crank speed. */
export interface OtherBlower {
  readonly blower: Blower;
  readonly ratio: number;
}

/** Drag that takes the same power at another rotor speed, and a limit of speed as far away. */
function sameDrag(blower: Blower, ratio: number, other: number) {
  const share = ratio / other;
  return {
    dragTorque: share * blower.dragTorque,
    dragWithSpeed: share * blower.dragWithSpeed,
    dragWithSquare: share * blower.dragWithSquare,
    maxSpeed: blower.maxSpeed / share,
  };
}

/** Roots rotors of the same displacement; in the place of a wheel, of the volume that it takes in at the point. */
export function asRoots({ blower }: Engine, ratio: number, point: SolvedPoint, gas: InletGas): OtherBlower {
  if (!blower.impeller) return { blower: { ...blower, kind: 'roots', volumeRatio: 1 }, ratio };
  const { rotors, tipDiameter } = blower;
  const rotorRatio = ROTOR_GEARS[0]!.driverTeeth / ROTOR_GEARS[0]!.drivenTeeth;
  const volume = point.blower.massFlow / gas.density;
  return {
    ratio: rotorRatio,
    blower: {
      ...blower,
      ...sameDrag(blower, ratio, rotorRatio),
      kind: 'roots',
      impeller: null,
      gears: ROTOR_GEARS,
      displacement: (volume * TURN) / (point.speed * rotorRatio * blower.count),
      clearanceArea: clearanceTotal(clearancePaths(rotors.gaps, tipDiameter, rotors.length)),
    },
  };
}

/** The same rotors with the built-in volume ratio that fits the pressures of the point. */
export function asInternal(roots: OtherBlower, gas: InletGas): OtherBlower {
  const volumeRatio = Math.max(LEAST_BUILT_IN, gas.pressureRatio ** (1 / gas.gamma));
  return { ...roots, blower: { ...roots.blower, kind: 'internal compression', volumeRatio } };
}

/**
 * Wheels that carry the point's flow to its pressure at their best: tip speed from the head, diameter from the flow.
 *
 * @param now - rotor speed over crank speed of the design's own blower
 *
 *   U^2 = cp T ((p2/p1)^((g-1)/g) - 1) / head(1),   D^2 = V / (phi U)
 */
export function asWheel({ blower }: Engine, now: number, point: SolvedPoint, gas: InletGas): OtherBlower {
  const k = (gas.gamma - 1) / gas.gamma;
  const work = ((gas.gasConstant * gas.temperature) / k) * (Math.max(gas.pressureRatio, 1.01) ** k - 1);
  // Head over U^2 does not depend on size.
  const bestVolume = (D: number) => volumeOfTurn(USUAL_FLOW_COEFFICIENT, D);
  const head = new SpeedLine(wheelOf(1), bestVolume(1), 1).head(1);
  const U = Math.sqrt(work / head);
  const volume = point.blower.massFlow / gas.density / blower.count;
  const tipDiameter = Math.sqrt(volume / (USUAL_FLOW_COEFFICIENT * U));
  const ratio = (2 * U) / (tipDiameter * point.speed);
  return {
    ratio,
    blower: {
      ...blower,
      ...sameDrag(blower, now, ratio),
      kind: 'centrifugal',
      impeller: wheelOf(tipDiameter),
      tipDiameter,
      displacement: bestVolume(tipDiameter),
      volumeRatio: 1,
      clearanceArea: 0,
      slip: null,
      carriedBackShare: 0,
      rippleDepth: 0,
    },
  };
}

/** Gas before the blowers at a point, and what they raise its pressure to over what it is. */
export interface InletGas {
  readonly temperature: number;
  readonly gasConstant: number;
  readonly gamma: number;
  readonly density: number;
  readonly pressureRatio: number;
}
