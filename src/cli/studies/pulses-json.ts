import { cylinderName, rowLetter } from '../../design/cylinder-name.ts';
import type { Model, SolvedPoint } from '../../sim/index.ts';
import { gasWork } from '../../sim/results/gas-work.ts';
import { undersides } from '../../sim/study/crankcase/undersides.ts';
import type { LoadSize } from '../../sim/study/pulses/loads.ts';
import type { Pulses } from '../../sim/study/pulses/pulses.ts';
import { LOADS_CAUTION } from '../../sim/study/pulses/pulses.ts';
import type { ShaftLoad, Swing } from '../../sim/study/pulses/shafts.ts';
import type { Orbit } from '../../sim/study/pulses/shaking.ts';
import { deg, rpm } from '../../sim/units.ts';

/** Pulses as one object; every number with a dimension carries it in its key. */
export function pulsesJson(design: string, model: Model, point: SolvedPoint, found: Pulses) {
  const { dial, torque, harmonics, fluctuation, loads, shaking, earlyFire } = found;
  const nameOf = (index: number): string => {
    const { rowIndex, cylinderIndex } = model.geometry.cylinders[index]!;
    return cylinderName(rowIndex, cylinderIndex);
  };
  return {
    design,
    speed_rpm: Number((point.speed / rpm).toPrecision(12)),
    throttle: point.throttle,
    turnsPerPeriod: point.turnsPerPeriod,
    dial: {
      events: dial.events.map((each) => ({
        cylinder: nameOf(each.index),
        collector: collectorOf(model, each.index) + 1,
        topDeadCentre_deg: each.topDeadCentre / deg,
        exhaustOpens_deg: each.exhaustOpens / deg,
        transferOpens_deg: each.transferOpens / deg,
        backIntoPassage_kg_perTurn: point.cylinders[each.index]!.transferBackflow,
        backFromCollector_kg_perTurn: point.cylinders[each.index]!.exhaustBackflow,
      })),
      gaps_deg: Object.fromEntries(
        Object.entries(dial.gaps).map(([kind, { least, most, even }]) => [
          kind,
          { least: least / deg, most: most / deg, even: even / deg },
        ]),
      ),
    },
    torque_N_m: {
      mean: torque.mean,
      peak: torque.peak,
      least: torque.least,
      peakOverMean: torque.peakOverMean,
      peakAngle_deg: torque.peakAngle / deg,
      reversalsPerTurn: torque.reversals,
      negativeShare: torque.negativeShare,
    },
    harmonics_N_m: harmonics.total.map(({ order, amplitude, phase }, i) => ({
      order,
      total: amplitude,
      phase_deg: phase / deg,
      gas: harmonics.gas[i]!.amplitude,
      inertia: harmonics.inertia[i]!.amplitude,
      blower: harmonics.blower[i]!.amplitude,
    })),
    speedFluctuation: {
      inertias_kg_m2: fluctuation.inertias,
      energySwing_J: fluctuation.energySwing,
      coefficient: fluctuation.coefficient,
    },
    loads: {
      caution: LOADS_CAUTION,
      crankPins: loads.rows.map(({ pin, bending }, row) => ({
        row: rowLetter(row),
        pin_N: sizeJson(pin),
        masterRodBending_N_m: bending && sizeJson(bending),
      })),
      rods: loads.cylinders.map(({ push, pull, side, knuckle }, index) => ({
        cylinder: nameOf(index),
        push_N: push,
        pull_N: pull,
        side_N: side,
        knucklePin_N: knuckle && sizeJson(knuckle),
      })),
      mainBearings: loads.mains.map(({ fitted, bare }) => ({
        withCounterweights_N: sizeJson(fitted),
        without_N: sizeJson(bare),
      })),
      earlyFire: earlyFire && {
        cylinder: nameOf(earlyFire.index),
        beforeTopDeadCentre_deg: earlyFire.beforeTdc / deg,
        pressure_Pa: earlyFire.pressure,
        torqueAtCrank_N_m: earlyFire.torque,
        shockFactor: model.engine.load.shockFactor,
      },
      outputShaft: shaftJson(found.output),
      blowerShaft: shaftJson(found.blowerDrive),
    },
    balance: {
      counterweights: shaking.counterweights.map(({ whole, fitted, angle, rotating }, row) => ({
        row: rowLetter(row),
        whole_kg_m: whole,
        fitted_kg_m: fitted,
        rotating_kg_m: rotating,
        fromOppositePin_deg: angle / deg,
      })),
      force_N: orbitsJson(shaking.force),
      moment_N_m: orbitsJson(shaking.moment),
      rows_N: shaking.rows.map((row, i) => ({ row: rowLetter(i), ...orbitsJson(row) })),
    },
    gasWork_W: Object.fromEntries(gasWork(point).map(({ what, power }) => [what, power])),
    belowPistons: Object.fromEntries(
      Object.entries(undersides(model.geometry)).map(([pistons, { swing, harmonics }]) => [
        pistons,
        { swingOfSwept: swing, amplitudesOfSwept: harmonics },
      ]),
    ),
  };
}

export const collectorOf = ({ engine, geometry }: Model, index: number): number => {
  const { rowIndex, cylinderIndex } = geometry.cylinders[index]!;
  return engine.train.rows[rowIndex]!.cylinders[cylinderIndex]!.collector;
};

const sizeJson = ({ peak, peakAngle, mean }: LoadSize) => ({
  peak,
  peakAngle_deg: peakAngle / deg,
  mean,
});

const swingJson = ({ mean, peak, least }: Swing) => ({ mean, peak, least });

const shaftJson = ({ torque, reverses, tooth, shear, earlyFire }: ShaftLoad) => ({
  torque_N_m: swingJson(torque),
  reverses,
  tooth_N: tooth && swingJson(tooth),
  shear_Pa: shear,
  earlyFire: earlyFire && {
    torque_N_m: earlyFire.torque,
    shear_Pa: earlyFire.shear,
    tooth_N: earlyFire.tooth,
  },
});

const orbitsJson = ({ bare, balanced }: { bare: readonly Orbit[]; balanced: readonly Orbit[] }) => ({
  without: bare,
  withCounterweights: balanced,
});
