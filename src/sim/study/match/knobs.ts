import { clearancePaths, clearanceTotal } from '../../blower/rotors/clearances.ts';
import { buildModel } from '../../cycle/model.ts';
import type { Model } from '../../cycle/model.ts';
import type { Engine, WindowGroup } from '../../engine.ts';
import { findRoot } from '../../numerics/find-root.ts';
import type { Outcome } from '../../outcome.ts';
import { success } from '../../outcome.ts';
import { evenModel } from '../air/even-model.ts';

/** What may be varied, named after the part of the design that holds it. */
export const KNOBS = [
  'blower.driveRatio',
  'blower.displacement',
  'blower.count',
  'blower.gaps',
  'fuel.carburettor.bore',
  'windows.transfer',
  'windows.exhaust',
  'plenum.volume',
] as const;
export type KnobName = (typeof KNOBS)[number];

/** One thing of a design that may be varied, as a number in base SI. */
export interface Knob {
  readonly name: KnobName;
  /** What the number is. */
  readonly what: 'ratio' | 'volume' | 'count' | 'length' | 'added height';
  readonly now: (model: Model) => number;
  /** Least and greatest that are tried. */
  readonly range: (model: Model) => readonly [number, number];
  /** The model with this value, or why there is none. */
  readonly at: (model: Model, value: number) => Outcome<Model>;
  /** Whether more of it means more air, and whether less of it may too. */
  readonly helpsUpwards: boolean;
  readonly eitherWay: boolean;
  /** To what the answer is rounded [unit of the number]; null where only whole numbers count. */
  readonly grain: (model: Model) => number | null;
  /** What stands in the way at the end of the range. */
  readonly stop: string;
}

/** Smallest gap that can be held warm [m]. Typical: bearing play and growth take more. */
const LEAST_GAP = 0.02e-3;
/** How far a window's top edge is moved at most, over the crank's radius [-]. */
const FURTHEST_EDGE = 0.35;

const withBlower = (engine: Engine, blower: Partial<Engine['blower']>): Engine => ({
  ...engine,
  blower: { ...engine.blower, ...blower },
});

/** The engine with all gaps of its blowers in another proportion. */
export function scaleGaps(engine: Engine, factor: number): Engine {
  const { rotors, clearanceArea } = engine.blower;
  const { tip, mesh, end } = rotors.gaps;
  return withBlower(engine, {
    clearanceArea: clearanceArea * factor,
    rotors: { ...rotors, gaps: { tip: tip * factor, mesh: mesh * factor, end: end * factor } },
  });
}

/** The engine with longer rotors of the same section: gaps along them grow with their length. */
export function scaleLength(engine: Engine, factor: number): Engine {
  const { rotors, clearanceArea, displacement, tipDiameter } = engine.blower;
  const length = rotors.length * factor;
  const area = (long: number) => clearanceTotal(clearancePaths(rotors.gaps, tipDiameter, long));
  return withBlower(engine, {
    displacement: displacement * factor,
    clearanceArea: (clearanceArea * area(length)) / area(rotors.length),
    rotors: { ...rotors, length },
  });
}

/** The windows of one kind with every top edge moved up by a height [m]; angles are those of row A's master. */
export function raiseWindows(
  { engine, geometry }: Model,
  kind: 'exhaust' | 'transfer',
  height: number,
): readonly WindowGroup[] {
  const master = geometry.cylinders.find((each) => each.isMaster) ?? geometry.cylinders[0]!;
  const depthAt = (angle: number) => {
    master.travel.evaluate(master.tdc + angle);
    return master.travel.value;
  };
  return engine.windows[kind].map((group) => {
    const { top } = group;
    if (top.kind === 'depth') return { ...group, top: { kind: 'depth', depth: top.depth - height } };
    const wanted = depthAt(top.opensAfterTdc) - height;
    const lowest = depthAt(Math.PI);
    // Out of the stroke on either side: an angle that the geometry refuses, with its reason.
    if (wanted <= 0) return { ...group, top: { kind: 'angle', opensAfterTdc: 0 } };
    if (wanted >= lowest) return { ...group, top: { kind: 'angle', opensAfterTdc: Math.PI } };
    const opensAfterTdc = findRoot((angle) => depthAt(angle) - wanted, 0, Math.PI, 1e-10);
    return { ...group, top: { kind: 'angle', opensAfterTdc } };
  });
}

const windowKnob = (kind: 'exhaust' | 'transfer'): Knob => ({
  name: `windows.${kind}`,
  what: 'added height',
  now: () => 0,
  range: ({ engine }) => [
    -FURTHEST_EDGE * engine.train.crankRadius,
    FURTHEST_EDGE * engine.train.crankRadius,
  ],
  at: (model, height) =>
    buildModel({
      ...model.engine,
      windows: { ...model.engine.windows, [kind]: raiseWindows(model, kind, height) },
    }),
  helpsUpwards: true,
  eitherWay: true,
  grain: () => 0.05e-3,
  stop: 'the window’s edge is not moved by more than a third of the crank’s radius',
});

const LIST: readonly Knob[] = [
  {
    name: 'blower.driveRatio',
    what: 'ratio',
    now: ({ drive }) => drive.ratio,
    range: ({ drive, engine }) => [
      drive.ratio / 4,
      // No less than it has, should that be more than is usual.
      Math.max(drive.ratio, Math.min(6 * drive.ratio, 6 ** Math.max(1, engine.blower.gears.length))),
    ],
    at: (model, ratio) => success(evenModel(model, ratio)),
    helpsUpwards: true,
    eitherWay: false,
    grain: () => 1e-4,
    stop: 'gear pairs of more than 6 to 1 are hardly to be had',
  },
  {
    name: 'blower.displacement',
    what: 'volume',
    now: ({ engine }) => engine.blower.displacement,
    range: ({ engine }) => [engine.blower.displacement / 5, engine.blower.displacement * 6],
    at: ({ engine }, displacement) =>
      buildModel(scaleLength(engine, displacement / engine.blower.displacement)),
    helpsUpwards: true,
    eitherWay: false,
    // Rotors are cut to half a millimetre of length.
    grain: ({ engine }) => (0.5e-3 * engine.blower.displacement) / engine.blower.rotors.length,
    stop: 'rotors of six times the length are no longer this blower',
  },
  {
    name: 'blower.count',
    what: 'count',
    now: ({ engine }) => engine.blower.count,
    range: () => [1, 8],
    at: ({ engine }, count) => buildModel(withBlower(engine, { count })),
    helpsUpwards: true,
    eitherWay: false,
    grain: () => null,
    stop: 'a design holds 1 to 8 blowers',
  },
  {
    name: 'blower.gaps',
    what: 'length',
    now: ({ engine }) => engine.blower.rotors.gaps.tip,
    range: ({ engine }) => {
      const { tip } = engine.blower.rotors.gaps;
      return [Math.min(LEAST_GAP, tip), 4 * tip];
    },
    at: ({ engine }, tip) => buildModel(scaleGaps(engine, tip / engine.blower.rotors.gaps.tip)),
    helpsUpwards: false,
    eitherWay: false,
    grain: () => 0.001e-3,
    stop: 'gaps below 0.02 mm cannot be held warm',
  },
  {
    name: 'fuel.carburettor.bore',
    what: 'length',
    now: ({ engine }) => engine.intake.throttle.bore,
    range: ({ engine }) => [engine.intake.throttle.bore / 3, 3 * engine.intake.throttle.bore],
    at: ({ engine }, bore) =>
      buildModel({
        ...engine,
        intake: { ...engine.intake, throttle: { ...engine.intake.throttle, bore } },
      }),
    helpsUpwards: true,
    eitherWay: false,
    grain: () => 0.1e-3,
    stop: 'a throttle of three times the bore no longer hinders the air: the limit lies elsewhere',
  },
  windowKnob('transfer'),
  windowKnob('exhaust'),
  {
    name: 'plenum.volume',
    what: 'volume',
    now: ({ engine }) => engine.plenum.volume,
    range: ({ engine }) => [engine.plenum.volume / 10, engine.plenum.volume * 10],
    at: ({ engine }, volume) => buildModel({ ...engine, plenum: { ...engine.plenum, volume } }),
    helpsUpwards: true,
    eitherWay: true,
    grain: () => 1e-6,
    stop: 'the plenum evens pulses and makes no air',
  },
];

/** Whether an engine has what a knob varies: a centrifugal blower has neither rotor length nor gaps. */
export const knobApplies = ({ blower }: Engine, name: KnobName): boolean =>
  blower.impeller === null || (name !== 'blower.displacement' && name !== 'blower.gaps');

export const knobNamed = (name: KnobName): Knob => LIST.find((knob) => knob.name === name)!;
