import type { Model } from '../cycle/model.ts';
import type { OperatingPoint } from '../cycle/operating-point.ts';
import type { CycleSystem } from '../cycle/system.ts';
import { beyondMixture } from '../combustion/completeness.ts';
import { effectiveOctane } from '../combustion/knock.ts';
import { frictionParts } from '../friction/friction-parts.ts';
import { AIR_INDEX } from '../gas/mixture.ts';
import { highestPoint } from '../numerics/highest-point.ts';
import { TURN } from '../units.ts';
import { blowerFigures } from './blower-figures.ts';
import { energyBalance } from './energy-balance.ts';
import { knockFigures } from './knock-figures.ts';
import { PeriodTotals } from './period-totals.ts';
import { bypassFigures } from './bypass-figures.ts';
import { crankcaseFigures } from './crankcase-figures.ts';
import { notesFor } from './notes.ts';
import type {
  BlowerFigures,
  CylinderFigures,
  EngineFigures,
  GasFigures,
  GasTrace,
  SolvedPoint,
  Traces,
  UnsolvedPoint,
} from './point-result.ts';
import { reliefFigures } from './relief-figures.ts';
import { wallFigures } from './wall-figures.ts';
import type { Recorder } from './recorder.ts';

/** Everything that is reported of a recorded period. Definitions: docs/conventions.md. */
export function summarise(
  system: CycleSystem,
  records: Float64Array,
  began: Float64Array,
  recorder: Recorder,
  cycles: number,
  change: number,
  turns: number = system.model.drive.turns,
): SolvedPoint {
  const { model, point } = system;
  const { geometry, network } = model;
  const totals = new PeriodTotals(system, records, began);
  const traces = recorder.traces();
  const held = began.subarray(began.length - system.memory.walls.length);
  const walls = wallFigures(system, records, held, turns);
  const cylinders = geometry.cylinders.map((_, j) => ({
    ...cylinderFigures(system, totals, traces, j, turns),
    exhaustGas: recorder.exhaust.figures(j),
    walls: walls && walls[j],
  }));
  const gauge = (node: number, trace: GasTrace): GasFigures => gasFigures(system, totals, trace, node, turns);
  const between = (node: number) => gauge(node, recorder.gas(node));
  const { blower, stages } = blowerFigures(system, totals, traces, between, turns);
  const engine = engineFigures(system, totals, cylinders, blower, turns);
  const { mass, energy, species } = totals.defects();
  const result: Omit<SolvedPoint, 'notes'> = {
    speed: point.speed,
    throttle: point.throttle,
    converged: true,
    preliminary: false,
    turnsPerPeriod: turns,
    cycles,
    residuals: { mass, energy, species, change },
    engine,
    blower,
    stages,
    plenum: gauge(network.at.plenum, traces.plenum),
    relief: reliefFigures(system, totals, recorder.lifts(), blower.massFlow, turns),
    bypass: bypassFigures(system, totals, blower.massFlow, turnRate(system) / turns),
    inletBox: gauge(network.at.box, traces.inletBox),
    collectors: network.at.collectors.map((node, i) => gauge(node, traces.collectors[i])),
    crankcase: crankcaseFigures(
      system,
      totals,
      traces,
      (node) => gauge(node, node === network.at.plenum ? traces.plenum : traces.crankcase!),
      turnRate(system) / turns,
    ),
    cylinders,
    traces,
  };
  return { ...result, notes: notesFor(model, result, Math.max(...system.burning.liquidAtSpark)) };
}

function ambientDensity(system: CycleSystem): number {
  const { ambient } = system.model.engine;
  return ambient.pressure / (system.gas.set.gasConstants[AIR_INDEX] * ambient.temperature);
}

function cylinderFigures(
  system: CycleSystem,
  totals: PeriodTotals,
  traces: Traces,
  j: number,
  turns: number,
): Omit<CylinderFigures, 'walls' | 'exhaustGas'> {
  const { geometry, network, engine } = system.model;
  const shape = geometry.cylinders[j];
  const trace = traces.cylinders[j];
  const trapped = system.trapped[j];
  const reference = ambientDensity(system) * shape.sweptVolume;
  const transfer = network.through.transfers[j];
  const exhaust = network.through.exhausts[j];

  const delivered = totals.through(transfer, AIR_INDEX) / turns;
  // Of the trapped air, what came with this turn's charge: the old gas keeps its unburned share.
  const freshShare =
    trapped.stale < 1 ? Math.max(0, (trapped.purity - trapped.stale) / (1 - trapped.stale)) : 1;
  const retained = trapped.purity > 0 ? (trapped.air * freshShare) / trapped.purity : 0;

  const peak = highestPoint(traces.angle, trace.pressure);
  const afterTdc = (peak.x - shape.tdc) % TURN;
  const heat = (surface: number) =>
    (totals.record(system.cylinderWalls, 3 * j + surface) / turns) * turnRate(system);
  return {
    row: shape.row,
    number: shape.number,
    trappedMass: trapped.mass,
    trappedAir: trapped.air,
    purity: trapped.purity,
    deliveryRatio: delivered / reference,
    trappingEfficiency: delivered > 0 ? retained / delivered : 0,
    chargingEfficiency: retained / reference,
    imep: totals.record(system.pistonWork, j) / turns / shape.sweptVolume,
    peakPressure: peak.y,
    peakPressureAngle: afterTdc > TURN / 2 ? afterTdc - TURN : afterTdc,
    peakTemperature: highestPoint(traces.angle, trace.temperature).y,
    pressureAtExhaustClosing: trapped.pressure,
    burnDuration: system.memory.burnDuration(j),
    burnDelay: system.memory.burnDelay(j),
    burnedShare: system.memory.completeness(j),
    misfire:
      engine.combustion.enabled &&
      (1 - trapped.purity > engine.combustion.misfireResidual ||
        beyondMixture(system.burning.lambdaAtSpark[j], engine.combustion)),
    knock: knockFigures(system, traces, j, turns, octaneOf(system)),
    wallHeat: { crown: heat(0), head: heat(1), liner: heat(2) },
    exhaustTemperature: totals.temperatureThrough(exhaust) ?? system.model.engine.ambient.temperature,
    transferBackflow: totals.record(system.backflow, j) / turns,
    exhaustBackflow: totals.record(system.backflow, geometry.cylinders.length + j) / turns,
  };
}

const octaneOf = ({ model }: CycleSystem): number => effectiveOctane(model.engine.knock, model.mixture.fuel);

const turnRate = (system: CycleSystem): number => system.omega / TURN;

function engineFigures(
  system: CycleSystem,
  totals: PeriodTotals,
  cylinders: readonly CylinderFigures[],
  blower: BlowerFigures,
  turns: number,
): EngineFigures {
  const { model, omega } = system;
  const { geometry, network, engine } = model;
  const { through } = network;
  const perSecond = omega / TURN / turns;
  const swept = geometry.sweptVolume;
  const reference = ambientDensity(system) * swept;
  const airPerTurn =
    through.transfers.reduce((sum, edge) => sum + totals.through(edge, AIR_INDEX), 0) / turns;
  const trappedMass = sum(cylinders, (c) => c.trappedMass);
  const freshMass = geometry.cylinders.reduce((total, _, j) => {
    const { mass, purity, stale } = system.trapped[j];
    return total + mass * Math.max(0, stale < 1 ? (purity - stale) / (1 - stale) : 1);
  }, 0);
  const retained = sum(cylinders, (c, j) => c.chargingEfficiency * geometry.cylinders[j].sweptVolume) / swept;
  const deliveryRatio = airPerTurn / reference;

  const stroke = 2 * engine.train.crankRadius;
  const work = totals.sum(system.pistonWork) * perSecond;
  const undersides = system.undersideWork ? totals.sum(system.undersideWork) * perSecond : 0;
  const imep = totals.sum(system.pistonWork) / turns / swept;
  const peak = sum(cylinders, (c) => c.peakPressure) / cylinders.length;
  const parts = frictionParts(engine.friction, peak, stroke, omega, swept);
  const friction = parts.rings + parts.bearings + parts.windage + parts.oilPump + parts.starter;
  const frictionPower = (friction * swept * omega) / TURN;
  const crankPower = work + undersides - frictionPower - blower.shaftPower;
  const { outputGearEfficiency } = engine.friction;
  const brakePower = crankPower > 0 ? crankPower * outputGearEfficiency : crankPower / outputGearEfficiency;
  const fuelFlow = totals.fuelFed() * perSecond;
  const octane = octaneOf(system);
  const needed = cylinders.flatMap(({ knock }) => (knock ? [knock.octaneNeeded] : []));
  const wallHeat = totals.sum(system.cylinderWalls) * perSecond;
  return {
    sweptVolume: swept,
    airFlow: totals.through(through.throttle, AIR_INDEX) * perSecond,
    fuelFlow,
    lambda: engine.charge.lambda,
    deliveryRatio,
    scavengingEfficiency: trappedMass > 0 ? freshMass / trappedMass : 0,
    trappingEfficiency: deliveryRatio > 0 ? retained / deliveryRatio : 0,
    chargingEfficiency: retained,
    imep,
    fmep: friction,
    frictionParts: parts,
    bmep: (brakePower * TURN) / omega / swept,
    torque: brakePower / omega,
    brakePower,
    bsfc: brakePower > 0 ? fuelFlow / brakePower : null,
    octane,
    knockMargin: needed.length > 0 ? octane - Math.max(...needed) : null,
    wallHeat,
    balance: energyBalance(system, totals, perSecond, {
      brake: brakePower,
      friction: frictionPower + crankPower - brakePower,
      blowerShaft: blower.shaftPower,
    }),
  };
}

function gasFigures(
  system: CycleSystem,
  totals: PeriodTotals,
  trace: GasTrace,
  node: number,
  turns: number,
): GasFigures {
  const i = system.gauges.nodes.indexOf(node);
  const period = (turns * TURN) / system.omega;
  return {
    meanPressure: totals.record(system.gauges, 2 * i) / period,
    minPressure: Math.min(...trace.pressure),
    maxPressure: Math.max(...trace.pressure),
    meanTemperature: totals.record(system.gauges, 2 * i + 1) / period,
  };
}

function sum<T>(items: readonly T[], of: (item: T, index: number) => number): number {
  return items.reduce((total, item, i) => total + of(item, i), 0);
}

/** A point without an answer: what was asked, why there is none, no figures. */
export function unsolved(
  model: Model,
  point: OperatingPoint,
  cycles: number,
  change: number,
  reason: string,
): UnsolvedPoint {
  return {
    converged: false,
    speed: point.speed,
    throttle: point.throttle,
    turnsPerPeriod: model.drive.turns,
    cycles,
    change: Number.isFinite(change) ? change : null,
    reason,
  };
}
