import type { Engine } from '../engine.ts';

/** A volume of gas, or beyond the dynamic ones a reservoir. */
export interface Node {
  readonly label: string;
  readonly kind:
    'inlet box' | 'plenum' | 'passage' | 'cylinder' | 'collector' | 'crankcase' | 'interstage' | 'ambient';
  /** Volume where it is constant, 0 where it follows the crank [m^3]. */
  readonly volume: number;
}

/** A way for gas from one node to another; its law is a flow element's business. */
export interface Edge {
  readonly label: string;
  readonly from: number;
  readonly to: number;
}

/** Which node and edge is what. Cylinders, passages and their edges run row by row. */
export interface Network {
  readonly nodes: readonly Node[];
  readonly edges: readonly Edge[];
  /** Nodes that own state come first; the rest are reservoirs. */
  readonly dynamicCount: number;
  readonly at: {
    readonly box: number;
    readonly plenum: number;
    readonly passages: readonly number[];
    readonly cylinders: readonly number[];
    readonly collectors: readonly number[];
    /** The plenum's node where the two are one volume; -1 where the crankcase takes no part. */
    readonly crankcase: number;
    /** Behind the first stage, and before the second: one node without a cooler; -1 without a second stage. */
    readonly interstage: number;
    readonly beforeSecond: number;
    readonly ambient: number;
  };
  readonly through: {
    readonly throttle: number;
    readonly blower: number;
    readonly slip: number;
    /** Gas that the mesh takes back; -1 where none is reckoned. */
    readonly carriedBack: number;
    /** Second stage, its clearances, and the cooler before it; -1 without. */
    readonly second: number;
    readonly secondSlip: number;
    readonly cooler: number;
    /** -1 without a valve. */
    readonly relief: number;
    /** Round the blowers, to inlet box or ambient; -1 without one. */
    readonly bypass: number;
    readonly entries: readonly number[];
    readonly transfers: readonly number[];
    readonly exhausts: readonly number[];
    readonly outlets: readonly number[];
    /** From cylinders to crankcase; none where the crankcase takes no part. */
    readonly blowBys: readonly number[];
    /** -1 without one. */
    readonly breather: number;
  };
}

/** ambient - throttle - inlet box - blower (- interstage - second stage) - plenum - passages - cylinders - collectors - ambient; cylinders - crankcase - ambient. */
export function buildNetwork(engine: Engine): Network {
  const nodes: Node[] = [];
  const edges: Edge[] = [];
  const node = (kind: Node['kind'], label: string, volume: number) => nodes.push({ kind, label, volume }) - 1;
  const edge = (label: string, from: number, to: number) => edges.push({ label, from, to }) - 1;

  const seats = engine.train.rows.flatMap((row, r) =>
    row.cylinders.map((cylinder, j) => ({
      name: `${String.fromCharCode(65 + r)}${j + 1}`,
      collector: cylinder.collector,
    })),
  );
  const box = node('inlet box', 'inlet box', engine.intake.boxVolume);
  const plenum = node('plenum', 'plenum', engine.plenum.volume);
  const passages = seats.map(({ name }) => node('passage', `passage ${name}`, engine.passages.volume));
  const cylinders = seats.map(({ name }) => node('cylinder', `cylinder ${name}`, 0));
  const collectors = engine.collectors.map((c, i) => node('collector', `collector ${i + 1}`, c.volume));
  const crankcase = !engine.crankcase
    ? -1
    : engine.crankcase.isPlenum
      ? plenum
      : node('crankcase', 'crankcase', engine.crankcase.volume);
  const { secondStage } = engine;
  const interstage = secondStage ? node('interstage', 'the pipe between the stages', secondStage.volume) : -1;
  const beforeSecond = secondStage?.cooler
    ? node('interstage', 'the intercooler', secondStage.cooler.volume)
    : interstage;
  const behindFirst = secondStage ? interstage : plenum;
  const dynamicCount = nodes.length;
  const ambient = node('ambient', 'ambient', 0);
  const { relief, bypass } = engine.plenum;

  return {
    nodes,
    edges,
    dynamicCount,
    at: { box, plenum, passages, cylinders, collectors, crankcase, interstage, beforeSecond, ambient },
    through: {
      throttle: edge('throttle', ambient, box),
      blower: edge('blower', box, behindFirst),
      slip: edge('blower clearance', behindFirst, box),
      carriedBack:
        engine.blower.carriedBackShare > 0 ? edge('carried back in the mesh', behindFirst, box) : -1,
      second: secondStage ? edge('second stage', beforeSecond, plenum) : -1,
      secondSlip: secondStage ? edge('second stage clearance', plenum, beforeSecond) : -1,
      cooler: secondStage?.cooler ? edge('intercooler', interstage, beforeSecond) : -1,
      relief: relief ? edge('relief valve', plenum, ambient) : -1,
      bypass: bypass ? edge('bypass', plenum, bypass.into === 'air' ? ambient : box) : -1,
      entries: seats.map(({ name }, i) => edge(`passage entry ${name}`, plenum, passages[i])),
      transfers: seats.map(({ name }, i) => edge(`transfer windows ${name}`, passages[i], cylinders[i])),
      exhausts: seats.map(({ name, collector }, i) =>
        edge(`exhaust windows ${name}`, cylinders[i], collectors[collector]),
      ),
      outlets: collectors.map((from, i) => edge(`collector outlet ${i + 1}`, from, ambient)),
      blowBys:
        crankcase < 0 ? [] : seats.map(({ name }, i) => edge(`rings ${name}`, cylinders[i], crankcase)),
      breather: crankcase < 0 || crankcase === plenum ? -1 : edge('breather', crankcase, ambient),
    },
  };
}
