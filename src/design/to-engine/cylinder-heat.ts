import type { Cooling, CylinderHeat } from '../../sim/engine.ts';
import { usualCrownThickness } from '../usual-sizes.ts';
import { circle } from './circle.ts';
import { masses } from './running-gear.ts';
import type { Si } from './si.ts';

/** Of aluminium at 150 °C [J/(kg K)]. Typical; iron has 500, which the masses may stand for. */
const METAL_HEAT = 930;

export function cylinderHeat(si: Si): CylinderHeat {
  const { cooling } = si;
  return {
    law: cooling.law,
    filmFactor: cooling.filmFactor,
    woschni: {
      scavenging: cooling.woschniScavenging,
      closed: cooling.woschniClosed,
      burning: cooling.woschniBurning,
      motoredExponent: cooling.motoredExponent,
    },
    annandA: cooling.annandA,
    annandB: cooling.annandB,
    annandC: cooling.annandC,
    crownAreaRatio: cooling.crownAreaRatio,
    headAreaRatio: cooling.headAreaRatio,
    crownTemperature: cooling.crown,
    headTemperature: cooling.head,
    linerTemperature: cooling.liner,
    solvesWalls: cooling.walls === 'worked out',
    cooling: coolingOf(si),
  };
}

/** Where nothing was measured: dimensions in proportion to the bore. */
function coolingOf(si: Si): Cooling {
  const { cooling, cylinder, crank } = si;
  const { fins, piston, rows } = cooling;
  const { bore } = cylinder;
  const metal = {
    thickness: fins.thickness ?? 0.04 * bore,
    space: fins.space ?? 0.13 * bore,
    conductivity: fins.conductivity,
  };
  return {
    airSpeed: cooling.airSpeed,
    wakeSpeedShare: rows.speedShare,
    wakeWarming: rows.warming,
    finFactor: fins.factor,
    stillAirCoefficient: fins.stillAir,
    crankcaseTemperature: cooling.crankcase,
    coating: { thickness: cooling.coating, conductivity: cooling.coatingConductivity },
    piston: {
      conductivity: piston.conductivity,
      crownThickness: piston.crownThickness ?? usualCrownThickness(bore),
      ringHeight: piston.ringHeight ?? 0.06 * bore,
      ringCoefficient: piston.ring,
      skirtLength: piston.skirtLength ?? 0.7 * bore,
      skirtThickness: piston.skirtThickness ?? 0.055 * bore,
      skirtCoefficient: piston.skirt,
      undersideCoefficient: piston.underside,
      mass: masses(si).piston,
    },
    barrel: {
      wall: fins.wall ?? 0.15 * bore,
      length: fins.length ?? crank.stroke,
      fins: { ...metal, height: fins.height ?? 0.5 * bore },
      mass: fins.barrelMass ?? 7000 * bore ** 3,
    },
    head: {
      rootArea: fins.headArea ?? circle(1.9 * bore),
      fins: { ...metal, height: fins.headHeight ?? 0.7 * bore },
      mass: fins.headMass ?? 4700 * bore ** 3,
    },
    jointCoefficient: fins.joint,
    specificHeat: METAL_HEAT,
    limits: { crown: cooling.crownLimit, head: cooling.headLimit, liner: cooling.linerLimit },
  };
}
