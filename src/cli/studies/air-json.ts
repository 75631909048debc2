import type { Model } from '../../sim/index.ts';
import { powerCorrection } from '../../sim/study/checks/standard-air.ts';
import type { AirStudy } from '../../sim/study/air/air-study.ts';
import type { FeedFigures } from '../../sim/study/air/fuel-feed.ts';
import { feedFigures } from '../../sim/study/air/fuel-feed.ts';
import { bar, inHg, psi, rpm } from '../../sim/units.ts';
import type { ShownPoint } from './air-report.ts';

/** The air study as one object; every number with a dimension carries it in its key. */
export function airJson(design: string, model: Model, study: AirStudy, { shown, beside }: ShownPoint) {
  const { pressure, temperature, humidity } = model.engine.ambient;
  const correction = powerCorrection(pressure, temperature, humidity);
  const { least } = study;
  return {
    design,
    sentence: study.sentence,
    correction: { code: 'SAE J1349', factor: correction, humidity },
    least: least && {
      speed_rpm: least.speed / rpm,
      limit: least.limit.by,
      liftedDeliveryRatio: least.limit.lifted,
      plenumPressureToSwallowWanted_Pa: least.swallows,
    },
    fuelFeeds:
      shown && beside
        ? { speed_rpm: shown.speed / rpm, feeds: [feedFigures(model, shown), beside].map(feedJson) }
        : null,
    points: study.lines.map(({ point, figures, gain }) => {
      const head = { speed_rpm: Number((point.speed / rpm).toPrecision(12)), converged: point.converged };
      if (!figures) return { ...head, reason: point.converged ? '' : point.reason };
      return {
        ...head,
        deliveryRatio: figures.deliveryRatio,
        chargingEfficiency: figures.chargingEfficiency,
        trappedMass_kg: figures.trappedMass,
        airFlow_kg_per_s: figures.airFlow,
        wantedAirFlow_kg_per_s: figures.wantedAirFlow,
        plenumPressure_Pa: figures.plenumPressure,
        plenumRipple_Pa: figures.plenumRipple,
        plenumGauge_bar: figures.plenumGauge / bar,
        plenumGauge_psi: figures.plenumGauge / psi,
        plenumGauge_inHg: figures.plenumGauge / inHg,
        slipFraction: figures.slipFraction,
        blowerPower_W: figures.blowerPower,
        blowerShareOfBrake: figures.blowerShare,
        brakePowerUncorrected_W: figures.brakePower,
        brakePowerCorrected_W: figures.brakePower * correction,
        chargeTemperature_K: figures.chargeTemperature,
        outletTemperature_K: figures.outletTemperature,
        inletDepression_Pa: figures.inletDepression,
        rotorSpeed_rpm: figures.rotorSpeed / rpm,
        tipSpeed_m_per_s: figures.tipSpeed,
        oneMoreTooth: gain && {
          ratio: gain.ratio,
          nextRatio: gain.nextRatio,
          deliveryRatio: gain.deliveryRatio,
          chargingEfficiency: gain.chargingEfficiency,
          brakePower_W: gain.brakePower,
        },
      };
    }),
  };
}

const feedJson = (figures: FeedFigures) => ({
  feed: figures.feed,
  fuelFlow_kg_per_s: figures.fuelFlow,
  fuelLost_kg_per_s: figures.fuelLost,
  unburnedShareOfFuelEnergy: figures.unburnedShare,
  brakePower_W: figures.brakePower,
  deliveryRatio: figures.deliveryRatio,
  chargingEfficiency: figures.chargingEfficiency,
  chargeTemperature_K: figures.chargeTemperature,
});
