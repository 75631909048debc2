import { clearancePaths, clearanceTotal } from '../../sim/blower/rotors/clearances.ts';
import { cycloidTipRadius, roundEdgeLand } from '../../sim/blower/slip/thin-gap.ts';
import type { Blower, SecondStage, SlipByPath } from '../../sim/engine.ts';
import { rpm } from '../../sim/units.ts';
import { circle } from './circle.ts';
import { bestVolume, impeller } from './impeller.ts';
import { centreDistance, displacementOf, rippleOf } from './rotor-section.ts';
import type { Si } from './si.ts';

/** Tip speeds not to be passed where none is given [m/s]. Typical; ranges 30-45, 60-100 and 350-450. */
const MAX_TIP_SPEED = { straight: 40, twisted: 80, impeller: 400 };

/** Speeds not to be passed where none is given. Typical; the maker of the bearings decides. */
const MAX_SPEED = { rotors: 20_000 * rpm, impeller: 120_000 * rpm };

export const blower = ({ blower: si, cylinder }: Si): Blower => stage(si, cylinder.bore);

/** What a second stage does not ask for is as in the first, but for what would be measured on it. */
export function secondStage({ blower: first, cylinder, surroundings }: Si): SecondStage | null {
  const second = first.secondStage;
  if (!second) return null;
  const { cooler, interstage, ...own } = second;
  const { displacement, ripple, clearanceArea, maxTipSpeed, maxSpeed } = second;
  const alone = {
    count: 1,
    phaseStep: 0,
    profile: 'cycloidal',
    dragWithSpeed: 0,
    dragWithSquare: 0,
  } as const;
  const unknown = { centreDistance: undefined, gearPitch: undefined, shaft: undefined };
  const measured = { displacement, ripple, clearanceArea, maxTipSpeed, maxSpeed, carriedBackShare: 0 };
  const slip = { ...first.slip, law: 'clearance area' } as const;
  return {
    blower: stage({ ...first, ...alone, ...unknown, ...own, ...measured, slip }, cylinder.bore),
    volume: interstage,
    cooler: cooler && {
      effectiveness: cooler.effectiveness,
      coolantTemperature: cooler.coolant ?? surroundings.temperature,
      area: circle(cooler.bore),
      lossFactor: cooler.lossFactor,
      volume: cooler.volume,
    },
  };
}

function stage(si: Si['blower'], bore: number): Blower {
  const { tipDiameter, rotorLength, lobes } = si;
  const gaps = { tip: si.tipGap, mesh: si.meshGap, end: si.endGap };
  const wheel = si.kind === 'centrifugal';
  return {
    kind: si.kind,
    count: si.count,
    displacement: wheel ? bestVolume(si) : (si.displacement ?? displacementOf(si)),
    volumeRatio: si.kind === 'internal compression' ? si.volumeRatio : 1,
    impeller: wheel ? impeller(si) : null,
    gears: si.gears.map(({ driver, driven, efficiency }) => ({
      driverTeeth: driver,
      drivenTeeth: driven,
      efficiency,
    })),
    lobes,
    helixAngle: si.helix,
    rippleDepth: wheel ? 0 : (si.ripple ?? rippleOf(si)),
    phase: si.phase,
    phaseStep: si.phaseStep,
    clearanceArea: wheel
      ? 0
      : (si.clearanceArea ?? clearanceTotal(clearancePaths(gaps, tipDiameter, rotorLength))),
    clearanceDischarge: si.clearanceDischarge,
    tipDiameter,
    mechanicalEfficiency: si.mechanicalEfficiency,
    slip: !wheel && si.slip.law === 'by path' ? slipByPath(si) : null,
    carriedBackShare: wheel ? 0 : si.carriedBackShare,
    dragTorque: si.drag,
    dragWithSpeed: si.dragWithSpeed,
    dragWithSquare: si.dragWithSquare,
    casingHeatShare: si.casingHeatShare,
    maxTipSpeed: si.maxTipSpeed ?? MAX_TIP_SPEED[wheel ? 'impeller' : si.helix > 0 ? 'twisted' : 'straight'],
    gearPitchDiameter: si.gearPitch ?? ((si.gears[0]?.driver ?? 0) * bore) / 32,
    shaftDiameter: si.shaft ?? 0.3 * bore,
    maxSpeed: si.maxSpeed ?? MAX_SPEED[wheel ? 'impeller' : 'rotors'],
    rotors: {
      profile: si.profile,
      length: rotorLength,
      centreDistance: centreDistance(si),
      gaps,
      bore: si.rotorBore,
      material: si.rotorMaterial,
      casingMaterial: si.casingMaterial,
    },
  };
}

function slipByPath(si: Si['blower']): SlipByPath {
  const { slip, tipDiameter, lobes } = si;
  const centre = centreDistance(si);
  return {
    lands: {
      tip: slip.tipLand ?? roundEdgeLand(cycloidTipRadius(tipDiameter / 2, lobes), si.tipGap),
      mesh: slip.meshLand ?? roundEdgeLand(centre / 2, si.meshGap),
      end: slip.endLand ?? centre / 2,
    },
    filmShare: slip.filmShare,
    closeWithHeat: slip.closeWithHeat,
  };
}
