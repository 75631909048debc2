import { wheelPoint } from '../blower/centrifugal/wheel-point.ts';
import { dragTorque } from '../blower/drag.ts';
import { leastWorkPerVolume, workPerVolume } from '../blower/internal-compression.ts';
import type { CycleSystem } from '../cycle/system.ts';
import { timeMean } from '../numerics/time-mean.ts';
import { TURN } from '../units.ts';
import type { PeriodTotals } from './period-totals.ts';
import type { BlowerFigures, Traces } from './point-result.ts';

/** What all blowers together do over a recorded period. Definitions: docs/conventions.md. */
export function blowerFigures(
  system: CycleSystem,
  totals: PeriodTotals,
  traces: Traces,
  turns: number,
): BlowerFigures {
  const { model, omega, gas } = system;
  const { through, at } = model.network;
  const { blower, ambient } = model.engine;
  const { ratio, efficiency } = model.drive;
  const period = (turns * TURN) / omega;
  const displaced = totals.massThrough(through.blower);
  // What the mesh takes back went forward beside what is displaced: only how much denser it has become is lost.
  const taken = through.carriedBack < 0 ? 0 : totals.massThrough(through.carriedBack);
  const back = totals.massThrough(through.slip) + taken;
  const net = displaced / (1 + blower.carriedBackShare);
  const work = totals.record(system.blower, 0);
  const heat = totals.record(system.blower, 1);
  const rotorSpeed = omega * ratio;
  const drag = dragTorque(blower, rotorSpeed) * rotorSpeed;
  const fluidPower = work / period;
  const massFlow = (displaced - back) / period;
  const inlet = {
    pressure: timeMean(traces.angle, traces.inletBox.pressure),
    temperature: timeMean(traces.angle, traces.inletBox.temperature),
    gasConstant: gas.gasConstant[at.box],
    gamma: gas.gamma[at.box],
  };
  const outlet = timeMean(traces.angle, traces.plenum.pressure);
  const density = inlet.pressure / (inlet.gasConstant * inlet.temperature);
  const least = (massFlow / density) * leastWorkPerVolume(inlet.pressure, outlet, inlet.gamma);
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
    outletTemperature: totals.temperatureThrough(through.blower, work - heat) ?? ambient.temperature,
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
