import type { DirectionalCoefficient } from '../../engine.ts';
import { SeriesArea } from '../../exchange/orifices-in-series.ts';
import { throttleArea } from '../../exchange/throttle-area.ts';
import { liquidEnthalpy } from '../../gas/fuel.ts';
import { AIR_INDEX } from '../../gas/mixture.ts';
import { enthalpy } from '../../gas/polynomial.ts';
import type { EdgeFlows } from '../edge-flows.ts';
import type { BlowBy } from '../flows/blow-by.ts';
import type { CarburettorMixture } from '../flows/carburettor.ts';
import { Carburettor } from '../flows/carburettor.ts';
import type { BlowerFlow } from '../flows/blower-flow.ts';
import type { InertialPassages } from '../flows/inertial-passages.ts';
import type { Opening } from '../flows/orifices.ts';
import { Orifices } from '../flows/orifices.ts';
import { Cooler } from '../flows/cooler.ts';
import { ReliefValve } from '../flows/relief-valve.ts';
import { Bypass } from '../flows/bypass.ts';
import { Windows } from '../flows/windows.ts';
import type { GasStates } from '../gas-states.ts';
import type { FlowElement, Instant } from '../instant.ts';
import type { Memory } from '../memory.ts';
import type { Model } from '../model.ts';
import type { OperatingPoint } from '../operating-point.ts';
import type { Pistons } from '../pistons.ts';
import type { Zones } from '../zones.ts';
import { blowerOf, secondBlowerOf } from './blower-of.ts';
import { SLIP_SMOOTHING, pathSlipOf } from './slip-of.ts';
import type { DesignFlows } from './design-flows.ts';
import { blowByOf, breatherOf } from './crankcase.ts';
import { inertialPassagesOf } from './inertia.ts';
import { intakeSeries } from './intake-series.ts';

/** What elements and sources of one operating point share. */
export interface Parts {
  readonly model: Model;
  readonly point: OperatingPoint;
  readonly instant: Instant;
  readonly gas: GasStates;
  readonly edges: EdgeFlows;
  readonly pistons: Pistons;
  readonly memory: Memory;
  readonly design: DesignFlows;
  /** Null where every cylinder is one mixed volume. */
  readonly zones: Zones | null;
}

/** Everything that sets the flow of an edge; edges that nothing sets stay shut. */
export function flowElements(parts: Parts): {
  readonly elements: readonly FlowElement[];
  readonly blower: BlowerFlow;
  /** Null without a second stage; without a cooler before it. */
  readonly secondBlower: BlowerFlow | null;
  readonly cooler: Cooler | null;
  /** Null without one. */
  readonly relief: ReliefValve | null;
  readonly blowBy: BlowBy | null;
  readonly inertia: InertialPassages | null;
} {
  const { model } = parts;
  const blower = blowerOf(parts);
  const elements: FlowElement[] = [carburettorOf(parts), blower, orificesOf(parts), windowsOf(parts)];
  const { crankcase } = model.engine;
  const blowBy = blowByOf(parts);
  if (blowBy) elements.push(blowBy);
  if (crankcase) elements.push(breatherOf(parts, crankcase));
  const { slip } = model.engine.blower;
  if (slip) elements.push(pathSlipOf(parts, slip));
  const secondBlower = secondBlowerOf(parts);
  if (secondBlower) elements.push(secondBlower);
  const cooler = coolerOf(parts);
  if (cooler) elements.push(cooler);
  const relief = reliefOf(parts);
  if (relief) elements.push(relief);
  const bypass = bypassOf(parts);
  if (bypass) elements.push(bypass);
  const inertia = inertialPassagesOf(parts);
  if (inertia) elements.push(inertia);
  return { elements, blower, secondBlower, cooler, relief, blowBy, inertia };
}

function reliefOf({ model, gas, edges, memory, design }: Parts): ReliefValve | null {
  const { relief } = model.engine.plenum;
  if (!relief) return null;
  const area = relief.dischargeCoefficient * relief.area;
  const smoothing = design.smoothing(area, design.total);
  return new ReliefValve(model.network.through.relief, area, relief, smoothing, memory, gas, edges);
}

function coolerOf({ model, gas, edges, design }: Parts): Cooler | null {
  const cooler = model.engine.secondStage?.cooler;
  if (!cooler) return null;
  const { cooler: edge } = model.network.through;
  const CdA = cooler.area / Math.sqrt(cooler.lossFactor);
  const smoothing = design.smoothing(CdA, design.total);
  edges.turning[edge] = design.turning(smoothing);
  return new Cooler(edge, CdA, cooler, smoothing, gas, edges);
}

function bypassOf({ model, gas, edges, design }: Parts): Bypass | null {
  const { bypass } = model.engine.plenum;
  if (!bypass) return null;
  const { bypass: edge } = model.network.through;
  const area = bypass.dischargeCoefficient * bypass.area;
  const smoothing = design.smoothing(area, design.total);
  edges.turning[edge] = design.turning(smoothing);
  return new Bypass(edge, area, bypass, smoothing, model.network.at.ambient, gas, edges);
}

function carburettorOf({ model, point, gas, edges, design }: Parts): Carburettor {
  const { intake } = model.engine;
  const throttle = throttleArea(intake.throttle, point.throttle) * intake.throttle.dischargeCoefficient;
  const series = intakeSeries(intake, throttle);
  const edge = model.network.through.throttle;
  const area = throttle > 0 && series.length > 1 ? new SeriesArea(series, gas.gamma[edges.from[edge]]) : null;
  const CdA = area?.atRest ?? throttle;
  const smoothing = design.smoothing(CdA, design.total);
  const opening = { edge, forward: CdA, backward: CdA, smoothing };
  return new Carburettor(opening, area, supplied(model), gas, edges);
}

/** What leaves the carburettor inwards. */
function supplied({ engine, mixture }: Model): CarburettorMixture {
  const { airFuelRatio, fuel, evaporation, drawn } = mixture;
  const { temperature } = engine.ambient;
  const air = enthalpy(mixture.constituents[AIR_INDEX], temperature);
  if (engine.charge.feed !== 'carburettor') return { fractions: drawn, fuelPerAir: 0, enthalpy: air };
  return {
    fractions: drawn,
    fuelPerAir: 1 / airFuelRatio,
    enthalpy:
      (airFuelRatio * air + liquidEnthalpy(fuel, temperature) + evaporation.heatFromWalls) /
      (1 + airFuelRatio),
  };
}

function orificesOf({ model, gas, edges, design }: Parts): Orifices {
  const { blower, secondStage, passages, collectors } = model.engine;
  const { through } = model.network;
  const opening = (edge: number, area: number, cd: DirectionalCoefficient, flow: number): Opening => {
    const smoothing = design.smoothing(cd.forward * area, flow);
    edges.turning[edge] = design.turning(smoothing);
    return { edge, forward: cd.forward * area, backward: cd.backward * area, smoothing };
  };
  const slip = blower.slip ? 0 : blower.clearanceDischarge * blower.count * blower.clearanceArea;
  const second = secondStage ? secondStage.blower.clearanceDischarge * secondStage.blower.clearanceArea : 0;
  const openings = [
    { edge: through.secondSlip, forward: second, backward: second, smoothing: SLIP_SMOOTHING },
    { edge: through.slip, forward: slip, backward: slip, smoothing: SLIP_SMOOTHING },
    ...(passages.length === null
      ? through.entries.map((edge) =>
          opening(edge, passages.entryArea, passages.entryDischarge, design.window),
        )
      : []),
    ...through.outlets.flatMap((edge, i) =>
      collectors[i].pipe === null
        ? [opening(edge, collectors[i].outletArea, collectors[i].outletDischarge, design.perCollector)]
        : [],
    ),
  ];
  return new Orifices(
    openings.filter(({ forward, backward }) => forward > 0 || backward > 0),
    gas,
    edges,
  );
}

function windowsOf({ model, gas, edges, pistons, memory, design, zones }: Parts): Windows {
  const { engine, geometry, network, fresh, outflow } = model;
  const { transferDischarge, exhaustDischarge, transferTable, exhaustTable } = engine.windows;
  const { transfers, exhausts } = network.through;
  const smoothing = (kind: 'exhaust' | 'transfer', { forward }: DirectionalCoefficient) =>
    design.smoothing(forward * Math.max(...geometry.cylinders.map((c) => c[kind].fullArea)), design.window);
  const transferSmoothing = smoothing('transfer', transferDischarge);
  const exhaustSmoothing = smoothing('exhaust', exhaustDischarge);
  for (const edge of transfers) edges.turning[edge] = design.turning(transferSmoothing);
  for (const edge of exhausts) edges.turning[edge] = design.turning(exhaustSmoothing);
  return new Windows(
    { transfers, exhausts },
    {
      transferDischarge,
      exhaustDischarge,
      transferTable,
      exhaustTable,
      fullTransfer: geometry.cylinders.map((c) => c.transfer.fullArea),
      fullExhaust: geometry.cylinders.map((c) => c.exhaust.fullArea),
      transferSmoothing,
      exhaustSmoothing,
      shortCircuitShare: geometry.cylinders.map(
        (_, j) => engine.scavenging.ownShortCircuit[j] ?? engine.scavenging.shortCircuitShare,
      ),
      fresh,
    },
    outflow,
    pistons,
    memory,
    gas,
    edges,
    zones,
  );
}
