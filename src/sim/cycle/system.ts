import { helixAttenuation } from '../blower/roots-ripple.ts';
import { tubeCoefficient } from '../heat-transfer/tube-nusselt.ts';
import { BurnTiming } from '../combustion/burn-timing.ts';
import type { FlameSpeedLaw } from '../combustion/flame-speed.ts';
import { FLAME_SPEED_LAWS } from '../combustion/flame-speed.ts';
import { throttleArea } from '../exchange/throttle-area.ts';
import { smoothingPressure } from '../exchange/smooth-orifice.ts';
import type { DirectionalCoefficient, WallPatch } from '../engine.ts';
import { AIR_INDEX, FUEL_INDEX, PRODUCTS_INDEX } from '../gas/mixture.ts';
import { enthalpy } from '../gas/polynomial.ts';
import { AIR } from '../gas/air.ts';
import { liquidEnthalpy } from '../gas/fuel.ts';
import { TURN } from '../units.ts';
import { EdgeFlows } from './edge-flows.ts';
import { Carburettor } from './flows/carburettor.ts';
import { DisplacementBlower } from './flows/displacement-blower.ts';
import type { Opening } from './flows/orifices.ts';
import { Orifices } from './flows/orifices.ts';
import { ReliefValve } from './flows/relief-valve.ts';
import { Windows } from './flows/windows.ts';
import { GasStates } from './gas-states.ts';
import { ImplicitPressures } from './implicit-pressures.ts';
import type { FlowElement, Instant, Source } from './instant.ts';
import { Memory } from './memory.ts';
import type { Model } from './model.ts';
import type { OperatingPoint } from './operating-point.ts';
import { Pistons } from './pistons.ts';
import type { CycleEvent } from './schedule.ts';
import { Backflow } from './sources/backflow.ts';
import type { Firing } from './sources/combustion.ts';
import { Burning } from './sources/combustion.ts';
import { CylinderWalls } from './sources/cylinder-walls.ts';
import { Gauges } from './sources/gauges.ts';
import type { NodeWall } from './sources/node-walls.ts';
import { NodeWalls } from './sources/node-walls.ts';
import { PistonWork } from './sources/piston-work.ts';

/**
 * Smoothing of the clearance flow, which is there for no flow at all [Pa]: far below the pressure rise of the slowest crank,
 * some 50 Pa, so that slip at cranking speed is not hidden.
 */
const SLIP_SMOOTHING = 2;

/**
 * Pressure difference within which a flow counts as about to turn, in multiples of its smoothing at the point's own speed: a
 * hundredth of the difference that carries the design flow.
 */
const TURNING = 10;

/** What stood in a cylinder when all its windows had shut. */
export interface Trapped {
  mass: number;
  air: number;
  fuel: number;
  purity: number;
  /** Unburned share of the old gas, see Windows. */
  stale: number;
  pressure: number;
  temperature: number;
}

/**
 * The network of one design at one operating point: rates of the whole state, its linearisation, its events.
 *
 * The state vector is the nodes' stretches one after the other (`stateSize` numbers), then, used only while recording,
 * one accumulator for everything that must be known of a period: every edge's constituents and enthalpy, and what the
 * sources record. Accumulators pass through the same steps as the state, so balances close to round-off.
 */
export class CycleSystem {
  readonly omega: number;
  readonly instant: Instant;
  readonly gas: GasStates;
  readonly edges: EdgeFlows;
  readonly implicit: ImplicitPressures;
  readonly pistons: Pistons;
  readonly memory: Memory;
  readonly trapped: readonly Trapped[];
  readonly stateSize: number;
  readonly size: number;

  readonly blower: DisplacementBlower;
  readonly pistonWork: PistonWork;
  readonly cylinderWalls: CylinderWalls;
  readonly burning: Burning;
  readonly nodeWalls: NodeWalls;
  readonly gauges: Gauges;
  readonly backflow: Backflow;
  /** Flow through the engine at the wanted delivery ratio, ambient density [kg/s]. */
  readonly designFlow: number;

  private readonly flows: readonly FlowElement[];
  private readonly sources: readonly Source[];

  constructor(
    readonly model: Model,
    readonly point: OperatingPoint,
    readonly firing: Firing = 'averaged',
  ) {
    const { engine, geometry, network, mixture, set, drive } = model;
    const { at, through } = network;
    const omega = point.speed;
    this.omega = omega;
    this.instant = { theta: 0, span: 0, before: 0, omega };
    const gas = new GasStates(set, network.dynamicCount, network.nodes.length);
    this.gas = gas;
    network.nodes.forEach((node, i) => (gas.volume[i] = node.volume));
    const { ambient } = engine;
    const airOnly = set.constituents.map((_, k) => (k === AIR_INDEX ? 1 : 0));
    gas.setReservoir(at.ambient, ambient.pressure, ambient.temperature, airOnly);
    const edges = new EdgeFlows(network.edges, gas);
    this.edges = edges;
    this.pistons = new Pistons(geometry.cylinders, at.cylinders, geometry.boreArea, omega, gas);
    this.memory = new Memory(geometry.cylinders.length);
    this.trapped = geometry.cylinders.map(() => ({
      mass: 0,
      air: 0,
      fuel: 0,
      purity: 0,
      stale: 0,
      pressure: 0,
      temperature: 0,
    }));

    const density = ambient.pressure / (set.gasConstants[AIR_INDEX] * ambient.temperature);
    const turnRate = omega / TURN;
    this.designFlow = engine.wanted.deliveryRatio * density * geometry.sweptVolume * turnRate;
    const perCylinder = this.designFlow / geometry.cylinders.length;
    // Openings are made for the top of the speed range, so that is where their design flow is taken.
    const top = engine.wanted.maxSpeed / omega;
    const smoothing = (CdA: number, flow: number) =>
      CdA > 0 ? smoothingPressure(top * flow, CdA, density) : 1;
    const opening = (edge: number, area: number, cd: DirectionalCoefficient, flow: number): Opening => ({
      edge,
      forward: cd.forward * area,
      backward: cd.backward * area,
      smoothing: smoothing(cd.forward * area, flow),
    });

    const throttle =
      throttleArea(engine.intake.throttle, point.throttle) * engine.intake.throttle.dischargeCoefficient;
    const intake = inSeries(throttle, engine.intake.restrictor);
    const { airFuelRatio } = mixture;
    const fuelPerAir = 1 / airFuelRatio;
    const fractions = set.constituents.map((_, k) =>
      k === AIR_INDEX ? 1 / (1 + fuelPerAir) : k === FUEL_INDEX ? fuelPerAir / (1 + fuelPerAir) : 0,
    );
    const carburettor = new Carburettor(
      {
        edge: through.throttle,
        forward: intake,
        backward: intake,
        smoothing: smoothing(intake, this.designFlow),
      },
      {
        fractions,
        fuelPerAir,
        enthalpy:
          (airFuelRatio * enthalpy(AIR, ambient.temperature) +
            liquidEnthalpy(mixture.fuel, ambient.temperature) +
            mixture.evaporation.heatFromWalls) /
          (1 + airFuelRatio),
      },
      gas,
      edges,
    );
    const { blower, passages, collectors } = engine;
    this.blower = new DisplacementBlower(
      through.blower,
      {
        displacementPerRadian: (blower.count * blower.displacement * drive.ratio) / TURN,
        lobes: blower.lobes,
        ratio: drive.ratio,
        rippleDepth: drive.phaseAveraged
          ? 0
          : blower.rippleDepth * helixAttenuation(blower.lobes, blower.helixAngle),
        casingHeatShare: blower.casingHeatShare,
      },
      this.instant,
      gas,
      edges,
    );
    const slipArea = blower.count * blower.clearanceArea;
    // Windows are open for about a third of a turn: their design flow is three times the mean.
    const windowFlow = 3 * perCylinder;
    const outletFlow = this.designFlow / collectors.length;
    const slip: Opening = {
      edge: through.slip,
      forward: blower.clearanceDischarge * slipArea,
      backward: blower.clearanceDischarge * slipArea,
      smoothing: SLIP_SMOOTHING,
    };
    const openings = [
      ...through.entries.map((edge) =>
        opening(edge, passages.entryArea, passages.entryDischarge, windowFlow),
      ),
      ...through.outlets.map((edge, i) =>
        opening(edge, collectors[i].outletArea, collectors[i].outletDischarge, outletFlow),
      ),
    ];
    const orifices = new Orifices(
      [slip, ...openings].filter((o) => o.forward > 0 || o.backward > 0),
      gas,
      edges,
    );
    const { windows } = engine;
    const largest = (kind: 'exhaust' | 'transfer') =>
      Math.max(...geometry.cylinders.map((c) => c[kind].fullArea));
    const transferSmoothing = smoothing(windows.transferDischarge.forward * largest('transfer'), windowFlow);
    const exhaustSmoothing = smoothing(windows.exhaustDischarge.forward * largest('exhaust'), windowFlow);
    const windowsFlow = new Windows(
      { transfers: through.transfers, exhausts: through.exhausts },
      {
        transferDischarge: windows.transferDischarge,
        exhaustDischarge: windows.exhaustDischarge,
        transferSmoothing,
        exhaustSmoothing,
        shortCircuitShare: engine.scavenging.shortCircuitShare,
        fresh: model.fresh,
      },
      model.outflow,
      this.pistons,
      this.memory,
      gas,
      edges,
    );
    const flows: FlowElement[] = [carburettor, this.blower, orifices, windowsFlow];
    const { relief } = engine.plenum;
    if (relief) {
      const area = relief.dischargeCoefficient * relief.area;
      flows.push(
        new ReliefValve(
          through.relief,
          area,
          relief.crackingPressure,
          relief.fullOpenPressure,
          smoothing(area, this.designFlow),
          gas,
          edges,
        ),
      );
    }
    this.flows = flows;

    const stroke = 2 * engine.train.crankRadius;
    this.pistonWork = new PistonWork(at.cylinders, gas);
    this.cylinderWalls = new CylinderWalls(
      at.cylinders,
      engine.cylinderHeat,
      engine.cylinder.bore,
      2 * stroke * turnRate,
      this.pistons,
      gas,
    );
    this.burning = new Burning(
      at.cylinders.map((node, j) => ({ node, sparkAngle: geometry.cylinders[j].sparkAngle })),
      engine.combustion,
      new BurnTiming(
        engine.combustion,
        (FLAME_SPEED_LAWS as Readonly<Record<string, FlameSpeedLaw>>)[engine.charge.fuel],
        gas.set.gasConstants[PRODUCTS_INDEX] /
          (fractions[AIR_INDEX] * set.gasConstants[AIR_INDEX] +
            fractions[FUEL_INDEX] * set.gasConstants[FUEL_INDEX]),
      ),
      airFuelRatio,
      engine.charge.lambda,
      firing,
      this.instant,
      this.memory,
      gas,
    );
    // Film temperatures [K] only pick the transport properties of the gas; typical, and of little weight.
    const wall = (node: number, patch: WallPatch, flow: number, filmTemperature: number): NodeWall => ({
      node,
      conductance:
        patch.area *
        tubeCoefficient(
          patch.hydraulicDiameter,
          flow / (0.25 * Math.PI * patch.hydraulicDiameter ** 2),
          filmTemperature,
          patch.enhancement,
        ),
      temperature: patch.temperature,
    });
    this.nodeWalls = new NodeWalls(
      [
        wall(at.box, engine.intake.boxWall, this.designFlow, ambient.temperature),
        wall(at.plenum, engine.plenum.wall, this.designFlow, ambient.temperature + 30),
        ...at.passages.map((node) => wall(node, passages.wall, perCylinder, ambient.temperature + 60)),
        ...at.collectors.map((node, i) => wall(node, collectors[i].wall, outletFlow, 900)),
      ],
      gas,
    );
    this.gauges = new Gauges([at.box, at.plenum, ...at.collectors], gas);
    this.backflow = new Backflow([...through.transfers, ...through.exhausts], edges);
    this.sources = [
      this.blower,
      this.pistonWork,
      this.cylinderWalls,
      this.nodeWalls,
      this.gauges,
      this.backflow,
    ];
    this.stateSize = network.dynamicCount * gas.stride;
    let end = this.stateSize + edges.count * edges.stride;
    for (const source of this.sources) {
      source.recordAt = end;
      end += source.recordCount;
    }
    this.burning.recordAt = end;
    this.size = end + this.burning.recordCount;
    const mayTurn = (edge: number, scale: number) => (edges.turning[edge] = (TURNING * scale) / (top * top));
    for (const { edge, smoothing } of openings) mayTurn(edge, smoothing);
    for (const edge of through.transfers) mayTurn(edge, transferSmoothing);
    for (const edge of through.exhausts) mayTurn(edge, exhaustSmoothing);
    // Edges without any opening never flow.
    for (let e = 0; e < edges.count; e++) edges.close(e);
    this.implicit = new ImplicitPressures(gas, edges);
  }

  /**
   * Rates of the state, and of the accumulators when recording, at the instant's angle; burning apart, which belongs to a whole
   * step.
   *
   * @param y     - state
   * @param rates - overwritten [per second]
   * @returns false where the state is out of range; `failure` then says how
   */
  rates(y: Float64Array, rates: Float64Array, record: boolean): boolean {
    const { instant, gas, edges, flows, sources } = this;
    this.pistons.moveTo(instant.theta);
    if (!gas.unpack(y)) return false;
    for (let i = 0; i < flows.length; i++) flows[i].setFlows();
    for (let k = 0; k < this.stateSize; k++) rates[k] = 0;
    edges.apply(rates, record, this.stateSize);
    for (let i = 0; i < sources.length; i++) sources[i].addTo(rates, record);
    return true;
  }

  /** Acts on events from the gas now unpacked. */
  actOn(events: readonly CycleEvent[]): void {
    for (let i = 0; i < events.length; i++) {
      const { kind, cylinder: j } = events[i];
      if (kind === 'exhaust opens')
        this.memory.setStalePurity(j, this.purity(this.model.network.at.cylinders[j]));
      else if (kind === 'trapped') this.noteTrapped(j);
      else if (this.model.engine.combustion.enabled) this.burning.ignite(j);
    }
  }

  /** Mass fraction of fresh charge in a node [-]. */
  purity(node: number): number {
    const { gas, model } = this;
    const n = gas.set.count;
    let purity = 0;
    for (let k = 0; k < n; k++) if (model.fresh[k]) purity += gas.fraction[node * n + k];
    return purity;
  }

  private noteTrapped(j: number): void {
    const { gas } = this;
    const node = this.model.network.at.cylinders[j];
    const base = node * gas.set.count;
    const into = this.trapped[j];
    into.mass = gas.mass[node];
    into.air = gas.mass[node] * gas.fraction[base + AIR_INDEX];
    into.fuel = gas.mass[node] * gas.fraction[base + FUEL_INDEX];
    into.purity = this.purity(node);
    into.stale = this.memory.stalePurity(j);
    into.pressure = gas.pressure[node];
    into.temperature = gas.temperature[node];
  }

  /**
   * Error of a step relative to each node's mass and thermal energy, largest of all; see RosenbrockW.e.
   *
   *   max( |dm_k| / m,  |dU - sum u_k dm_k| / (m c_v T) )
   */
  errorNorm(stages: readonly Float64Array[], weights: Float64Array): number {
    const { gas } = this;
    const n = gas.set.count;
    let largest = 0;
    for (let node = 0; node < gas.dynamicCount; node++) {
      const at = node * gas.stride;
      let thermal = 0;
      let mass = 0;
      for (let k = 0; k <= n; k++) {
        let error = 0;
        for (let i = 0; i < weights.length; i++) error += weights[i] * stages[i][at + k];
        if (k < n) {
          thermal -= error * gas.energyOf[node * n + k];
          mass = Math.max(mass, Math.abs(error));
        } else thermal += error;
      }
      const relative = Math.max(
        mass / gas.mass[node],
        Math.abs(thermal) / (gas.heatCapacity[node] * gas.temperature[node]),
      );
      if (!(relative <= largest)) largest = relative;
    }
    return largest === largest ? largest : Infinity;
  }

  /** Why the last `rates` or step failed. */
  failure(theta: number): { ok: false; reason: string } {
    const { gas, model } = this;
    const node = gas.failedNode >= 0 ? model.network.nodes[gas.failedNode].label : 'the network';
    const degrees = ((theta * 360) / TURN).toFixed(1);
    return {
      ok: false,
      reason: `the gas in ${node} left the range the model accepts (200 to 3500 K, mass above 0) near ${degrees}° of crank angle`,
    };
  }
}

/** One opening that passes, at small pressure differences, what throttle and restrictor pass one after the other. */
function inSeries(
  throttle: number,
  restrictor: { bore: number; dischargeCoefficient: number } | null,
): number {
  if (!restrictor) return throttle;
  const plate = 0.25 * Math.PI * restrictor.bore ** 2 * restrictor.dischargeCoefficient;
  return (throttle * plate) / Math.hypot(throttle, plate);
}
