import { wheelPoint } from '../blower/centrifugal/wheel-point.ts';
import { dragTorque } from '../blower/drag.ts';
import { leastWorkPerVolume, workPerVolume } from '../blower/internal-compression.ts';
import type { BlowerFlow } from '../cycle/flows/blower-flow.ts';
import type { CycleSystem } from '../cycle/system.ts';
import type { Blower } from '../engine.ts';
import { timeMean } from '../numerics/time-mean.ts';
import { TURN } from '../units.ts';
import type { PeriodTotals } from './period-totals.ts';
import type { BlowerFigures, GasFigures, StageFigures, Traces } from './point-result.ts';

/** One stage, and the gas on both its sides, in time means. */
export interface Stage {
  readonly blower: Blower;
  readonly ratio: number;
  readonly efficiency: number;
  readonly flow: BlowerFlow;
  readonly edge: number;
  readonly slip: number;
  readonly carriedBack: number;
  readonly inlet: { readonly node: number; readonly pressure: number; readonly temperature: number };
  readonly outletPressure: number;
}

/** What the blowers of one stage together do over a recorded period. Definitions: docs/conventions.md. */
export function stageFigures(
  { model, omega, gas }: CycleSystem,
  totals: PeriodTotals,
  { blower, ratio, efficiency, flow, edge, slip, carriedBack, inlet: before, outletPressure: outlet }: Stage,
  turns: number,
): BlowerFigures {
  const period = (turns * TURN) / omega;
  const displaced = totals.massThrough(edge);
  // What the mesh takes back went forward beside what is displaced: only how much denser it has become is lost.
  const taken = carriedBack < 0 ? 0 : totals.massThrough(carriedBack);
  const back = totals.massThrough(slip) + taken;
  const net = displaced / (1 + blower.carriedBackShare);
  const work = totals.record(flow, 0);
  const heat = totals.record(flow, 1);
  const rotorSpeed = omega * ratio;
  const drag = dragTorque(blower, rotorSpeed) * rotorSpeed;
  const fluidPower = work / period;
  const massFlow = (displaced - back) / period;
  const inlet = { ...before, gasConstant: gas.gasConstant[before.node], gamma: gas.gamma[before.node] };
  const least = leastPower(inlet, outlet, massFlow);
  const displacedRate = (blower.count * blower.displacement * rotorSpeed) / TURN;
  return {
    displacementPerTurn: blower.count * blower.displacement * ratio,
    rotorSpeed,
    tipSpeed: 0.5 * blower.tipDiameter * rotorSpeed,
    massFlow,
    slipFraction: net > 0 ? (back - blower.carriedBackShare * net) / net : 0,
    shaftPower:
      (Math.max(fluidPower, 0) / blower.mechanicalEfficiency + Math.min(fluidPower, 0) + drag) / efficiency,
    fluidPower,
    isentropicEfficiency: fluidPower > 0 && least > 0 ? least / fluidPower : null,
    outletTemperature: totals.temperatureThrough(edge, work - heat) ?? model.engine.ambient.temperature,
    pressureRise: outlet - inlet.pressure,
    builtIn:
      blower.volumeRatio > 1
        ? {
            pressureRatio: blower.volumeRatio ** inlet.gamma,
            neededRatio: outlet / inlet.pressure,
            mismatchPower:
              displacedRate *
              (workPerVolume(blower.volumeRatio, inlet.pressure, outlet, inlet.gamma) -
                leastWorkPerVolume(inlet.pressure, outlet, inlet.gamma)),
          }
        : null,
    wheel: blower.impeller && wheelPoint(blower, blower.impeller, rotorSpeed, displaced / period, inlet),
  };
}

interface Inlet {
  readonly pressure: number;
  readonly temperature: number;
  readonly gasConstant: number;
  readonly gamma: number;
}

/** Isentropic, for a mass flow from the inlet to a pressure [W]. */
function leastPower(
  { pressure, temperature, gasConstant, gamma }: Inlet,
  outlet: number,
  flow: number,
): number {
  const density = pressure / (gasConstant * temperature);
  return (flow / density) * leastWorkPerVolume(pressure, outlet, gamma);
}

/** What all blowers do, and stage by stage where there are two. */
export function blowerFigures(
  system: CycleSystem,
  totals: PeriodTotals,
  traces: Traces,
  gauge: (node: number) => GasFigures,
  turns: number,
): { readonly blower: BlowerFigures; readonly stages: StageFigures | null } {
  const { model, gas } = system;
  const { through, at } = model.network;
  const { ratio, efficiency, second: secondDrive } = model.drive;
  const { secondStage } = model.engine;
  const box = {
    node: at.box,
    pressure: timeMean(traces.angle, traces.inletBox.pressure),
    temperature: timeMean(traces.angle, traces.inletBox.temperature),
  };
  const plenum = timeMean(traces.angle, traces.plenum.pressure);
  const own: Omit<Stage, 'outletPressure'> = {
    blower: model.engine.blower,
    ratio,
    efficiency,
    flow: system.blower,
    edge: through.blower,
    slip: through.slip,
    carriedBack: through.carriedBack,
    inlet: box,
  };
  const { secondBlower, cooler } = system;
  if (!secondStage || !secondDrive || !secondBlower)
    return { blower: stageFigures(system, totals, { ...own, outletPressure: plenum }, turns), stages: null };
  const [interstage, beforeSecond] = [gauge(at.interstage), gauge(at.beforeSecond)];
  const first = stageFigures(system, totals, { ...own, outletPressure: interstage.meanPressure }, turns);
  const second = stageFigures(
    system,
    totals,
    {
      blower: secondStage.blower,
      ratio: secondDrive.ratio,
      efficiency: secondDrive.efficiency,
      flow: secondBlower,
      edge: through.second,
      slip: through.secondSlip,
      carriedBack: -1,
      inlet: {
        node: at.beforeSecond,
        pressure: beforeSecond.meanPressure,
        temperature: beforeSecond.meanTemperature,
      },
      outletPressure: plenum,
    },
    turns,
  );
  const fluidPower = first.fluidPower + second.fluidPower;
  const inlet = { ...box, gasConstant: gas.gasConstant[at.box], gamma: gas.gamma[at.box] };
  const least = leastPower(inlet, plenum, first.massFlow);
  return {
    blower: {
      ...first,
      shaftPower: first.shaftPower + second.shaftPower,
      fluidPower,
      isentropicEfficiency: fluidPower > 0 && least > 0 ? least / fluidPower : null,
      outletTemperature: second.outletTemperature,
      pressureRise: plenum - box.pressure,
    },
    stages: {
      first,
      second,
      interstage,
      beforeSecond,
      cooler: cooler && {
        heat: (totals.sum(cooler) * system.omega) / (TURN * turns),
        pressureLoss: interstage.meanPressure - beforeSecond.meanPressure,
      },
    },
  };
}
