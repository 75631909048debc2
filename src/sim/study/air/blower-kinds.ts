import type { Model } from '../../cycle/model.ts';
import { buildModel } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import { solve } from '../../cycle/solve.ts';
import type { SolvedStart } from '../../cycle/solve.ts';
import type { Outcome } from '../../outcome.ts';
import { failure, success } from '../../outcome.ts';
import { breathedAir } from '../../gas/moist-air.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { rpm } from '../../units.ts';
import { doing } from '../study-step.ts';
import type { Study } from '../study-step.ts';
import { evenModel } from './even-model.ts';
import { asInternal, asRoots, asWheel } from './other-blowers.ts';
import type { BlowerKind, InletGas, OtherBlower } from './other-blowers.ts';

/** One kind of blower on the same engine. */
export interface KindOfBlower {
  readonly kind: BlowerKind;
  /** Whether it is the design's own, unchanged. */
  readonly own: boolean;
  readonly displacementPerTurn: number;
  readonly ratio: number;
  readonly volumeRatio: number;
  readonly tipDiameter: number;
  /** At each of the speeds; null where there is no answer. */
  readonly points: readonly (KindPoint | null)[];
}

export interface KindPoint {
  readonly deliveryRatio: number;
  /** Time mean above ambient [Pa]. */
  readonly plenumGauge: number;
  /** At the crank, and of the engine with it [W]. */
  readonly shaftPower: number;
  readonly brakePower: number;
  /** Of what enters the plenum [K]. */
  readonly outletTemperature: number;
  readonly isentropicEfficiency: number | null;
  /** Less flow than a centrifugal blower holds without surging. */
  readonly surges: boolean;
}

export interface BlowerKinds {
  /** Rising; the chosen one among them, where all are to deliver the same [rad/s]. */
  readonly speeds: readonly number[];
  readonly chosen: number;
  readonly kinds: readonly KindOfBlower[];
}

/** Rounds in which the wheel's speed is brought to the delivery wanted of it, and how near is near enough [-]. */
const ROUNDS = 6;
const NEAR = 2e-3;

/**
 * The same engine with each kind of blower, one stage: Roots rotors of the design's displacement; the same with the built-in volume
 * ratio that fits the chosen point; and wheels geared so that they deliver the same there. Cranked, at that point and at top speed.
 * What the design has already stands as it is. Ripple is averaged in all, efficiencies, the power that bearings drag and losses to the casing are the same.
 *
 * Valid: wheels of usual coefficients; no map was measured. The ratio of the wheels is any number, no teeth.
 */
export function* blowerKinds(model: Model, point: OperatingPoint): Study<Outcome<BlowerKinds>> {
  const { engine } = model;
  const { wanted } = engine;
  const single = { ...model, engine: { ...engine, secondStage: null } };
  const base = variant(single, { blower: engine.blower, ratio: model.drive.ratio });
  if (!base.ok) return base;
  const run = yield* doing('the design’s own blower', solve(base.value, point));
  if (!run.result.converged)
    return failure([
      { path: 'speed', message: `at ${Math.round(point.speed / rpm)} rpm: ${run.result.reason}` },
    ]);
  const now = run.result;
  const gas = inletGas(model, now);
  const speeds = [...new Set([wanted.crankingSpeed, point.speed, wanted.maxSpeed])].sort((a, b) => a - b);

  const roots = asRoots(engine, model.drive.ratio, now, gas);
  const others: readonly [BlowerKind, OtherBlower][] = [
    ['roots', roots],
    ['internal compression', asInternal(roots, gas)],
    ['centrifugal', asWheel(engine, model.drive.ratio, now, gas)],
  ];
  const kinds: KindOfBlower[] = [];
  for (const [kind, other] of others) {
    const own = kind === engine.blower.kind;
    let tried = own ? { blower: engine.blower, ratio: model.drive.ratio } : other;
    if (!own && kind === 'centrifugal')
      tried = yield* geared(single, tried, point, now.engine.deliveryRatio, run.next);
    const built = variant(single, tried);
    if (!built.ok) return built;
    const points: (KindPoint | null)[] = [];
    for (const speed of speeds) {
      const start = speed === point.speed ? run.next : null;
      const what = `${kind} at ${Math.round(speed / rpm)} rpm`;
      const { result } = yield* doing(what, solve(built.value, { ...point, speed }, { start }));
      points.push(result.converged ? kindPoint(result, engine.ambient.pressure) : null);
    }
    const { blower, ratio } = tried;
    kinds.push({
      kind,
      own,
      displacementPerTurn: blower.count * blower.displacement * ratio,
      ratio,
      volumeRatio: blower.volumeRatio,
      tipDiameter: blower.tipDiameter,
      points,
    });
  }
  return success({ speeds, chosen: point.speed, kinds });
}

/** The wheels at the speed at which they deliver what is wanted: near it, delivery goes about with their speed. */
function* geared(
  model: Model,
  wheel: OtherBlower,
  point: OperatingPoint,
  wanted: number,
  start: SolvedStart | null,
): Study<OtherBlower> {
  let { ratio } = wheel;
  let from = start;
  for (let round = 0; round < ROUNDS; round++) {
    const built = variant(model, { ...wheel, ratio });
    if (!built.ok) break;
    const { result, next } = yield* doing('the wheel’s speed', solve(built.value, point, { start: from }));
    if (!result.converged) break;
    from = next;
    const share = wanted / result.engine.deliveryRatio;
    if (Math.abs(share - 1) < NEAR) break;
    ratio *= Math.max(0.7, Math.min(1.4, share));
  }
  return { ...wheel, ratio };
}

function variant(model: Model, { blower, ratio }: OtherBlower): Outcome<Model> {
  const built = buildModel({ ...model.engine, blower });
  return built.ok ? success(evenModel(built.value, ratio)) : built;
}

function inletGas({ engine }: Model, { inletBox, plenum }: SolvedPoint): InletGas {
  // Close enough for sizing: the wheel's speed is found by solving.
  const { gasConstant } = breathedAir(engine.ambient).gas;
  const { meanTemperature: temperature, meanPressure } = inletBox;
  return {
    temperature,
    gasConstant,
    gamma: 1.4,
    density: meanPressure / (gasConstant * temperature),
    pressureRatio: plenum.meanPressure / meanPressure,
  };
}

const kindPoint = ({ engine, blower, plenum }: SolvedPoint, ambient: number): KindPoint => ({
  deliveryRatio: engine.deliveryRatio,
  plenumGauge: plenum.meanPressure - ambient,
  shaftPower: blower.shaftPower,
  brakePower: engine.brakePower,
  outletTemperature: blower.outletTemperature,
  isentropicEfficiency: blower.isentropicEfficiency,
  surges: blower.wheel !== null && blower.wheel.flow < blower.wheel.surge,
});
