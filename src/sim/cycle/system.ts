import { AIR_INDEX } from '../gas/mixture.ts';
import { plenumVolume } from '../geometry/plenum-volume.ts';
import { TURN } from '../units.ts';
import { designFlows } from './assembly/design-flows.ts';
import type { Parts } from './assembly/flow-elements.ts';
import { flowElements } from './assembly/flow-elements.ts';
import { cylinderInjectionOf, evaporatingOf, passageInjectionOf } from './assembly/fuel-feed.ts';
import { burningOf, cylinderWallsOf, nodeWallsOf } from './assembly/heat-and-fire.ts';
import { zoneExchangeOf, zonesOf } from './assembly/zones.ts';
import { EdgeFlows } from './edge-flows.ts';
import type { BlowBy } from './flows/blow-by.ts';
import type { BlowerFlow } from './flows/blower-flow.ts';
import type { InertialPassages } from './flows/inertial-passages.ts';
import { sticksAtAll } from './flows/relief-valve.ts';
import type { Cooler } from './flows/cooler.ts';
import type { ReliefValve } from './flows/relief-valve.ts';
import { GasStates } from './gas-states.ts';
import { ImplicitPressures } from './implicit-pressures.ts';
import type { FlowElement, Instant, Source, StepSource } from './instant.ts';
import { Memory } from './memory.ts';
import { modelAt } from './mixture-at.ts';
import type { Model } from './model.ts';
import type { OperatingPoint } from './operating-point.ts';
import { Pistons } from './pistons.ts';
import type { CycleEvent } from './schedule.ts';
import { Backflow } from './sources/backflow.ts';
import type { Burning, Firing } from './sources/combustion.ts';
import type { CylinderInjection } from './sources/cylinder-injection.ts';
import type { CylinderWalls } from './sources/cylinder-walls.ts';
import type { Evaporating } from './sources/evaporating.ts';
import { SURFACES } from './sources/cylinder-walls.ts';
import { FilmMeans } from './sources/film-means.ts';
import { Gauges } from './sources/gauges.ts';
import type { NodeWalls } from './sources/node-walls.ts';
import type { PassageInjection } from './sources/passage-injection.ts';
import { PistonWork } from './sources/piston-work.ts';
import type { ZoneExchange } from './sources/zone-exchange.ts';
import type { Trapped } from './trapped.ts';
import { noteTrapped, nothingTrapped } from './trapped.ts';
import { SolvedWalls } from './walls/solved-walls.ts';
import type { Zones } from './zones.ts';

/**
 * The network of one design at one operating point: rates of the whole state, its linearisation, its events.
 *
 * The state vector is the nodes' stretches one after the other, the flows of passages with inertia and one number for the zones of each cylinder (`stateSize` numbers), then, used only while recording,
 * one accumulator for everything that must be known of a period: every edge's constituents and enthalpy, and what the
 * sources record. Where wall temperatures are worked out, the heat into them comes first and is carried always. Accumulators pass through the same steps as the state, so balances close to round-off.
 */
export class CycleSystem {
  /** With the mixture of the point. */
  readonly model: Model;
  readonly omega: number;
  readonly instant: Instant;
  readonly gas: GasStates;
  readonly edges: EdgeFlows;
  readonly implicit: ImplicitPressures;
  readonly pistons: Pistons;
  readonly memory: Memory;
  readonly trapped: readonly Trapped[];
  readonly stateSize: number;
  /** What every step carries: the state, and the heat into the walls where their temperatures are worked out from it. */
  readonly steppedSize: number;
  /** Where the edges' accumulators begin. */
  readonly edgesAt: number;
  readonly size: number;

  readonly blower: BlowerFlow;
  /** Null without a second stage; without a cooler before it. */
  readonly secondBlower: BlowerFlow | null;
  readonly cooler: Cooler | null;
  readonly pistonWork: PistonWork;
  /** Null where the crankcase takes no part, or the rings are tight. */
  readonly blowBy: BlowBy | null;
  readonly relief: ReliefValve | null;
  /** Passages whose flow is a state; null where a design has none. */
  readonly inertia: InertialPassages | null;
  /** Fresh and burned zones of the cylinders, and what changes them; null where each is one mixed volume. */
  readonly zones: Zones | null;
  readonly zoneExchange: ZoneExchange | null;
  /** Work on the undersides, where the crankcase takes part. */
  readonly undersideWork: PistonWork | null;
  readonly cylinderWalls: CylinderWalls;
  readonly burning: Burning;
  readonly nodeWalls: NodeWalls;
  readonly gauges: Gauges;
  readonly backflow: Backflow;
  /** Null where a design has none. */
  readonly evaporating: Evaporating | null;
  readonly passageInjection: PassageInjection | null;
  readonly cylinderInjection: CylinderInjection | null;
  /** What is integrated exactly over a step. */
  readonly stepSources: readonly StepSource[];
  /** Null where wall temperatures are given. */
  readonly solvedWalls: SolvedWalls | null;
  readonly filmMeans: FilmMeans | null;
  /** Flow through the engine at the wanted delivery ratio, ambient density [kg/s]. */
  readonly designFlow: number;

  private readonly flows: readonly FlowElement[];
  private readonly sources: Source[];

  constructor(
    unmixed: Model,
    readonly point: OperatingPoint,
    readonly firing: Firing = 'averaged',
  ) {
    const model = modelAt(unmixed, point.speed);
    this.model = model;
    const { engine, geometry, network, set } = model;
    const { at, through } = network;
    const omega = point.speed;
    this.omega = omega;
    const instant = { theta: 0, span: 0, before: 0, omega };
    this.instant = instant;
    const gas = new GasStates(set, network.dynamicCount, network.nodes.length, model.dissociation);
    this.gas = gas;
    network.nodes.forEach((node, i) => (gas.volume[i] = node.volume));
    const { ambient } = engine;
    const airOnly = set.constituents.map((_, k) => (k === AIR_INDEX ? 1 : 0));
    gas.setReservoir(at.ambient, ambient.pressure, ambient.temperature, airOnly);
    const edges = new EdgeFlows(network.edges, gas);
    this.edges = edges;
    const pistons = new Pistons(geometry.cylinders, at.cylinders, geometry.boreArea, omega, gas);
    this.pistons = pistons;
    const { crankcase } = engine;
    if (crankcase) pistons.workOn(at.crankcase, crankcase.isPlenum ? plenumVolume(engine) : crankcase.volume);
    const keepsSparks = engine.combustion.enabled && engine.cylinderHeat.law === 'Woschni';
    const { solvesWalls } = engine.cylinderHeat;
    const sticks = sticksAtAll(engine.plenum.relief);
    const memory = new Memory(geometry.cylinders.length, keepsSparks, solvesWalls ? SURFACES : 0, sticks);
    this.memory = memory;
    this.trapped = geometry.cylinders.map(nothingTrapped);
    const design = designFlows(model, point);
    this.designFlow = design.total;

    this.zones = zonesOf(model, pistons, memory, gas);
    const parts: Parts = { model, point, instant, gas, edges, pistons, memory, design, zones: this.zones };
    const { elements, blower, secondBlower, cooler, relief, blowBy, inertia } = flowElements(parts);
    this.flows = elements;
    this.blower = blower;
    this.secondBlower = secondBlower;
    this.cooler = cooler;
    this.relief = relief;
    this.blowBy = blowBy;
    this.inertia = inertia;
    this.pistonWork = new PistonWork(at.cylinders, gas);
    this.undersideWork = crankcase && new PistonWork([at.crankcase], gas);
    this.cylinderWalls = cylinderWallsOf(parts);
    this.burning = burningOf(parts, firing);
    this.nodeWalls = nodeWallsOf(parts);
    this.gauges = new Gauges(
      [
        at.box,
        at.plenum,
        ...at.collectors,
        ...(crankcase?.isPlenum === false ? [at.crankcase] : []),
        ...(engine.secondStage ? [at.interstage, at.beforeSecond] : []),
      ],
      gas,
    );
    this.backflow = new Backflow([...through.transfers, ...through.exhausts], edges);
    this.evaporating = evaporatingOf(parts);
    this.passageInjection = passageInjectionOf(parts);
    this.cylinderInjection = cylinderInjectionOf(parts);
    this.solvedWalls = solvesWalls ? new SolvedWalls(model) : null;
    this.filmMeans = solvesWalls ? new FilmMeans(this.cylinderWalls, pistons) : null;
    this.sources = [blower, this.pistonWork, this.cylinderWalls, this.nodeWalls, this.gauges, this.backflow];
    if (this.passageInjection) this.sources.push(this.passageInjection);
    if (this.evaporating) this.sources.push(this.evaporating);
    this.stepSources = this.cylinderInjection ? [this.cylinderInjection, this.burning] : [this.burning];

    if (secondBlower) this.sources.push(secondBlower);
    if (cooler) this.sources.push(cooler);
    if (this.undersideWork) this.sources.push(this.undersideWork);
    if (blowBy) this.sources.push(blowBy);
    if (this.filmMeans) this.sources.push(this.filmMeans);
    if (inertia) this.sources.push(inertia);
    this.zoneExchange = this.zones && zoneExchangeOf(parts, this.zones, this.cylinderWalls);
    if (this.zoneExchange) this.sources.push(this.zoneExchange);

    let states = network.dynamicCount * gas.stride;
    if (inertia) inertia.stateAt = states;
    states += inertia?.count ?? 0;
    if (this.zones) this.zones.stateAt = states;
    states += this.zones?.count ?? 0;
    this.stateSize = states;
    let end = this.stateSize;
    const place = (source: { recordAt: number; readonly recordCount: number }): void => {
      source.recordAt = end;
      end += source.recordCount;
    };
    if (solvesWalls) place(this.cylinderWalls);
    this.steppedSize = end;
    this.edgesAt = end;
    end += edges.count * edges.stride;
    for (const source of [...this.sources, ...this.stepSources])
      if (source !== this.cylinderWalls || !solvesWalls) place(source);
    this.size = end;
    this.implicit = new ImplicitPressures(gas, edges, inertia);
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
    if (this.zones !== null && !this.zones.load(y, record)) return false;
    this.inertia?.load(y);
    for (let i = 0; i < flows.length; i++) flows[i].setFlows();
    for (let k = 0; k < this.stateSize; k++) rates[k] = 0;
    edges.apply(rates, record, this.edgesAt);
    for (let i = 0; i < sources.length; i++) sources[i].addTo(rates, record);
    return true;
  }

  /** Notes what must be known of a step once it is taken, from the gas now unpacked. */
  keep(): void {
    this.relief?.keep();
  }

  /** Acts on events from the gas now unpacked. */
  actOn(events: readonly CycleEvent[]): void {
    for (let i = 0; i < events.length; i++) {
      const { kind, cylinder: j } = events[i];
      if (kind === 'exhaust opens')
        this.memory.setStalePurity(j, this.purity(this.model.network.at.cylinders[j]));
      else if (kind === 'trapped') {
        const node = this.model.network.at.cylinders[j];
        noteTrapped(this.trapped[j], this.gas, node, this.purity(node), this.memory.stalePurity(j));
        this.cylinderInjection?.meter(j);
      } else if (this.model.engine.combustion.enabled) this.burning.ignite(j);
    }
  }

  /** Lets wall temperatures follow the heat of a period that has ended, where they are worked out. */
  settleWalls(ended: Float64Array): void {
    this.solvedWalls?.settle(this.memory.walls, this.wallHeat(ended, this.model.drive.turns));
  }

  /** Mean heat into crown, head and liner, cylinder by cylinder, of what was accumulated over `turns` [W]. */
  wallHeat(accumulated: Float64Array, turns: number): Float64Array {
    const { recordAt, recordCount } = this.cylinderWalls;
    const perSecond = this.omega / (TURN * turns);
    return accumulated.slice(recordAt, recordAt + recordCount).map((heat) => heat * perSecond);
  }

  /** Mass fraction of fresh charge in a node [-]. */
  purity(node: number): number {
    const { gas, model } = this;
    const n = gas.set.count;
    let purity = 0;
    for (let k = 0; k < n; k++) if (model.fresh[k]) purity += gas.fraction[node * n + k];
    return purity;
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
