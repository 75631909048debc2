import { rowLetter } from '../design/cylinder-name.ts';
import type { Model } from '../sim/index.ts';
import type { CylinderGeometry } from '../sim/geometry/cylinder-geometry.ts';
import type { PointResult, SolvedPoint } from '../sim/results/point-result.ts';
import { deg, rpm } from '../sim/units.ts';

/** Twelve figures: what the numbers are worth at most, without the noise of the last bits. */
const tidy = (value: number): number => Number(value.toPrecision(12));

/** One operating point as one object; every number with a dimension carries it in its key. */
export function pointJson(design: string, model: Model, point: PointResult) {
  const head = { design, speed_rpm: tidy(point.speed / rpm), converged: point.converged };
  if (!point.converged) {
    return {
      ...head,
      reason: point.reason,
      cycles: point.cycles,
      residuals: { mass: null, energy: null, species: null, change: point.change },
    };
  }
  return { ...head, cycles: point.cycles, ...solvedJson(model, point) };
}

function solvedJson(model: Model, point: SolvedPoint) {
  const { residuals, engine, blower, plenum } = point;
  return {
    residuals: {
      mass: residuals.mass,
      energy: residuals.energy,
      species: residuals.species,
      change: residuals.change,
    },
    engine: {
      sweptVolume_m3: engine.sweptVolume,
      airFlow_kg_per_s: engine.airFlow,
      fuelFlow_kg_per_s: engine.fuelFlow,
      lambda: engine.lambda,
      deliveryRatio: engine.deliveryRatio,
      scavengingEfficiency: engine.scavengingEfficiency,
      trappingEfficiency: engine.trappingEfficiency,
      chargingEfficiency: engine.chargingEfficiency,
      imep_Pa: engine.imep,
      fmep_Pa: engine.fmep,
      bmep_Pa: engine.bmep,
      torque_N_m: engine.torque,
      brakePower_W: engine.brakePower,
      bsfc_kg_per_J: engine.bsfc,
      wallHeat_W: engine.wallHeat,
    },
    blower: {
      displacement_m3_per_crankRev: blower.displacementPerTurn,
      slipFraction: blower.slipFraction,
      shaftPower_W: blower.shaftPower,
      outletTemperature_K: blower.outletTemperature,
    },
    plenum: {
      meanPressure_Pa: plenum.meanPressure,
      minPressure_Pa: plenum.minPressure,
      maxPressure_Pa: plenum.maxPressure,
      meanTemperature_K: plenum.meanTemperature,
    },
    ...(point.stages && {
      stages: {
        firstShaftPower_W: point.stages.first.shaftPower,
        secondShaftPower_W: point.stages.second.shaftPower,
        interstagePressure_Pa: point.stages.interstage.meanPressure,
        firstOutletTemperature_K: point.stages.first.outletTemperature,
        beforeSecondTemperature_K: point.stages.beforeSecond.meanTemperature,
        ...(point.stages.cooler && {
          coolerHeat_W: point.stages.cooler.heat,
          coolerPressureLoss_Pa: point.stages.cooler.pressureLoss,
        }),
      },
    }),
    ...(point.relief && {
      relief: {
        massFlow_kg_per_s: point.relief.massFlow,
        share: point.relief.share,
        leastLift: point.relief.leastLift,
        greatestLift: point.relief.greatestLift,
        openings_per_crankRev: point.relief.openings,
      },
    }),
    ...(point.bypass && {
      bypass: {
        massFlow_kg_per_s: point.bypass.massFlow,
        share: point.bypass.share,
        heat_W: point.bypass.heat,
      },
    }),
    ...(point.crankcase && {
      crankcase: {
        meanPressure_Pa: point.crankcase.meanPressure,
        minPressure_Pa: point.crankcase.minPressure,
        maxPressure_Pa: point.crankcase.maxPressure,
        meanTemperature_K: point.crankcase.meanTemperature,
        volumeSwing_m3: point.crankcase.volumeSwing,
        pumpingPower_W: point.crankcase.pumpingPower,
        blowBy_kg_per_s: point.crankcase.blowBy,
        breathed_kg_per_s: point.crankcase.breathed,
        purity: point.crankcase.purity,
      },
    }),
    cylinders: point.cylinders.map((cylinder, index) => ({
      ...cylinderShape(model.geometry.cylinders[index]!),
      trappedMass_kg: cylinder.trappedMass,
      purity: cylinder.purity,
      chargingEfficiency: cylinder.chargingEfficiency,
      imep_Pa: cylinder.imep,
      peakPressure_Pa: cylinder.peakPressure,
    })),
  };
}

/** The geometric part of the same shape: what holds at every speed. */
export function geometryJson(design: string, model: Model) {
  const { blower } = model.engine;
  return {
    design,
    engine: { sweptVolume_m3: model.geometry.sweptVolume },
    blower: { displacement_m3_per_crankRev: blower.count * blower.displacement * model.drive.ratio },
    cylinders: model.geometry.cylinders.map(cylinderShape),
  };
}

export function cylinderShape(cylinder: CylinderGeometry) {
  const { exhaust, transfer } = cylinder;
  const degrees = (angle: number) => tidy(angle / deg);
  return {
    row: rowLetter(cylinder.rowIndex),
    number: cylinder.number,
    tdc_degCrank: degrees(cylinder.tdc),
    bdc_degCrank: degrees(cylinder.bdc),
    stroke_m: cylinder.stroke,
    exhaustOpens_degAfterOwnTdc: degrees(exhaust.opensAfterOwnTdc),
    exhaustCloses_degAfterOwnTdc: degrees(exhaust.closesAfterOwnTdc),
    transferOpens_degAfterOwnTdc: degrees(transfer.opensAfterOwnTdc),
    transferCloses_degAfterOwnTdc: degrees(transfer.closesAfterOwnTdc),
  };
}
