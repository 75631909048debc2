import type { Blower, Load } from '../../engine.ts';
import type { SpeedFluctuation } from './fluctuation.ts';
import type { TorqueOverTurn } from './torque.ts';

/** A quantity over the turn, with the torque's sign. */
export interface Swing {
  readonly mean: number;
  readonly peak: number;
  readonly least: number;
}

export interface ShaftLoad {
  /** In the shaft, at its own speed [N m]; it reverses where `least` is below 0 and `mean` above. */
  readonly torque: Swing;
  readonly reverses: boolean;
  /** Tangential at the teeth of the wheel on the crank; null without gears [N]. */
  readonly tooth: Swing | null;
  /** Shear in a solid round shaft [Pa]: greatest either way, and half the way from least to greatest. */
  readonly shear: { readonly greatest: number; readonly alternating: number };
  /** With one cylinder firing early [N m], [Pa], [N]; either way. Null where nothing can. */
  readonly earlyFire: {
    readonly torque: number;
    readonly shear: number;
    readonly tooth: number | null;
  } | null;
}

/**
 * Shear stress at the surface of a solid round shaft [Pa].
 *
 *   tau = 16 T / (pi d^3)
 *
 * @param torque - [N m]; @param diameter - [m]
 * Valid: elastic, without notches: keyways and shoulders raise it 1.5 to 3 times. Source: de Saint-Venant; any text on strength.
 */
export const shearStress = (torque: number, diameter: number): number =>
  (16 * Math.abs(torque)) / (Math.PI * diameter ** 3);

/**
 * Output shaft: the mean goes through, and of what the torque swings about it the share that the load's inertia takes up.
 *
 *   T_s = i (eta T_mean + J_load/J (T - T_mean)),   early fire: i f T_kick, as if the load stood fast
 *
 * i crank turns per turn of the load; J at the crank; f factor on a sudden load. Teeth feel the crank's side of it, over half the pitch
 * diameter.
 *
 * @param torque - at the crank; its mean is passed on with the efficiency of the gears
 * @param kick   - torque of a cylinder that fires early [N m], or null
 * Valid: rigid shafts and teeth without play; see `speedFluctuation`. A propeller's own uneven torque is not in it.
 * Source: Newton's second law on either side of the shaft.
 */
export function outputShaft(
  torque: Pick<TorqueOverTurn, 'total' | 'mean'>,
  { inertias }: Pick<SpeedFluctuation, 'inertias'>,
  load: Load,
  efficiency: number,
  kick: number | null,
): ShaftLoad {
  const mean = torque.mean.total;
  const share = inertias.load / inertias.total;
  const passed = mean > 0 ? mean * efficiency : mean / efficiency;
  const swing = torque.total.map((each) => share * (each - mean));
  const geared = load.gearRatio !== 1;
  return shaftLoad({
    inShaft: swing.map((each) => load.gearRatio * (passed + each)),
    mean: load.gearRatio * passed,
    atCrank: geared ? swing.map((each) => mean + each) : null,
    meanAtCrank: mean,
    pitchDiameter: load.gearPitchDiameter,
    shaftDiameter: load.shaftDiameter,
    sudden: kick && {
      inShaft: load.shockFactor * load.gearRatio * kick,
      atCrank: load.shockFactor * kick,
    },
  });
}

/**
 * Drive shaft of one blower, at rotor speed: what its gas, bearings and drag ask, and what its rotors ask as the crank's speed swings.
 *
 *   T_s = (T_b eta / ratio + J_rotors/ratio (T - T_mean)/J) / count,   early fire: f J_rotors/(ratio J) T_kick / count
 *
 * T_b of all blowers at the crank, gears' losses in it; J_rotors of all rotors, at the crank.
 *
 * @param ratio - rotor turns per crank turn; @param efficiency - of the gears to the rotors
 * Valid: as `outputShaft`. Where the torque reverses, teeth leave one flank for the other: then play turns it into blows.
 */
export function blowerShaft(
  torque: Pick<TorqueOverTurn, 'total' | 'firstStage' | 'mean'>,
  { inertias }: Pick<SpeedFluctuation, 'inertias'>,
  blower: Blower,
  { ratio, efficiency }: { readonly ratio: number; readonly efficiency: number },
  shockFactor: number,
  kick: number | null,
): ShaftLoad {
  const { count } = blower;
  const perTorque = inertias.rotors / inertias.total;
  const swing = torque.total.map((each) => perTorque * (each - torque.mean.total));
  const sudden = kick && (shockFactor * perTorque * kick) / count;
  return shaftLoad({
    inShaft: torque.firstStage.asked.map((each, i) => (each * efficiency + swing[i]!) / (ratio * count)),
    mean: (torque.firstStage.mean * efficiency) / (ratio * count),
    atCrank:
      blower.gears.length > 0 ? torque.firstStage.asked.map((each, i) => (each + swing[i]!) / count) : null,
    meanAtCrank: torque.firstStage.mean / count,
    pitchDiameter: blower.gearPitchDiameter,
    shaftDiameter: blower.shaftDiameter,
    sudden: sudden && { inShaft: sudden / ratio, atCrank: sudden },
  });
}

interface ShaftParts {
  /** Over the turn, and its exact mean. */
  readonly inShaft: Float64Array;
  readonly mean: number;
  /** On the crank's side of the gears; null without gears. */
  readonly atCrank: Float64Array | null;
  readonly meanAtCrank: number;
  readonly pitchDiameter: number;
  readonly shaftDiameter: number;
  readonly sudden: { readonly inShaft: number; readonly atCrank: number } | null | 0;
}

function shaftLoad({
  inShaft,
  mean,
  atCrank,
  meanAtCrank,
  pitchDiameter,
  shaftDiameter,
  sudden,
}: ShaftParts): ShaftLoad {
  const torque = { mean, peak: Math.max(...inShaft), least: Math.min(...inShaft) };
  const perForce = pitchDiameter / 2;
  const shear = (of: number) => shearStress(of, shaftDiameter);
  return {
    torque,
    reverses: torque.peak > 0 && torque.least < 0,
    tooth: atCrank && {
      mean: meanAtCrank / perForce,
      peak: Math.max(...atCrank) / perForce,
      least: Math.min(...atCrank) / perForce,
    },
    shear: {
      greatest: shear(Math.max(Math.abs(torque.peak), Math.abs(torque.least))),
      alternating: shear((torque.peak - torque.least) / 2),
    },
    earlyFire: sudden
      ? {
          torque: sudden.inShaft,
          shear: shear(sudden.inShaft),
          tooth: atCrank && sudden.atCrank / perForce,
        }
      : null,
  };
}
