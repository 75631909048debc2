import type { HeatEstimate } from '../../sim/blower/rotors/drawing/notes.ts';
import { clearanceTotal } from '../../sim/blower/rotors/clearances.ts';
import { unevenDriveTorque } from '../../sim/blower/rotors/drive-torque.ts';
import type { RotorPair } from '../../sim/blower/rotors/rotor-pair.ts';
import type { Model } from '../../sim/index.ts';
import { cc, deg, gram, mm, mm2, percent, rpm } from '../../sim/units.ts';

/** Half the swing of the crank's speed for which the drive torque is told, over its mean. */
const UNEVENNESS = 0.01;

/** Torque at the crank for one percent of unevenness, once for every firing, at the speed shown first [N m]. */
const unevenTorque = ({ engine, drive, geometry }: Model, pair: RotorPair): number =>
  unevenDriveTorque(
    2 * engine.blower.count * pair.inertia,
    drive.ratio,
    engine.wanted.speed,
    UNEVENNESS,
    geometry.cylinders.length,
  );

export function rotorsReport(name: string, model: Model, pair: RotorPair, notes: readonly string[]): string {
  const { blower, wanted } = model.engine;
  const { clearances, ripple, gap } = pair;
  const long = (value: number, digits = 3) => `${(value / mm).toFixed(digits)} mm`;
  const volume = (value: number) => `${(value / cc).toFixed(2)} cc`;
  const share = (value: number) => `${(value / percent).toFixed(1)} %`;
  const tipSpeed = (speed: number) => ((blower.tipDiameter / 2) * speed * model.drive.ratio).toFixed(1);
  return [
    `${name}: ${blower.count} ${blower.count === 1 ? 'blower' : 'blowers'}, ${blower.rotors.profile} rotors of ${blower.lobes} lobes.`,
    `  mesh       gap ${(gap.least / mm).toFixed(4)} to ${(gap.widest / mm).toFixed(4)} mm through a full mesh turn; stated ${(blower.rotors.gaps.mesh / mm).toFixed(4)} mm`,
    `  size       tip ${long(blower.tipDiameter)}, root ${long(pair.rootDiameter)}, axes ${long(blower.rotors.centreDistance, 4)}, length ${long(blower.rotors.length, 2)}; ${share(pair.filled)} of the tip circle is metal`,
    `  displaces  ${volume(pair.sweptVolume - pair.carriedBack)} for a turn of the pair: ${volume(pair.sweptVolume)} go round, the mesh carries ${volume(pair.carriedBack)} back; the model reckons with ${volume(blower.displacement)}`,
    `  ripple     ${share(ripple.depth)} straight (${share(ripple.swing)} from highest to lowest), ${share(pair.twistedRipple)} with the twist (${(pair.leadAngle / deg).toFixed(1)}° at the tips)`,
    `  leaks      ${(clearanceTotal(clearances) / mm2).toFixed(1)} mm²: tips ${(clearances.tips / mm2).toFixed(1)}, mesh ${(clearances.mesh / mm2).toFixed(1)}, ends ${(clearances.ends / mm2).toFixed(1)}; the model reckons with ${(blower.clearanceArea / mm2).toFixed(1)}`,
    `  tips       ${tipSpeed(wanted.speed)} m/s at ${Math.round(wanted.speed / rpm)} rpm, ${tipSpeed(wanted.maxSpeed)} m/s at ${Math.round(wanted.maxSpeed / rpm)} rpm; not to pass ${blower.maxTipSpeed.toFixed(0)}`,
    `  rotor      ${(pair.mass / gram).toFixed(0)} g of ${blower.rotors.material}, ${pair.inertia.toExponential(3)} kg m² each`,
    `  drive      if the crank’s speed swings by ±1 % with every firing, the rotors ask ±${unevenTorque(model, pair).toFixed(2)} N m of the crank at ${Math.round(wanted.speed / rpm)} rpm, beside their mean torque`,
    '',
    ...notes,
    '',
  ].join('\n');
}

export function rotorsJson(name: string, model: Model, pair: RotorPair, heat: HeatEstimate | null) {
  const { blower, wanted } = model.engine;
  return {
    design: name,
    profile: blower.rotors.profile,
    lobes: blower.lobes,
    tipDiameter_m: blower.tipDiameter,
    rootDiameter_m: pair.rootDiameter,
    centreDistance_m: blower.rotors.centreDistance,
    length_m: blower.rotors.length,
    meshGap_m: { stated: blower.rotors.gaps.mesh, least: pair.gap.least, widest: pair.gap.widest },
    sectionArea_m2: pair.sectionArea,
    sweptVolume_m3: pair.sweptVolume,
    carriedBack_m3: pair.carriedBack,
    displacementOfModel_m3: blower.displacement,
    ripple: { depth: pair.ripple.depth, swing: pair.ripple.swing, twisted: pair.twistedRipple },
    clearance_m2: { ...pair.clearances, total: clearanceTotal(pair.clearances) },
    tipSpeed_m_per_s: (blower.tipDiameter / 2) * wanted.speed * model.drive.ratio,
    mass_kg: pair.mass,
    inertia_kg_m2: pair.inertia,
    unevenTorque_N_m_perPercent: unevenTorque(model, pair),
    heat: heat && {
      rotorTemperature_K: heat.rotorTemperature,
      casingTemperature_K: heat.casingTemperature,
      gapLoss_m: heat.loss,
    },
    outline_m: pair.outline.map(({ x, y }) => [x, y]),
  };
}
